import { condition } from "../../formula/index.js";

/**
 * Does the device break the largest fault current at its place? @function
 *
 * @example
 * ```ts
 * import { faultWithinBreakingCapacity } from "pv-to-grid/protection";
 * faultWithinBreakingCapacity({ value: "6 kA", limit: "6 kA" }).verdict; // "met"
 * ```
 */
export const faultWithinBreakingCapacity = /* @__PURE__ */ condition({
  id: "protection/fault-within-breaking-capacity",
  asks: "Does the device break the largest fault current at its place?",
  force: "requirement",
  value: { unit: "A", symbol: "I_k,max", about: "largest fault current" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_cn", about: "rated breaking capacity" },
  source: [{ in: "IEC 60364-4-43:2008", clause: "434.5.1", grade: "memory" }],
  worse: { "supply.largestFaultCurrent": "up", "routes[].breaker.breakingCapacity": "down" },
});

/**
 * Does the declared combination with the device upstream break the largest fault current? @function
 *
 * @example
 * ```ts
 * import { backUpCovers } from "pv-to-grid/protection";
 * backUpCovers({ value: "8 kA", limit: "10 kA" }).verdict; // "met"
 * ```
 */
export const backUpCovers = /* @__PURE__ */ condition({
  id: "protection/back-up-covers",
  asks: "Does the declared combination with the device upstream break the largest fault current?",
  force: "requirement",
  value: { unit: "A", symbol: "I_k,max", about: "largest fault current" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_cc", about: "current up to which the maker declares back-up" },
  source: [{ in: "IEC 60364-4-43:2008", clause: "434.5.1", grade: "memory" }],
  worse: { "supply.largestFaultCurrent": "up" },
});

/**
 * Is the device selective with the one upstream up to the largest fault current? @function
 *
 * @example
 * ```ts
 * import { selectiveWithUpstream } from "pv-to-grid/protection";
 * selectiveWithUpstream({ value: "6 kA", limit: "4 kA" }).verdict; // "not met"
 * ```
 */
export const selectiveWithUpstream = /* @__PURE__ */ condition({
  id: "protection/selective-with-upstream",
  asks: "Is the device selective with the one upstream up to the largest fault current?",
  force: "recommendation",
  value: { unit: "A", symbol: "I_k,max", about: "largest fault current" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_s", about: "current up to which the maker declares selectivity" },
  source: [{ in: "IEC 60364-5-53:2019", clause: "536.4", grade: "memory" }],
  worse: { "supply.largestFaultCurrent": "up" },
});

/**
 * Is the fuse upstream at least 1.6 times the one behind it? @function
 *
 * @example
 * ```ts
 * import { fusesSelective } from "pv-to-grid/protection";
 * fusesSelective({ value: "63 A", limit: "56 A" }).verdict; // "met"
 * ```
 */
export const fusesSelective = /* @__PURE__ */ condition({
  id: "protection/fuses-selective",
  asks: "Is the fuse upstream at least 1.6 times the one behind it?",
  force: "recommendation",
  value: { unit: "A", symbol: "I_n,up", about: "rated current of the fuse upstream" },
  relation: "≥",
  limit: { unit: "A", symbol: "1.6 I_n", about: "1.6 times the rated current of the fuse behind it" },
  source: [{ in: "IEC 60269-1:2006", clause: "selectivity of gG fuses from 16 A", grade: "memory" }],
});

/**
 * May the device be fed from its load side? @function
 *
 * @example
 * ```ts
 * import { suitableForBackfeed } from "pv-to-grid/protection";
 * suitableForBackfeed({ value: "line and load", limit: ["not marked", "bidirectional"] }).verdict; // "not met"
 * ```
 */
export const suitableForBackfeed = /* @__PURE__ */ condition({
  id: "protection/suitable-for-backfeed",
  asks: "May the device be fed from its load side?",
  force: "requirement",
  value: { named: true, about: "marking of the device" },
  relation: "one of",
  limit: { named: true, about: "markings that allow feeding from both sides" },
  source: [{ in: "NFPA 70:2020", clause: "705.30(D)", grade: "memory" }, { in: "BS 7671:2018", clause: "530.3.201", grade: "memory" }],
});
