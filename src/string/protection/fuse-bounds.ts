import { formula } from "../../formula/index.js";

/**
 * Lower bound of a string fuse's rating by IEC 62548. @function
 *
 * @example
 * ```ts
 * import { fuseLowerBound } from "pv-to-grid/string";
 * fuseLowerBound({ shortCircuitCurrent: "12.28 A" }).text; // "18.42"
 * ```
 */
export const fuseLowerBound = /* @__PURE__ */ formula({
  id: "string/fuse-lower-bound",
  about: "lower bound of a string fuse's rating by IEC 62548",
  takes: { shortCircuitCurrent: { unit: "A", symbol: "I_SC", about: "short-circuit current of the strings behind the fuse", from: 0, usual: [0.1, 60] } },
  constants: {
    lower: {
      value: "1.5", unit: "1", symbol: "1.5", about: "multiple of the short-circuit current that the rating must exceed",
      source: [
        { in: "IS/IEC 62548:undated", clause: "string overcurrent device rating", grade: "reproduced", seen: "Solar Saarthi fuse article:undated, page 4, example 2, step 2" },
        { in: "IEC 62548-1:2023", clause: "string overcurrent device rating", grade: "memory" },
      ],
    },
  },
  gives: { unit: "A", symbol: "1.5 I_SC" },
  expression: "lower * shortCircuitCurrent",
  source: [
    { in: "IS/IEC 62548:undated", clause: "string overcurrent device rating", grade: "reproduced", seen: "Solar Saarthi fuse article:undated, page 4, example 2, step 2" },
    { in: "AS/NZS 5033:2014", clause: "3.3", grade: "reproduced", seen: "EcoInnovation pump manual:2019, p. 47" },
    { in: "SS 638:undated", clause: "712L, overload protection", grade: "copied", seen: "SS 638 summary:undated" },
    { in: "IEC 62548-1:2023", clause: "string overcurrent device rating", grade: "memory" },
  ],
});

/**
 * Upper bound of a string fuse's rating by IEC 62548. @function
 *
 * @example
 * ```ts
 * import { fuseUpperBound } from "pv-to-grid/string";
 * fuseUpperBound({ shortCircuitCurrent: "12.28 A" }).text; // "29.472"
 * ```
 */
export const fuseUpperBound = /* @__PURE__ */ formula({
  id: "string/fuse-upper-bound",
  about: "upper bound of a string fuse's rating by IEC 62548",
  takes: { shortCircuitCurrent: { unit: "A", symbol: "I_SC", about: "short-circuit current of the strings behind the fuse", from: 0, usual: [0.1, 1000] } },
  constants: {
    upper: {
      value: "2.4", unit: "1", symbol: "2.4", about: "multiple of the short-circuit current that the rating must stay below",
      source: [
        { in: "IS/IEC 62548:undated", clause: "string overcurrent device rating", grade: "reproduced", seen: "Solar Saarthi fuse article:undated, page 4, example 2, step 2" },
        { in: "IEC 62548-1:2023", clause: "string overcurrent device rating", grade: "memory" },
      ],
    },
  },
  gives: { unit: "A", symbol: "2.4 I_SC" },
  expression: "upper * shortCircuitCurrent",
  source: [
    { in: "IS/IEC 62548:undated", clause: "string overcurrent device rating", grade: "reproduced", seen: "Solar Saarthi fuse article:undated, page 4, example 2, step 2" },
    { in: "SS 638:undated", clause: "712L, overload protection", grade: "copied", seen: "SS 638 summary:undated" },
    { in: "IEC 62548-1:2023", clause: "string overcurrent device rating", grade: "memory" },
  ],
});

/**
 * Lower bound of a string device's rating by IEC 60364-7-712. @function
 *
 * @example
 * ```ts
 * import { fuseLowerBoundOfMaximum } from "pv-to-grid/string";
 * fuseLowerBoundOfMaximum({ maximumCurrent: "17.5 A" }).text; // "19.25"
 * ```
 */
