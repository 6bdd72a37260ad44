import { table } from "../../../formula/index.js";

/**
 * Voltage settings of Real Decreto 1699/2011, text of 2020.
 *
 * @function
 * @example
 * ```ts
 * import { rd1699_2020_voltageSettings } from "pv-to-grid/grid";
 * rd1699_2020_voltageSettings({ setting: "overvoltage2", value: "setting" }).text; // "1.15"
 * ```
 */
export const rd1699_2020_voltageSettings = /* @__PURE__ */ table({
  id: "grid/rd-1699-2020-voltage-settings",
  about: "voltage settings of Real Decreto 1699/2011, text of 2020",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "RD 1699/2011:2020", clause: "table 1, a picture that was not seen", grade: "memory" }],
  cells: `
    overvoltage2   1.15
    overvoltage1   1.10
    undervoltage1  0.85
  `,
  note: "the text holds no figures any more; its table was not seen",
});

/**
 * Highest frequency for reconnection of Real Decreto 1699/2011, text of 2020.
 *
 * @function
 * @example
 * ```ts
 * import { rd1699_2020_reconnectionFrequency } from "pv-to-grid/grid";
 * rd1699_2020_reconnectionFrequency({ setting: "reconnectionFrequencyHigh", value: "setting" }).text; // "50"
 * ```
 */
export const rd1699_2020_reconnectionFrequency = /* @__PURE__ */ table({
  id: "grid/rd-1699-2020-reconnection-frequency",
  about: "highest frequency for reconnection of Real Decreto 1699/2011, text of 2020",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "RD 1699/2011:2020", clause: "14.1 d, last sentence", grade: "copied" }],
  cells: `
    reconnectionFrequencyHigh  50
  `,
  note: "after an overfrequency trip",
});

/**
 * Times of Real Decreto 1699/2011, text of 2020.
 *
 * @function
 * @example
 * ```ts
 * import { rd1699_2020_times } from "pv-to-grid/grid";
 * rd1699_2020_times({ setting: "overvoltage2", time: "clearing" }).text; // "0.2"
 * ```
 */
export const rd1699_2020_times = /* @__PURE__ */ table({
  id: "grid/rd-1699-2020-times",
  about: "times of Real Decreto 1699/2011, text of 2020",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["clearing"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "RD 1699/2011:2020", clause: "table 1, a picture that was not seen", grade: "memory" }],
  cells: `
    overvoltage2   0.2
    overvoltage1   1.5
    undervoltage1  1.5
  `,
});
