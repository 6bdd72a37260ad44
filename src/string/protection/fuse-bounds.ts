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
    stringFuseLowerShare: {
      value: "1.5", unit: "1", symbol: "1.5", about: "multiple of the short-circuit current that the rating must exceed",
      source: [
        { in: "IS/IEC 62548:undated", clause: "string overcurrent device rating", grade: "reproduced", seen: "Solar Saarthi fuse article:undated, page 4, example 2, step 2" },
        { in: "IEC 62548-1:2023", clause: "string overcurrent device rating", grade: "memory" },
      ],
    },
  },
  gives: { unit: "A", symbol: "1.5 I_SC" },
  expression: "stringFuseLowerShare * shortCircuitCurrent",
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
    groupFuseLowerShare: {
      value: "1.25", unit: "1", symbol: "1.25", about: "multiple of the short-circuit current that the rating must exceed",
      source: [{ in: "IEC 62548:2016", clause: "sub-array and array overcurrent protection", grade: "memory" }],
    },
  },
  gives: { unit: "A", symbol: "1.25 I_SC" },
  expression: "groupFuseLowerShare * shortCircuitCurrent",
  source: [{ in: "IEC 62548:2016", clause: "sub-array and array overcurrent protection", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEC 62548 sub-array overcurrent device 1.25 2.4 worked example" },
});