export const fuseLowerBoundOfMaximum = /* @__PURE__ */ formula({
  id: "string/fuse-lower-bound-of-maximum",
  about: "lower bound of a string device's rating by IEC 60364-7-712",
  takes: { maximumCurrent: { unit: "A", symbol: "I_SC,max", about: "maximum current of the strings behind the device", from: 0, usual: [0.1, 1000] } },
  constants: {
    allowance: {
      value: "1.1", unit: "1", symbol: "1.1", about: "multiple of the maximum current that the rating must reach",
      source: [{ in: "IEC 60364-7-712:2017", clause: "712.433", grade: "memory" }],
    },
  },
  gives: { unit: "A", symbol: "1.1 I_SC,max" },
  expression: "allowance * maximumCurrent",
  source: [{ in: "IEC 60364-7-712:2017", clause: "712.433", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEC 60364-7-712 712.433 1.1 ISC MAX string fuse worked example" },
});

/**
 * Current of continuous duty, 125 % of the maximum current. @function
 *
 * @example
 * ```ts
 * import { continuousCurrent } from "pv-to-grid/string";
 * continuousCurrent({ maximumCurrent: "11 A" }).text; // "13.75"
 * ```
 */
export const continuousCurrent = /* @__PURE__ */ formula({
  id: "string/continuous-current",
  about: "current of continuous duty, 125 % of the maximum current",
  takes: { maximumCurrent: { unit: "A", symbol: "I_max", about: "maximum current of the circuit", from: 0, usual: [0.1, 5000] } },
  constants: {
    continuous: {
      value: "1.25", unit: "1", symbol: "125 %", about: "allowance for continuous duty",
      source: [
        { in: "NFPA 70:2014", clause: "690.8(B)(1)", grade: "reproduced", seen: "Home Power circuit sizing:undated, three-string example" },
        { in: "NFPA 70:2020", clause: "690.8(B)(1) and 690.9(B)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.8(B) and 690.9(B)" },
      ],
    },
  },
  gives: { unit: "A", symbol: "1.25 I_max" },
  expression: "continuous * maximumCurrent",
  source: [
    { in: "NFPA 70:2014", clause: "690.8(B)(1)", grade: "reproduced", seen: "Home Power circuit sizing:undated, three-string example" },
    { in: "NFPA 70:2020", clause: "690.8(B)(1) and 690.9(B)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.8(B) and 690.9(B)" },
  ],
});

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
 * Module rating that is left for a device shared by several strings, after what its neighbours add. @function
 *
 * @example
 * ```ts
 * import { moduleRatingLeft } from "pv-to-grid/string";
 * moduleRatingLeft({ maximumSeriesFuse: "25 A", strings: 2, currentOfOne: "9 A" }).text; // "16"
 * ```
 */
export const moduleRatingLeft = /* @__PURE__ */ formula({
  id: "string/module-rating-left",
  about: "module rating that is left for a device shared by several strings, after what its neighbours add",
  takes: {
    maximumSeriesFuse: { unit: "A", symbol: "I_MOD,max", about: "largest overcurrent protection rating of the module", above: 0, usual: [1, 60] },
    strings: { unit: "1", symbol: "N_G", about: "strings that share the device", from: 1, usual: [1, 10] },
    currentOfOne: { unit: "A", symbol: "I_1", about: "current that each neighbour adds", from: 0, usual: [0.1, 60] },
  },
  gives: { unit: "A", symbol: "I_left" },
  expression: "maximumSeriesFuse - (strings - 1) * currentOfOne",
  source: [
    { in: "Alternative energy forum 974:undated", clause: "answer after Wiles, Suggested Practices, p. 132", grade: "copied" },
    { in: "IEC 62548:2016", clause: "6.5", grade: "memory" },
  ],
});

/**
 * Module rating that several strings on one device need, from the device and what the neighbours add. @function
 *
 * @example
 * ```ts
 * import { moduleRatingNeeded } from "pv-to-grid/string";
 * moduleRatingNeeded({ ratedCurrent: "3.81 A", strings: 2, currentOfOne: "1.525 A" }).text; // "5.335"
 * ```
 */
export const moduleRatingNeeded = /* @__PURE__ */ formula({
  id: "string/module-rating-needed",
  about: "module rating that several strings on one device need, from the device and what the neighbours add",
  takes: {
    ratedCurrent: { unit: "A", symbol: "I_n", about: "rated current of the shared device", above: 0, usual: [1, 60] },
    strings: { unit: "1", symbol: "N_G", about: "strings that share the device", from: 1, usual: [1, 10] },
    currentOfOne: { unit: "A", symbol: "I_1", about: "current that each neighbour adds", from: 0, usual: [0.1, 60] },
  },
  gives: { unit: "A", symbol: "I_MOD,due" },
  expression: "ratedCurrent + (strings - 1) * currentOfOne",
  source: [
    { in: "Alternative energy forum 974:undated", clause: "answer after Wiles, Suggested Practices, p. 132", grade: "copied" },
    { in: "NFPA 70:2020", clause: "690.8(D)", grade: "copied", seen: "California Electrical Code:2022, 690.8(D)" },
  ],
});

/**
 * Lower bound of the rating of a sub-array or array device. @function
 *
 * @example
 * ```ts
 * import { groupFuseLowerBound } from "pv-to-grid/string";
 * groupFuseLowerBound({ shortCircuitCurrent: "80 A" }).text; // "100"
 * ```
 */
export const groupFuseLowerBound = /* @__PURE__ */ formula({
  id: "string/group-fuse-lower-bound",
  about: "lower bound of the rating of a sub-array or array device",
  takes: { shortCircuitCurrent: { unit: "A", symbol: "I_SC,arr", about: "short-circuit current of the sub-array or array", from: 0, usual: [1, 5000] } },
  constants: {
    lower: {
      value: "1.25", unit: "1", symbol: "1.25", about: "multiple of the short-circuit current that the rating must exceed",
      source: [{ in: "IEC 62548:2016", clause: "sub-array and array overcurrent protection", grade: "memory" }],
    },
  },
  gives: { unit: "A", symbol: "1.25 I_SC" },
  expression: "lower * shortCircuitCurrent",
  source: [{ in: "IEC 62548:2016", clause: "sub-array and array overcurrent protection", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEC 62548 sub-array overcurrent device 1.25 2.4 worked example" },
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
