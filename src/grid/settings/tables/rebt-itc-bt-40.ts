import { table } from "../../../formula/index.js";

/**
 * Voltage settings of REBT ITC-BT-40.
 *
 * @function
 * @example
 * ```ts
 * import { rebt_2002_voltageSettings } from "pv-to-grid/grid";
 * rebt_2002_voltageSettings({ setting: "overvoltage1", value: "setting" }).text; // "1.1"
 * ```
 */
export const rebt_2002_voltageSettings = /* @__PURE__ */ table({
  id: "grid/rebt-2002-voltage-settings",
  about: "voltage settings of REBT ITC-BT-40",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 7", grade: "copied" }],
  cells: `
    overvoltage1   1.10
    undervoltage1  0.85
  `,
});

/**
 * Frequency settings of REBT ITC-BT-40.
 *
 * @function
 * @example
 * ```ts
 * import { rebt_2002_frequencySettings } from "pv-to-grid/grid";
 * rebt_2002_frequencySettings({ setting: "overfrequency1", value: "setting" }).text; // "51"
 * ```
 */
export const rebt_2002_frequencySettings = /* @__PURE__ */ table({
  id: "grid/rebt-2002-frequency-settings",
  about: "frequency settings of REBT ITC-BT-40",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 7", grade: "copied" }],
  cells: `
    overfrequency1   51
    underfrequency1  49
  `,
  note: "narrower than the European network codes, which prevail",
});

/**
 * Times of REBT ITC-BT-40.
 *
 * @function
 * @example
 * ```ts
 * import { rebt_2002_times } from "pv-to-grid/grid";
 * rebt_2002_times({ setting: "overvoltage1", time: "clearing" }).text; // "0.5"
 * ```
 */
export const rebt_2002_times = /* @__PURE__ */ table({
  id: "grid/rebt-2002-times",
  about: "times of REBT ITC-BT-40",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["delay", "clearing"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 7", grade: "copied" }],
  cells: `
    overvoltage1     –    0.5
    undervoltage1    –    0.5
    overfrequency1   0.1  –
    underfrequency1  0.1  –
  `,
  note: "frequency: five periods of 50 Hz",
});
