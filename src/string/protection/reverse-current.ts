import { condition, formula } from "../../formula/index.js";

/**
 * Reverse current that the other strings drive into a faulty one. @function
 *
 * @example
 * ```ts
 * import { reverseCurrent } from "pv-to-grid/string";
 * reverseCurrent({ strings: 4, shortCircuitCurrent: "12.28 A" }).text; // "36.84"
 * ```
 */
export const reverseCurrent = /* @__PURE__ */ formula({
  id: "string/reverse-current",
  about: "reverse current that the other strings drive into a faulty one",
  takes: {
    strings: { unit: "1", symbol: "N", about: "strings in parallel, all of them", from: 1, usual: [1, 500] },
    shortCircuitCurrent: { unit: "A", symbol: "I_SC", about: "short-circuit current of one string at standard test conditions", from: 0, usual: [0.1, 60] },
  },
  gives: { unit: "A", symbol: "I_R" },
  expression: "(strings - 1) * shortCircuitCurrent",
  source: [
    { in: "IS/IEC 62548:undated", clause: "need for string overcurrent protection", grade: "reproduced", seen: "Solar Saarthi fuse article:undated, page 4, example 2, step 1" },
    { in: "SS 638:undated", clause: "712L, overload protection", grade: "copied", seen: "SS 638 summary:undated" },
    { in: "IEC 62548:2016", clause: "6.5", grade: "memory" },
  ],
  note: "the form of 2016, without an allowance for irradiance; the rule sets in force take the stricter one",
});

/**
 * Largest reverse current into a faulty string, from the maximum current of the others and what the inverter feeds back. @function
 *
 * @example
 * ```ts
 * import { largestReverseCurrent } from "pv-to-grid/string";
 * largestReverseCurrent({ strings: 3, maximumCurrent: "6.25 A", backfeedCurrent: "0 A" }).text; // "12.5"
 * ```
 */
export const largestReverseCurrent = /* @__PURE__ */ formula({
  id: "string/largest-reverse-current",
  about: "largest reverse current into a faulty string, from the maximum current of the others and what the inverter feeds back",
  takes: {
    strings: { unit: "1", symbol: "N", about: "strings in parallel behind the nearest device, all of them", from: 1, usual: [1, 500] },
    maximumCurrent: { unit: "A", symbol: "I_max", about: "maximum current of one string", from: 0, usual: [0.1, 80] },
    backfeedCurrent: { unit: "A", symbol: "I_BF", about: "current that the inverter can feed back", from: 0, usual: [0, 1000] },
  },
  gives: { unit: "A", symbol: "I_R" },
  expression: "(strings - 1) * maximumCurrent + backfeedCurrent",
  source: [
    { in: "NFPA 70:2020", clause: "690.9(A)(1) with 690.8(A)", grade: "copied", seen: "California Electrical Code:2022, 690.9(A)(1)" },
    { in: "IEC 62548-1:2023", clause: "6.5", grade: "memory" },
    { in: "IEC 60364-7-712:2017", clause: "712.433", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "reverse currents with 1.25 and back-feed in an edited publication; the form without them is proven as string/reverse-current" },
});

/** Does the module bear the current that the other strings can drive backwards through it? @function */
export const reverseCurrentWithinModule = /* @__PURE__ */ condition({
  id: "string/reverse-current-within-module",
  asks: "Does the module bear the current that the other strings can drive backwards through it?",
  force: "requirement",
  value: { unit: "A", symbol: "I_R", about: "reverse current" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_MOD,max", about: "largest overcurrent protection rating of the module" },
  source: [
    { in: "IS/IEC 62548:undated", clause: "need for string overcurrent protection", grade: "reproduced", seen: "Solar Saarthi fuse article:undated, page 3, example 1, step 1" },
    { in: "NFPA 70:2020", clause: "690.9(A)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.9(A)(1)" },
    { in: "IEC 62548-1:2023", clause: "6.5", grade: "memory" },
  ],
  worse: { "strings[].count": "up", "moduleTypes[].shortCircuitCurrent": "up", "moduleTypes[].maximumSeriesFuse": "down", "inverters[].backfeedCurrent": "up" },
  note: "where it is not met, each string needs an overcurrent device",
});

/** Does an unfused part bear the current that the other strings can drive backwards through it? @function */
export const reverseCurrentWithinPart = /* @__PURE__ */ condition({
  id: "string/reverse-current-within-part",
  asks: "Does an unfused part bear the current that the other strings can drive backwards through it?",
  force: "requirement",
  value: { unit: "A", symbol: "I_R", about: "reverse current" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_part", about: "rating of the conductor, plug or branch" },
  source: [
    { in: "NFPA 70:2020", clause: "690.9(A)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.9(A)(1)" },
    { in: "IEC 62548-1:2023", clause: "minimum current rating of circuits", grade: "memory" },
  ],
  worse: { "strings[].count": "up", "moduleTypes[].shortCircuitCurrent": "up" },
});
