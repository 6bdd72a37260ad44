import { formula } from "../../formula/index.js";

/**
 * Correction of the current factor for light on the rear of a bifacial module.
 *
 * @function
 * @example
 * ```ts
 * import { bifacialCurrentCorrection } from "pv-to-grid/plant";
 * bifacialCurrentCorrection({ bifacialityOfCurrent: "0.7", rearIrradiance: "100 W/m2" }).text; // "1.07"
 * ```
 */
export const bifacialCurrentCorrection = /* @__PURE__ */ formula({
  id: "plant/bifacial-current-correction",
  about: "correction of the current factor for light on the rear of a bifacial module",
  takes: {
    bifacialityOfCurrent: { unit: "1", symbol: "φ_ISC", about: "bifaciality of the short-circuit current", from: 0, to: 1 },
    rearIrradiance: { unit: "W/m²", symbol: "G_R", about: "irradiance on the rear", from: 0, to: 1000, usual: [0, 600] },
  },
  constants: {
    stcIrradiance: { value: "1000", unit: "W/m²", symbol: "G_STC", about: "irradiance at standard test conditions", source: [{ in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" }] },
  },
  gives: { unit: "1", symbol: "K_Corr" },
  expression: "1 + bifacialityOfCurrent * rearIrradiance / stcIrradiance",
  source: [{ in: "IEC 62548-1:2023", clause: "annex F, current factor of bifacial arrays", grade: "memory" }],
  unproven: { because: "composition only" },
});
