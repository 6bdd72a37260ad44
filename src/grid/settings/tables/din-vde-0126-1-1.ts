import { table } from "../../../formula/index.js";

/**
 * Voltage settings of DIN VDE 0126-1-1 with amendment 1.
 *
 * @function
 * @example
 * ```ts
 * import { dinVde0126_1_1_undated_voltageSettings } from "pv-to-grid/grid";
 * dinVde0126_1_1_undated_voltageSettings({ setting: "overvoltage2", value: "setting" }).text; // "264.5"
 * ```
 */
export const dinVde0126_1_1_undated_voltageSettings = /* @__PURE__ */ table({
  id: "grid/din-vde-0126-1-1-undated-voltage-settings",
  about: "voltage settings of DIN VDE 0126-1-1 with amendment 1",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "V", symbol: "U" },
  source: [{ in: "DIN VDE 0126-1-1/A1:undated", clause: "voltage monitoring", grade: "reproduced", seen: "Autoconsommation guide:undated, list item 1" }],
  cells: `
    overvoltage2   264.5
    undervoltage1  184
  `,
  note: "0.80 and 1.15 of 230 V, line to neutral",
});

/**
 * Longest trip time of DIN VDE 0126-1-1 with amendment 1.
 *
 * @function
 * @example
 * ```ts
 * import { dinVde0126_1_1_undated_tripTime } from "pv-to-grid/grid";
 * dinVde0126_1_1_undated_tripTime({ setting: "overvoltage2", time: "clearing" }).text; // "0.2"
 * ```
 */
export const dinVde0126_1_1_undated_tripTime = /* @__PURE__ */ table({
  id: "grid/din-vde-0126-1-1-undated-trip-time",
  about: "longest trip time of DIN VDE 0126-1-1 with amendment 1",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["clearing"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "DIN VDE 0126-1-1/A1:undated", clause: "voltage monitoring", grade: "reproduced", seen: "Autoconsommation guide:undated, list item 1" }],
  cells: `
    overvoltage2   0.2
    undervoltage1  0.2
  `,
});
