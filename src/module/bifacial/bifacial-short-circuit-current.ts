import { formula } from "../../formula/index.js";

/**
 * Short-circuit current of a bifacial module at 25 °C from its front current and the light on both sides.
 *
 * @function
 * @example
 * ```ts
 * import { bifacialShortCircuitCurrent } from "pv-to-grid/module";
 * bifacialShortCircuitCurrent({ shortCircuitCurrent: "14 A", frontIrradiance: "1000 W/m2", rearIrradiance: "100 W/m2", bifaciality: "0.7" }).text; // "14.98"
 * ```
 */
export const bifacialShortCircuitCurrent = /* @__PURE__ */ formula({
  id: "module/bifacial-short-circuit-current",
  about: "short-circuit current of a bifacial module at 25 °C from its front current and the light on both sides",
  takes: {
    shortCircuitCurrent: { unit: "A", symbol: "I_SC,STC", about: "short-circuit current of the front at standard test conditions", above: 0, usual: [0.05, 40] },
    frontIrradiance: { unit: "W/m²", symbol: "G_F", about: "irradiance on the front", from: 0, to: 2000, usual: [1, 1500] },
    rearIrradiance: { unit: "W/m²", symbol: "G_R", about: "irradiance on the rear", from: 0, to: 1000, usual: [0, 600] },
    bifaciality: { unit: "1", symbol: "φ", about: "bifaciality coefficient", from: 0, to: 1 },
  },
  constants: {
    stcIrradiance: { value: "1000", unit: "W/m²", symbol: "G_STC", about: "irradiance at standard test conditions", source: [{ in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" }] },
  },
  gives: { unit: "A", symbol: "I_SC,bi" },
  expression: "shortCircuitCurrent * (frontIrradiance + bifaciality * rearIrradiance) / stcIrradiance",
  source: [
    { in: "IEC TS 60904-1-2:2024", clause: "equivalent irradiance", grade: "memory" },
    { in: "IEC TS 60904-1-2:2019", clause: "equivalent irradiance", grade: "memory" },
  ],
  unproven: { because: "composition only" },
});
