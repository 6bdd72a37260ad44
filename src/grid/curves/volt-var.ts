import { formula } from "../../formula/index.js";

/**
 * Reactive power that a volt-var curve asks for, in shares of a base voltage.
 *
 * @function
 * @example
 * ```ts
 * import { voltVarResponse } from "pv-to-grid/grid";
 * const points = { voltageShare1: 0.92, voltageShare2: 0.98, voltageShare3: 1.02, voltageShare4: 1.08, reactive1: 0.44, reactive2: 0, reactive3: 0, reactive4: -0.44 };
 * voltVarResponse({ voltageShare: "1.05", ...points }).text; // "-0.22"
 * ```
 */
export const voltVarResponse = /* @__PURE__ */ formula({
  id: "grid/volt-var-response",
  about: "reactive power that a volt-var curve asks for, in shares of a base voltage",
  takes: {
    voltageShare: { unit: "p.u.", symbol: "U", about: "voltage as a share of the base voltage", from: 0, usual: [0, 2] },
    voltageShare1: { unit: "p.u.", symbol: "U_1", about: "voltage of the first point", from: 0, usual: [0, 2] },
    voltageShare2: { unit: "p.u.", symbol: "U_2", about: "voltage of the second point", from: 0, usual: [0, 2] },
    voltageShare3: { unit: "p.u.", symbol: "U_3", about: "voltage of the third point", from: 0, usual: [0, 2] },
    voltageShare4: { unit: "p.u.", symbol: "U_4", about: "voltage of the fourth point", from: 0, usual: [0, 2] },
    reactive1: { unit: "1", symbol: "q_1", about: "reactive power of the first point, injected where positive", from: -1, to: 1, usual: [-1, 1] },
    reactive2: { unit: "1", symbol: "q_2", about: "reactive power of the second point, injected where positive", from: -1, to: 1, usual: [-1, 1] },
    reactive3: { unit: "1", symbol: "q_3", about: "reactive power of the third point, injected where positive", from: -1, to: 1, usual: [-1, 1] },
    reactive4: { unit: "1", symbol: "q_4", about: "reactive power of the fourth point, injected where positive", from: -1, to: 1, usual: [-1, 1] },
  },
  requires: [
    { that: "voltageShare1 < voltageShare2 and voltageShare2 <= voltageShare3 and voltageShare3 < voltageShare4", because: "the points of the curve must stand in the order of their voltages" },
    { that: "voltageShare2 < voltageShare3 or reactive2 == reactive3", because: "a curve must not jump" },
  ],
  gives: { unit: "1", symbol: "q" },
  expression:
    "voltageShare <= voltageShare1 ? reactive1 : voltageShare < voltageShare2 ? reactive1 + (reactive2 - reactive1) * (voltageShare - voltageShare1) / (voltageShare2 - voltageShare1) : voltageShare == voltageShare2 ? reactive2 : voltageShare < voltageShare3 ? reactive2 + (reactive3 - reactive2) * (voltageShare - voltageShare2) / (voltageShare3 - voltageShare2) : voltageShare == voltageShare3 ? reactive3 : voltageShare < voltageShare4 ? reactive3 + (reactive4 - reactive3) * (voltageShare - voltageShare3) / (voltageShare4 - voltageShare3) : reactive4",
  source: [
    { in: "IEEE 1547:2018", clause: "5.3.3, voltage-reactive power mode", grade: "copied", seen: "UL1741SB test scripts:2026, VoltReg/vv.py" },
    { in: "AS/NZS 4777.2:2020", clause: "volt-var response mode", grade: "copied", seen: "DR 4777.2 test scripts:2021, pAus4777.py" },
  ],
  note: "level beyond the first and the last point, straight between the points",
  unproven: { because: "no publication found", sought: "tables 38 and 39 of IEEE 1547.1 in an edited publication; they were seen in copies only" },
});

/**
 * Reactive power that a volt-var curve asks for, in volts.
 *
 * @function
 * @example
 * ```ts
 * import { voltVarResponseInVolts } from "pv-to-grid/grid";
 * const points = { voltage1: "207 V", voltage2: "220 V", voltage3: "240 V", voltage4: "258 V", reactive1: "44 %", reactive2: 0, reactive3: 0, reactive4: "-60 %" };
 * voltVarResponseInVolts({ voltage: "249 V", ...points }).text; // "-0.3"
 * ```
 */
export const voltVarResponseInVolts = /* @__PURE__ */ formula({
  id: "grid/volt-var-response-in-volts",
  about: "reactive power that a volt-var curve asks for, in volts",
  takes: {
    voltage: { unit: "V", symbol: "U", about: "voltage at the inverter terminals", from: 0, usual: [50, 1000] },
    voltage1: { unit: "V", symbol: "U_1", about: "voltage of the first point", from: 0, usual: [50, 1000] },
    voltage2: { unit: "V", symbol: "U_2", about: "voltage of the second point", from: 0, usual: [50, 1000] },
    voltage3: { unit: "V", symbol: "U_3", about: "voltage of the third point", from: 0, usual: [50, 1000] },
    voltage4: { unit: "V", symbol: "U_4", about: "voltage of the fourth point", from: 0, usual: [50, 1000] },
    reactive1: { unit: "1", symbol: "q_1", about: "reactive power of the first point, injected where positive", from: -1, to: 1, usual: [-1, 1] },
    reactive2: { unit: "1", symbol: "q_2", about: "reactive power of the second point, injected where positive", from: -1, to: 1, usual: [-1, 1] },
    reactive3: { unit: "1", symbol: "q_3", about: "reactive power of the third point, injected where positive", from: -1, to: 1, usual: [-1, 1] },
    reactive4: { unit: "1", symbol: "q_4", about: "reactive power of the fourth point, injected where positive", from: -1, to: 1, usual: [-1, 1] },
  },
  requires: [
    { that: "voltage1 < voltage2 and voltage2 <= voltage3 and voltage3 < voltage4", because: "the points of the curve must stand in the order of their voltages" },
    { that: "voltage2 < voltage3 or reactive2 == reactive3", because: "a curve must not jump" },
  ],
  gives: { unit: "1", symbol: "q" },
  expression:
    "voltage <= voltage1 ? reactive1 : voltage < voltage2 ? reactive1 + (reactive2 - reactive1) * (voltage - voltage1) / (voltage2 - voltage1) : voltage == voltage2 ? reactive2 : voltage < voltage3 ? reactive2 + (reactive3 - reactive2) * (voltage - voltage2) / (voltage3 - voltage2) : voltage == voltage3 ? reactive3 : voltage < voltage4 ? reactive3 + (reactive4 - reactive3) * (voltage - voltage3) / (voltage4 - voltage3) : reactive4",
  source: [
    { in: "IEEE 1547:2018", clause: "5.3.3, voltage-reactive power mode", grade: "copied", seen: "UL1741SB test scripts:2026, VoltReg/vv.py" },
    { in: "AS/NZS 4777.2:2020", clause: "volt-var response mode", grade: "copied", seen: "DR 4777.2 test scripts:2021, pAus4777.py" },
  ],
  note: "level beyond the first and the last point, straight between the points",
  unproven: { because: "no publication found", sought: "worked point of a volt-var or volt-watt curve in volts" },
});
