import { formula } from "../../formula/index.js";

/**
 * Bifaciality coefficient as the lesser of those of the current and of the power.
 *
 * @function
 * @example
 * ```ts
 * import { lesserBifaciality } from "pv-to-grid/module";
 * lesserBifaciality({ bifacialityOfCurrent: "0.72", bifacialityOfPower: "0.70" }).text; // "0.7"
 * ```
 */
export const lesserBifaciality = /* @__PURE__ */ formula({
  id: "module/lesser-bifaciality",
  about: "bifaciality coefficient as the lesser of those of the current and of the power",
  takes: {
    bifacialityOfCurrent: { unit: "1", symbol: "φ_ISC", about: "bifaciality of the short-circuit current", from: 0, to: 1 },
    bifacialityOfPower: { unit: "1", symbol: "φ_Pmax", about: "bifaciality of the maximum power", from: 0, to: 1 },
  },
  gives: { unit: "1", symbol: "φ" },
  expression: "min(bifacialityOfCurrent, bifacialityOfPower)",
  source: [{ in: "IEC TS 60904-1-2:2019", clause: "bifaciality coefficient", grade: "reproduced", seen: "iTeh catalogue:undated, foreword of the 2024 edition" }],
  unproven: { because: "definition" },
  note: "the 2024 edition takes the coefficient of the short-circuit current alone",
});
