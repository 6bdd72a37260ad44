import { table } from "../../../formula/index.js";

/**
 * Voltage limits of IEC 61727:2004.
 *
 * @function
 * @example
 * ```ts
 * import { iec61727_2004_voltageLimits } from "pv-to-grid/grid";
 * iec61727_2004_voltageLimits({ setting: "overvoltage2", value: "setting" }).text; // "1.35"
 * ```
 */
export const iec61727_2004_voltageLimits = /* @__PURE__ */ table({
  id: "grid/iec-61727-2004-voltage-limits",
  about: "voltage limits of IEC 61727:2004",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "IEC 61727:2004", clause: "table 2", grade: "memory" }],
  cells: `
    overvoltage2   1.35
    overvoltage1   1.10
    undervoltage1  0.85
    undervoltage2  0.50
  `,
});

/**
 * Deviation from the nominal frequency at which a unit of IEC 61727:2004 is to trip.
 *
 * @function
 * @example
 * ```ts
 * import { iec61727_2004_frequencyDeviation } from "pv-to-grid/grid";
 * iec61727_2004_frequencyDeviation({ setting: "overfrequency1", value: "setting" }).text; // "1"
 * ```
 */
export const iec61727_2004_frequencyDeviation = /* @__PURE__ */ table({
  id: "grid/iec-61727-2004-frequency-deviation",
  about: "deviation from the nominal frequency at which a unit of IEC 61727:2004 is to trip",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "Hz", symbol: "Δf" },
  source: [{ in: "IEC 61727:2004", clause: "5.2.2", grade: "memory" }],
  cells: `
    overfrequency1   1
    underfrequency1  -1
  `,
});

/**
 * Longest trip times of IEC 61727:2004.
 *
 * @function
 * @example
 * ```ts
 * import { iec61727_2004_tripTimes } from "pv-to-grid/grid";
 * iec61727_2004_tripTimes({ setting: "overvoltage2", time: "clearing" }).text; // "0.05"
 * ```
 */
export const iec61727_2004_tripTimes = /* @__PURE__ */ table({
  id: "grid/iec-61727-2004-trip-times",
  about: "longest trip times of IEC 61727:2004",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["clearing"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEC 61727:2004", clause: "table 2, 5.2.2", grade: "memory" }],
  cells: `
    overvoltage2     0.05
    overvoltage1     2.0
    undervoltage1    2.0
    undervoltage2    0.1
    overfrequency1   0.2
    underfrequency1  0.2
  `,
});

/**
 * Delay before reconnection of IEC 61727:2004.
 *
 * @function
 * @example
 * ```ts
 * import { iec61727_2004_reconnectionTime } from "pv-to-grid/grid";
 * iec61727_2004_reconnectionTime({ setting: "reconnectionTime", value: "lowest" }).text; // "20"
 * ```
 */
export const iec61727_2004_reconnectionTime = /* @__PURE__ */ table({
  id: "grid/iec-61727-2004-reconnection-time",
  about: "delay before reconnection of IEC 61727:2004",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting", "lowest", "highest"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEC 61727:2004", clause: "5.4", grade: "memory" }],
  cells: `
    reconnectionTime  –  20  300
  `,
  note: "between 20 s and 5 min, the operator's choice",
});
