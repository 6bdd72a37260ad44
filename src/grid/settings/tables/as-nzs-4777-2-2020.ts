import { table } from "../../../formula/index.js";

/**
 * Voltage limits of passive anti-islanding of AS/NZS 4777.2:2020.
 *
 * @function
 * @example
 * ```ts
 * import { asNzs4777_2_2020_voltageLimits } from "pv-to-grid/grid";
 * asNzs4777_2_2020_voltageLimits({ setting: "overvoltage2", region: "Australia A", value: "setting" }).text; // "275"
 * ```
 */
export const asNzs4777_2_2020_voltageLimits = /* @__PURE__ */ table({
  id: "grid/as-nzs-4777-2-2020-voltage-limits",
  about: "voltage limits of passive anti-islanding of AS/NZS 4777.2:2020",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { region: ["Australia A", "Australia B", "Australia C", "New Zealand"], value: ["setting"] },
  gives: { unit: "V", symbol: "U" },
  source: [{ in: "AS/NZS 4777.2:2020", clause: "table 4.1 and clause on sustained operation", grade: "memory" }],
  cells: `
    overvoltage2          275  275  275  275
    overvoltage1          265  265  265  265
    sustainedOvervoltage  258  258  258  249
    undervoltage1         180  180  180  180
    undervoltage2         70   70   70   70
  `,
  note: "line to neutral, 230 V",
});

/**
 * Frequency limits of passive anti-islanding of AS/NZS 4777.2:2020.
 *
 * @function
 * @example
 * ```ts
 * import { asNzs4777_2_2020_frequencyLimits } from "pv-to-grid/grid";
 * asNzs4777_2_2020_frequencyLimits({ setting: "overfrequency1", region: "Australia A", value: "setting" }).text; // "52"
 * ```
 */
export const asNzs4777_2_2020_frequencyLimits = /* @__PURE__ */ table({
  id: "grid/as-nzs-4777-2-2020-frequency-limits",
  about: "frequency limits of passive anti-islanding of AS/NZS 4777.2:2020",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { region: ["Australia A", "Australia B", "Australia C", "New Zealand"], value: ["setting"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "AS/NZS 4777.2:2020", clause: "table 4.2", grade: "memory" }],
  cells: `
    overfrequency1   52  52  55  55
    underfrequency1  47  47  45  45
  `,
});

/**
 * Trip delay and longest disconnection time of AS/NZS 4777.2:2020.
 *
 * @function
 * @example
 * ```ts
 * import { asNzs4777_2_2020_times } from "pv-to-grid/grid";
 * asNzs4777_2_2020_times({ setting: "overvoltage2", region: "Australia A", time: "clearing" }).text; // "0.2"
 * ```
 */
export const asNzs4777_2_2020_times = /* @__PURE__ */ table({
  id: "grid/as-nzs-4777-2-2020-times",
  about: "trip delay and longest disconnection time of AS/NZS 4777.2:2020",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { region: ["Australia A", "Australia B", "Australia C", "New Zealand"], time: ["delay", "clearing"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "AS/NZS 4777.2:2020", clause: "tables 4.1 and 4.2", grade: "memory" }],
  differences: [
    { cell: "underfrequency1 | New Zealand | delay", ships: "1", others: "5", why: "two recollections differ; the shorter disconnects sooner" },
    { cell: "underfrequency1 | New Zealand | clearing", ships: "2", others: "6", why: "two recollections differ; the shorter disconnects sooner" },
  ],
  cells: `
    overvoltage2     –   0.2  –   0.2  –   0.2  –   0.2
    overvoltage1     1   2    1   2    1   2    1   2
    undervoltage1    10  11   10  11   10  11   10  11
    undervoltage2    1   2    1   2    1   2    1   2
    overfrequency1   –   0.2  –   0.2  –   0.2  –   0.2
    underfrequency1  1   2    1   2    5   6    1   2
  `,
});

/**
 * Observation and ramp time before full power of AS/NZS 4777.2:2020.
 *
 * @function
 * @example
 * ```ts
 * import { asNzs4777_2_2020_reconnectionTime } from "pv-to-grid/grid";
 * asNzs4777_2_2020_reconnectionTime({ setting: "reconnectionTime", region: "Australia A", value: "setting" }).text; // "60"
 * ```
 */
export const asNzs4777_2_2020_reconnectionTime = /* @__PURE__ */ table({
  id: "grid/as-nzs-4777-2-2020-reconnection-time",
  about: "observation and ramp time before full power of AS/NZS 4777.2:2020",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { region: ["Australia A", "Australia B", "Australia C", "New Zealand"], value: ["setting"] },
  gives: { unit: "s", symbol: "t" },
  source: [
    { in: "AS/NZS 4777.2:2020", clause: "clause on connection and reconnection", grade: "memory" },
    { in: "AS/NZS 4777.2:2015", clause: "soft start of 6 minutes", grade: "reproduced", seen: "SEANZ on 4777.2:2016, list of major differences" },
  ],
  cellGrades: { memory: ["reconnectionTime"] },
  cells: `
    reconnectionTime  60   60   60   60
    rampTime          360  360  360  360
  `,
  note: "the ramp was seen for the 2015 edition",
});
