import { formula } from "../../formula/index.js";

/**
 * Ceiling of the active power that a volt-watt curve sets, in shares of a base voltage.
 *
 * @function
 * @example
 * ```ts
 * import { voltWattResponse } from "pv-to-grid/grid";
 * voltWattResponse({ voltageShare: "1.09", voltageShare1: "1.06", voltageShare2: "1.1", active1: 1, active2: "0.2" }).text; // "0.4"
 * ```
 */
export const voltWattResponse = /* @__PURE__ */ formula({
  id: "grid/volt-watt-response",
  about: "ceiling of the active power that a volt-watt curve sets, in shares of a base voltage",
  takes: {
    voltageShare: { unit: "p.u.", symbol: "U", about: "voltage as a share of the base voltage", from: 0, usual: [0, 2] },
    voltageShare1: { unit: "p.u.", symbol: "U_1", about: "voltage of the first point", from: 0, usual: [0, 2] },
    voltageShare2: { unit: "p.u.", symbol: "U_2", about: "voltage of the second point", from: 0, usual: [0, 2] },
    active1: { unit: "1", symbol: "p_1", about: "active power of the first point", from: 0, to: 1, usual: [0, 1] },
    active2: { unit: "1", symbol: "p_2", about: "active power of the second point", from: 0, to: 1, usual: [0, 1] },
  },
  requires: [{ that: "voltageShare1 < voltageShare2", because: "the points of the curve must stand in the order of their voltages" }],
  gives: { unit: "1", symbol: "p" },
  expression: "voltageShare <= voltageShare1 ? active1 : voltageShare < voltageShare2 ? active1 + (active2 - active1) * (voltageShare - voltageShare1) / (voltageShare2 - voltageShare1) : active2",
  source: [
    { in: "IEEE 1547:2018", clause: "5.4.2, voltage-active power mode", grade: "copied", seen: "IEEE 1547.1 test scripts:2022, p1547.py" },
    { in: "AS/NZS 4777.2:2020", clause: "volt-watt response mode", grade: "copied", seen: "DR 4777.2 test scripts:2021, pAus4777.py" },
  ],
  note: "a ceiling: the plant may give less",
  unproven: { because: "no publication found", sought: "tables 38 and 39 of IEEE 1547.1 in an edited publication; they were seen in copies only" },
});

/**
 * Ceiling of the active power that a volt-watt curve sets, in volts.
 *
 * @function
 * @example
 * ```ts
 * import { voltWattResponseInVolts } from "pv-to-grid/grid";
 * voltWattResponseInVolts({ voltage: "256.5 V", voltage1: "253 V", voltage2: "260 V", active1: "100 %", active2: "20 %" }).text; // "0.6"
 * ```
 */
export const voltWattResponseInVolts = /* @__PURE__ */ formula({
  id: "grid/volt-watt-response-in-volts",
  about: "ceiling of the active power that a volt-watt curve sets, in volts",
  takes: {
    voltage: { unit: "V", symbol: "U", about: "voltage at the inverter terminals", from: 0, usual: [50, 1000] },
    voltage1: { unit: "V", symbol: "U_1", about: "voltage of the first point", from: 0, usual: [50, 1000] },
    voltage2: { unit: "V", symbol: "U_2", about: "voltage of the second point", from: 0, usual: [50, 1000] },
    active1: { unit: "1", symbol: "p_1", about: "active power of the first point", from: 0, to: 1, usual: [0, 1] },
    active2: { unit: "1", symbol: "p_2", about: "active power of the second point", from: 0, to: 1, usual: [0, 1] },
  },
  requires: [{ that: "voltage1 < voltage2", because: "the points of the curve must stand in the order of their voltages" }],
  gives: { unit: "1", symbol: "p" },
  expression: "voltage <= voltage1 ? active1 : voltage < voltage2 ? active1 + (active2 - active1) * (voltage - voltage1) / (voltage2 - voltage1) : active2",
  source: [
    { in: "IEEE 1547:2018", clause: "5.4.2, voltage-active power mode", grade: "copied", seen: "IEEE 1547.1 test scripts:2022, p1547.py" },
    { in: "AS/NZS 4777.2:2020", clause: "volt-watt response mode", grade: "copied", seen: "DR 4777.2 test scripts:2021, pAus4777.py" },
  ],
  note: "a ceiling: the plant may give less",
  unproven: { because: "no publication found", sought: "worked point of a volt-var or volt-watt curve in volts" },
});
