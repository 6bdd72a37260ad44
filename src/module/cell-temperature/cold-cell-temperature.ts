import { formula } from "../../formula/index.js";

/**
 * Coldest cell temperature, equal to the ambient before the sun has warmed the cells.
 *
 * @function
 * @example
 * ```ts
 * import { coldCellTemperature } from "pv-to-grid/module";
 * coldCellTemperature({ ambient: "-14 °C" }).text; // "-14"
 * ```
 */
export const coldCellTemperature = /* @__PURE__ */ formula({
  id: "module/cold-cell-temperature",
  about: "coldest cell temperature, equal to the ambient before the sun has warmed the cells",
  takes: {
    ambient: { unit: "°C", symbol: "T_a", about: "coldest ambient air temperature", above: -100, to: 70, usual: [-60, 40] },
  },
  gives: { unit: "°C", symbol: "T_c,min" },
  expression: "ambient",
  source: [{ in: "common practice", clause: "no credit for irradiance at dawn", grade: "common-practice" }],
  unproven: { because: "definition" },
});
