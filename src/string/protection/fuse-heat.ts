import { formula } from "../../formula/index.js";

/**
 * Rating that a gPV fuse needs to carry its string in strong sun and at up to 45 °C. @function
 *
 * @example
 * ```ts
 * import { fuseRatingForHeat } from "pv-to-grid/string";
 * fuseRatingForHeat({ shortCircuitCurrent: "10 A" }).text; // "14"
 * ```
 */
export const fuseRatingForHeat = /* @__PURE__ */ formula({
  id: "string/fuse-rating-for-heat",
  about: "rating that a gPV fuse needs to carry its string in strong sun and at up to 45 °C",
  takes: { shortCircuitCurrent: { unit: "A", symbol: "I_SC", about: "short-circuit current of the strings behind the fuse", from: 0, usual: [0.1, 60] } },
  constants: {
    summer: {
      value: "1.4", unit: "1", symbol: "1.4", about: "allowance for 1 200 W/m² and 45 °C",
      source: [
        { in: "IEC 60269-6:2010", clause: "annex BB", grade: "reproduced", seen: "SIBA fuse.on:2012, p. 3, section 2" },
        { in: "Altech gPV chart:undated", clause: "selection chart", grade: "original" },
      ],
    },
  },
  gives: { unit: "A", symbol: "1.4 I_SC" },
  expression: "summer * shortCircuitCurrent",
  source: [
    { in: "IEC 60269-6:2010", clause: "annex BB", grade: "reproduced", seen: "SIBA fuse.on:2012, p. 3, section 2" },
    { in: "Altech gPV chart:undated", clause: "selection chart", grade: "original" },
  ],
  unproven: { because: "no publication found", sought: "gPV fuse 1.4 Isc worked example with printed rating" },
});

/**
 * Ambient temperature up to which the usual allowance of gPV fuses holds. @function
 *
 * @example
 * ```ts
 * import { fuseReferenceAmbient } from "pv-to-grid/string";
 * fuseReferenceAmbient({}).text; // "45"
 * ```
 */
export const fuseReferenceAmbient = /* @__PURE__ */ formula({
  id: "string/fuse-reference-ambient",
  about: "ambient temperature up to which the usual allowance of gPV fuses holds",
  takes: {},
  constants: {
    reference: {
      value: "45", unit: "°C", symbol: "45 °C", about: "ambient of the selection rule",
      source: [
        { in: "IEC 60269-6:2010", clause: "annex BB", grade: "reproduced", seen: "SIBA fuse.on:2012, p. 3, section 2" },
        { in: "Altech gPV chart:undated", clause: "selection chart", grade: "original" },
      ],
    },
  },
  gives: { unit: "°C", symbol: "θ_ref" },
  expression: "reference",
  source: [{ in: "Altech gPV chart:undated", clause: "selection chart", grade: "original" }],
  unproven: { because: "definition" },
});

/**
 * Rating that a fuse keeps in the heat of its box. @function
 *
 * @example
 * ```ts
 * import { hotFuseRating } from "pv-to-grid/string";
 * hotFuseRating({ ratedCurrent: "20 A", ambientFactor: "0.9" }).text; // "18"
 * ```
 */
export const hotFuseRating = /* @__PURE__ */ formula({
  id: "string/hot-fuse-rating",
  about: "rating that a fuse keeps in the heat of its box",
  takes: {
    ratedCurrent: { unit: "A", symbol: "I_n", about: "rated current of the fuse", above: 0, usual: [1, 630] },
    ambientFactor: { unit: "1", symbol: "k_θ", about: "the maker's factor for the ambient", above: 0, to: 1.5, usual: [0.5, 1.1] },
  },
  gives: { unit: "A", symbol: "k_θ · I_n" },
  expression: "ambientFactor * ratedCurrent",
  source: [{ in: "common practice", clause: "makers' correction for the ambient", grade: "common-practice" }],
  unproven: { because: "definition" },
});
