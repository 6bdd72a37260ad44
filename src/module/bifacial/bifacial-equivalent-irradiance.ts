import { formula } from "../../formula/index.js";

/**
 * Irradiance on the front alone that stands for front and rear of a bifacial module.
 *
 * @function
 * @example
 * ```ts
 * import { bifacialEquivalentIrradiance } from "pv-to-grid/module";
 * bifacialEquivalentIrradiance({ frontIrradiance: "1000 W/m2", rearIrradiance: "135 W/m2", bifaciality: "0.7" }).text; // "1094.5"
 * ```
 */
export const bifacialEquivalentIrradiance = /* @__PURE__ */ formula({
  id: "module/bifacial-equivalent-irradiance",
  about: "irradiance on the front alone that stands for front and rear of a bifacial module",
  takes: {
    frontIrradiance: { unit: "W/m²", symbol: "G_F", about: "irradiance on the front", from: 0, to: 2000, usual: [1, 1500] },
    rearIrradiance: { unit: "W/m²", symbol: "G_R", about: "irradiance on the rear", from: 0, to: 1000, usual: [0, 600] },
    bifaciality: { unit: "1", symbol: "φ", about: "bifaciality coefficient", from: 0, to: 1 },
  },
  gives: { unit: "W/m²", symbol: "G_E" },
  expression: "frontIrradiance + bifaciality * rearIrradiance",
  source: [
    { in: "IEC TS 60904-1-2:2024", clause: "equivalent irradiance", grade: "memory" },
    { in: "IEC TS 60904-1-2:2019", clause: "equivalent irradiance", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "published examples of equivalent irradiance with the coefficient printed" },
});
