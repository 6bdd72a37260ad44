import { table } from "../../formula/index.js";

/**
 * Nominal operating cell temperatures of the best, typical and worst module of a survey.
 *
 * @function
 * @example
 * ```ts
 * import { operatingCellTemperatureRange } from "pv-to-grid/module";
 * operatingCellTemperatureRange({ surveyedModule: "worst" }).text; // "58"
 * ```
 */
export const operatingCellTemperatureRange = /* @__PURE__ */ table({
  id: "module/operating-cell-temperature-range",
  about: "nominal operating cell temperatures of the best, typical and worst module of a survey",
  rows: { name: "surveyedModule", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "°C", symbol: "NOCT" },
  source: [{ in: "PVEducation:undated", clause: "nominal operating cell temperature", grade: "copied", seen: "PVEducation copy:undated, nominal operating cell temperature" }],
  cells: `
    best     33
    typical  48
    worst    58
  `,
});
