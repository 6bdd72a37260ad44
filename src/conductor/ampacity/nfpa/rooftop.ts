import { formula } from "../../../formula/index.js";

/**
 * Temperature to reckon with for a raceway or cable in the sun above a roof, 2017 and 2020.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2017_rooftopAmbient } from "pv-to-grid/conductor";
 * nfpa70_2017_rooftopAmbient({ ambient: "38 °C", heightAboveRoof: "20 mm" }).text; // "71"
 * ```
 */
export const nfpa70_2017_rooftopAmbient = /* @__PURE__ */ formula({
  id: "conductor/nfpa-70-2017-rooftop-ambient", about: "temperature to reckon with for a raceway or cable in the sun above a roof, 2017 and 2020",
  takes: {
    ambient: { unit: "°C", symbol: "θ_out", about: "outdoor temperature", from: -60, to: 60, usual: [-40, 60] },
    heightAboveRoof: { unit: "mm", symbol: "h", about: "clearance between the roof and the bottom of the raceway or cable", from: 0, usual: [0, 5000] },
  },
  constants: {
    roofClearance2017: { value: "23", unit: "mm", symbol: "h_min", about: "clearance below which the roof heats the raceway", source: [{ in: "NFPA 70:2017", clause: "310.15(B)(3)(c)", grade: "copied" }] },
    roofRise2017: { value: "33", unit: "K", symbol: "Δθ", about: "rise to add", source: [{ in: "NFPA 70:2017", clause: "310.15(B)(3)(c)", grade: "copied" }] },
  },
  gives: { unit: "°C", symbol: "θ_a" },
  expression: "heightAboveRoof < roofClearance2017 ? ambient + roofRise2017 : ambient",
  source: [{ in: "NFPA 70:2017", clause: "310.15(B)(3)(c)", grade: "copied" }, { in: "NFPA 70:2020", clause: "310.15(B)(2)", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked rooftop examples after the editions 2017 or 2020" },
});

/**
 * Temperature to reckon with for a raceway or cable in the sun above a roof, 2023.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2023_rooftopAmbient } from "pv-to-grid/conductor";
 * nfpa70_2023_rooftopAmbient({ ambient: "38 °C", heightAboveRoof: "20 mm" }).text; // "38"
 * ```
 */
export const nfpa70_2023_rooftopAmbient = /* @__PURE__ */ formula({
  id: "conductor/nfpa-70-2023-rooftop-ambient", about: "temperature to reckon with for a raceway or cable in the sun above a roof, 2023",
  takes: {
    ambient: { unit: "°C", symbol: "θ_out", about: "outdoor temperature", from: -60, to: 60, usual: [-40, 60] },
    heightAboveRoof: { unit: "mm", symbol: "h", about: "clearance between the roof and the bottom of the raceway or cable", from: 0, usual: [0, 5000] },
  },
  constants: {
    roofClearance2023: { value: "19", unit: "mm", symbol: "h_min", about: "clearance below which the roof heats the raceway", source: [{ in: "NFPA 70:2023", clause: "310.15(B)(2)", grade: "copied" }] },
    roofRise2023: { value: "33", unit: "K", symbol: "Δθ", about: "rise to add", source: [{ in: "NFPA 70:2023", clause: "310.15(B)(2)", grade: "copied" }] },
  },
  gives: { unit: "°C", symbol: "θ_a" },
  expression: "heightAboveRoof < roofClearance2023 ? ambient + roofRise2023 : ambient",
  source: [{ in: "NFPA 70:2023", clause: "310.15(B)(2)", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked rooftop examples after the edition 2023" },
});

/**
 * Temperature above a roof with a rise that a table gives.
 *
 * @function
 * @example
 * ```ts
 * import { rooftopAmbient } from "pv-to-grid/conductor";
 * rooftopAmbient({ ambient: "38 °C", rise: "17 K" }).text; // "55"
 * ```
 */
export const rooftopAmbient = /* @__PURE__ */ formula({
  id: "conductor/rooftop-ambient", about: "temperature above a roof with a rise that a table gives",
  takes: {
    ambient: { unit: "°C", symbol: "θ_out", about: "outdoor temperature", from: -60, to: 60, usual: [-40, 60] },
    rise: { unit: "K", symbol: "Δθ", about: "rise to add", from: 0, to: 60 },
  },
  gives: { unit: "°C", symbol: "θ_a" },
  expression: "ambient + rise",
  source: [{ in: "NFPA 70:2014", clause: "310.15(B)(3)(c)", grade: "reproduced", seen: "pveducation rooftop page:undated, table of adders" }],
  unproven: { because: "no publication found", sought: "rooftop examples in kelvin; those found print degrees Fahrenheit" },
});
