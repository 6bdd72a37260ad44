import { table } from "../../../formula/index.js";

/**
 * Voltage settings of Real Decreto 1699/2011, text of 2011.
 *
 * @function
 * @example
 * ```ts
 * import { rd1699_2011_voltageSettings } from "pv-to-grid/grid";
 * rd1699_2011_voltageSettings({ setting: "overvoltage2", value: "setting" }).text; // "1.15"
 * ```
 */
export const rd1699_2011_voltageSettings = /* @__PURE__ */ table({
  id: "grid/rd-1699-2011-voltage-settings",
  about: "voltage settings of Real Decreto 1699/2011, text of 2011",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "RD 1699/2011:2011", clause: "14.1 d", grade: "copied" }],
  cellGrades: { memory: ["overvoltage1"] },
  cells: `
    overvoltage2   1.15
    overvoltage1   1.10
    undervoltage1  0.85
  `,
});

/**
 * Frequency settings of Real Decreto 1699/2011, text of 2011.
 *
 * @function
 * @example
 * ```ts
 * import { rd1699_2011_frequencySettings } from "pv-to-grid/grid";
 * rd1699_2011_frequencySettings({ setting: "overfrequency1", value: "setting" }).text; // "50.5"
 * ```
 */
export const rd1699_2011_frequencySettings = /* @__PURE__ */ table({
  id: "grid/rd-1699-2011-frequency-settings",
  about: "frequency settings of Real Decreto 1699/2011, text of 2011",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "RD 1699/2011:2011", clause: "14.1 d", grade: "copied" }],
  cells: `
    overfrequency1             50.5
    underfrequency1            48
    reconnectionFrequencyHigh  50
  `,
  note: "reconnection after an overfrequency trip only at 50 Hz or less",
});

/**
 * Times of Real Decreto 1699/2011, text of 2011.
 *
 * @function
 * @example
 * ```ts
 * import { rd1699_2011_times } from "pv-to-grid/grid";
 * rd1699_2011_times({ setting: "overvoltage2", time: "clearing" }).text; // "0.2"
 * ```
 */
export const rd1699_2011_times = /* @__PURE__ */ table({
  id: "grid/rd-1699-2011-times",
  about: "times of Real Decreto 1699/2011, text of 2011",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["delay", "clearing"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "RD 1699/2011:2011", clause: "14.1 d", grade: "copied" }],
  cellGrades: { memory: ["overvoltage2", "overvoltage1", "undervoltage1"] },
  cells: `
    overvoltage2     –  0.2
    overvoltage1     –  1.5
    undervoltage1    –  1.5
    overfrequency1   –  0.5
    underfrequency1  3  –
  `,
  note: "clearing: at most; delay: at least",
});
