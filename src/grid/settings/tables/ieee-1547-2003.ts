import { table } from "../../../formula/index.js";

/**
 * Voltage at which a unit of IEEE 1547:2003 is to trip.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2003_voltageTrip } from "pv-to-grid/grid";
 * ieee1547_2003_voltageTrip({ setting: "overvoltage2", value: "setting" }).text; // "1.2"
 * ```
 */
export const ieee1547_2003_voltageTrip = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2003-voltage-trip",
  about: "voltage at which a unit of IEEE 1547:2003 is to trip",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "IEEE 1547:2003", clause: "table 1", grade: "memory" }],
  cells: `
    overvoltage2             1.20
    overvoltage1             1.10
    undervoltage1            0.88
    undervoltage2            0.50
    reconnectionVoltageLow   0.88
    reconnectionVoltageHigh  1.10
  `,
});

/**
 * Frequency at which a unit of IEEE 1547:2003 is to trip.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2003_frequencyTrip } from "pv-to-grid/grid";
 * ieee1547_2003_frequencyTrip({ setting: "overfrequency1", value: "setting" }).text; // "60.5"
 * ```
 */
export const ieee1547_2003_frequencyTrip = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2003-frequency-trip",
  about: "frequency at which a unit of IEEE 1547:2003 is to trip",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "IEEE 1547:2003", clause: "table 2", grade: "memory" }],
  cells: `
    overfrequency1             60.5
    underfrequency1            59.3
    reconnectionFrequencyLow   59.3
    reconnectionFrequencyHigh  60.5
  `,
  note: "units up to 30 kW",
});

/**
 * Clearing time of the trips of IEEE 1547:2003.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2003_clearingTime } from "pv-to-grid/grid";
 * ieee1547_2003_clearingTime({ setting: "overvoltage2", time: "clearing" }).text; // "0.16"
 * ```
 */
export const ieee1547_2003_clearingTime = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2003-clearing-time",
  about: "clearing time of the trips of IEEE 1547:2003",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["clearing"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEEE 1547:2003", clause: "tables 1 and 2", grade: "memory" }],
  cells: `
    overvoltage2     0.16
    overvoltage1     1.0
    undervoltage1    2.0
    undervoltage2    0.16
    overfrequency1   0.16
    underfrequency1  0.16
  `,
});

/**
 * Longest delay before reconnection of IEEE 1547:2003.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2003_reconnectionTime } from "pv-to-grid/grid";
 * ieee1547_2003_reconnectionTime({ setting: "reconnectionTime", value: "setting" }).text; // "300"
 * ```
 */
export const ieee1547_2003_reconnectionTime = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2003-reconnection-time",
  about: "longest delay before reconnection of IEEE 1547:2003",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEEE 1547:2003", clause: "4.2.6", grade: "memory" }],
  cells: `
    reconnectionTime  300
  `,
});
