import { condition, formula } from "../../../formula/index.js";

/**
 * Length of a hotter section of a circuit that may be disregarded.
 *
 * @function
 * @example
 * ```ts
 * import { shortSectionAllowance } from "pv-to-grid/conductor";
 * shortSectionAllowance({ circuitLength: "20 m" }).text; // "2"
 * ```
 */
export const shortSectionAllowance = /* @__PURE__ */ formula({
  id: "conductor/short-section-allowance", about: "length of a hotter section of a circuit that may be disregarded",
  takes: { circuitLength: { unit: "m", symbol: "L", about: "length of the circuit one way", above: 0, usual: [1, 5000] } },
  constants: {
    longestShortSection: { value: "3", unit: "m", symbol: "L_max", about: "longest section that may be disregarded", source: [{ in: "NFPA 70:2023", clause: "310.14(A)(2), exception", grade: "copied" }] },
    shortSectionShare: { value: "0.1", unit: "1", symbol: "s", about: "largest share of the length", source: [{ in: "NFPA 70:2023", clause: "310.14(A)(2), exception", grade: "copied" }] },
  },
  gives: { unit: "m", symbol: "L_s" },
  expression: "min(longestShortSection, shortSectionShare * circuitLength)",
  source: [{ in: "NFPA 70:2023", clause: "310.14(A)(2), exception", grade: "copied" }, { in: "NFPA 70:2017", clause: "310.15(A)(2), exception", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked examples of the exception for short sections" },
});

/**
 * Is the section with the lower ampacity short enough to be disregarded?
 *
 * @function
 */
export const sectionMayBeDisregarded = /* @__PURE__ */ condition({
  id: "conductor/section-may-be-disregarded", asks: "Is the section with the lower ampacity short enough to be disregarded?", force: "yield",
  value: { unit: "m", symbol: "L_low", about: "length of all sections with the lower ampacity" }, relation: "≤",
  limit: { unit: "m", symbol: "L_s", about: "length that may be disregarded" },
  source: [{ in: "NFPA 70:2023", clause: "310.14(A)(2), exception", grade: "copied" }],
});

/**
 * Length of several sections together.
 *
 * @function
 * @example
 * ```ts
 * import { totalLength } from "pv-to-grid/conductor";
 * totalLength({ lengths: ["1.2 m", "0.8 m"] }).text; // "2"
 * ```
 */
export const totalLength = /* @__PURE__ */ formula({
  id: "conductor/total-length", about: "length of several sections together",
  takes: { lengths: { each: "m", symbol: "L_i", about: "length of each section", from: 0 } },
  gives: { unit: "m", symbol: "L" },
  expression: "sum(lengths)",
  source: [{ in: "common practice", clause: "lengths in series add", grade: "common-practice" }],
  unproven: { because: "definition" },
});
