import { condition, formula } from "../../formula/index.js";

/** Have all strings in parallel the same number of modules? @function */
export const stringsOfOneLength = /* @__PURE__ */ condition({
  id: "string/strings-of-one-length",
  asks: "Have all strings in parallel the same number of modules?",
  force: "requirement",
  value: { unit: "1", symbol: "n", about: "modules of the string that differs most" },
  relation: "=",
  limit: { unit: "1", symbol: "n_1", about: "modules of the first string" },
  source: [
    { in: "IEC 62548-1:2023", clause: "strings in parallel on one input", grade: "memory" },
    { in: "common practice", clause: "parallel strings are alike", grade: "common-practice" },
  ],
});

/** Are all strings in parallel of one module type? @function */
export const stringsOfOneType = /* @__PURE__ */ condition({
  id: "string/strings-of-one-type",
  asks: "Are all strings in parallel of one module type?",
  force: "requirement",
  value: { named: true, about: "module type of a string" },
  relation: "one of",
  limit: { named: true, about: "module type of the first string" },
  source: [
    { in: "IEC 62548-1:2023", clause: "strings in parallel on one input", grade: "memory" },
    { in: "common practice", clause: "parallel strings are alike", grade: "common-practice" },
  ],
});

/**
 * Lowest open-circuit voltage that a string may have beside the highest one. @function
 *
 * @example
 * ```ts
 * import { lowestParallelVoltage } from "pv-to-grid/string";
 * lowestParallelVoltage({ voltages: ["600 V", "580 V"] }).text; // "570"
 * ```
 */
export const lowestParallelVoltage = /* @__PURE__ */ formula({
  id: "string/lowest-parallel-voltage",
  about: "lowest open-circuit voltage that a string may have beside the highest one",
  takes: { voltages: { each: "V", symbol: "U_i", about: "open-circuit voltage of each string", above: 0, usual: [10, 1500] } },
  constants: {
    spread: {
      value: "0.05", unit: "1", symbol: "5 %", about: "largest difference between parallel strings",
      source: [{ in: "AS/NZS 5033:2021", clause: "strings in parallel, open-circuit voltages", grade: "memory" }],
    },
  },
  gives: { unit: "V", symbol: "U_low" },
  expression: "max(voltages) * (1 - spread)",
  source: [{ in: "AS/NZS 5033:2021", clause: "strings in parallel, open-circuit voltages", grade: "memory" }],
  unproven: { because: "no publication found", sought: "AS/NZS 5033 parallel strings open circuit voltage within 5 % example" },
});

/** Do the open-circuit voltages of the parallel strings agree? @function */
export const parallelVoltagesAgree = /* @__PURE__ */ condition({
  id: "string/parallel-voltages-agree",
  asks: "Do the open-circuit voltages of the parallel strings agree?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC", about: "open-circuit voltage of the string" },
  relation: "≥",
  limit: { unit: "V", symbol: "U_low", about: "lowest that is allowed beside the highest" },
  source: [{ in: "AS/NZS 5033:2021", clause: "strings in parallel, open-circuit voltages", grade: "memory" }],
});

/** Do all strings of the tracker face one way? @function */
export const oneOrientationOnTracker = /* @__PURE__ */ condition({
  id: "string/one-orientation-on-tracker",
  asks: "Do all strings of the tracker face one way?",
  force: "yield",
  value: { named: true, about: "orientation of a string" },
  relation: "one of",
  limit: { named: true, about: "orientation of the first string" },
  source: [{ in: "common practice", clause: "equal strings of different orientation share one voltage at some loss", grade: "common-practice" }],
  note: "allowed: equal strings that face different ways lose a little yield, and raise no current above that of all together",
});

/** Do all modules of the string face one way? @function */
export const oneOrientationInString = /* @__PURE__ */ condition({
  id: "string/one-orientation-in-string",
  asks: "Do all modules of the string face one way?",
  force: "yield",
  value: { named: true, about: "orientation of some of its modules" },
  relation: "one of",
  limit: { named: true, about: "orientation of its first modules" },
  source: [{ in: "common practice", clause: "the weakest module limits its string", grade: "common-practice" }],
});

/** Do all modules of the string face one way, as the rules ask? @function */
export const oneOrientationRequired = /* @__PURE__ */ condition({
  id: "string/one-orientation-required",
  asks: "Do all modules of the string face one way, as the rules ask?",
  force: "requirement",
  value: { named: true, about: "orientation of some of its modules" },
  relation: "one of",
  limit: { named: true, about: "orientation of its first modules" },
  source: [{ in: "AS/NZS 5033:2021", clause: "modules of one string, within 5°", grade: "memory" }],
});
