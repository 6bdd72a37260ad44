import { formula } from "../../../formula/index.js";

/**
 * Current-carrying capacity by the formula of annex D.
 *
 * @function
 * @example
 * ```ts
 * import { capacityByAnnexD } from "pv-to-grid/conductor";
 * capacityByAnnexD({ section: "25 mm2", firstCoefficient: "12.4 A", firstExponent: "0.635", secondCoefficient: 0, secondExponent: 1 }).show(); // "95.74 A"
 * ```
 */
export const capacityByAnnexD = /* @__PURE__ */ formula({
  id: "conductor/capacity-by-annex-d", about: "current-carrying capacity by the formula of annex D",
  takes: {
    section: { unit: "mm²", symbol: "S", about: "cross-section of the conductor", above: 0, usual: [0.5, 1000] },
    firstCoefficient: { unit: "A", symbol: "A", about: "first coefficient, for one square millimetre", above: 0, usual: [5, 30] },
    firstExponent: { unit: "1", symbol: "m", about: "first exponent", above: 0, to: 1 },
    secondCoefficient: { unit: "A", symbol: "B", about: "second coefficient, for one square millimetre", from: 0, to: 1 },
    secondExponent: { unit: "1", symbol: "n", about: "second exponent", above: 0, to: 3 },
  },
  constants: {
    oneSquareMillimetre: { value: "1", unit: "mm²", symbol: "mm²", about: "one square millimetre", source: [{ in: "common practice", clause: "unit of cross-section", grade: "common-practice" }] },
  },
  requires: [{ that: "firstCoefficient * (section / oneSquareMillimetre) ^ firstExponent > secondCoefficient * (section / oneSquareMillimetre) ^ secondExponent", because: "the law holds for the sections of the tables" }],
  gives: { unit: "A", symbol: "I" },
  expression: "firstCoefficient * (section / oneSquareMillimetre) ^ firstExponent - secondCoefficient * (section / oneSquareMillimetre) ^ secondExponent",
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex D", grade: "copied" }],
  note: "a check of the tables and no source of ratings: for nominal 50 mm² put 47.5 mm²; for B1 and B2 from 150 mm² up it gives up to 11 % more than the tables",
  unproven: { because: "no publication found", sought: "computed capacities by annex D with their coefficients" },
});
