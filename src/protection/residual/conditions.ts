import { condition } from "../../formula/index.js";

/**
 * Does the residual current device detect what the inverter can feed? @function
 *
 * @example
 * ```ts
 * import { residualTypeAllowed } from "pv-to-grid/protection";
 * residualTypeAllowed({ value: "A", limit: ["B", "B+"] }).verdict; // "not met"
 * ```
 */
export const residualTypeAllowed = /* @__PURE__ */ condition({
  id: "protection/residual-type-allowed",
  asks: "Does the residual current device detect what the inverter can feed?",
  force: "requirement",
  value: { named: true, about: "type of the residual current device" },
  relation: "one of",
  limit: { named: true, about: "types that the inverter allows" },
  source: [
    { in: "IEC 60364-7-712:2017", clause: "712.531.3.5", grade: "memory" },
    { in: "IS/IEC 62548:undated", clause: "residual current devices on the a.c. side", grade: "copied", seen: "b-mac solar page:undated, cl. 4.12.3.8, 8.8.2" },
  ],
});

/**
 * Is the standing leakage small enough that the device stays closed? @function
 *
 * @example
 * ```ts
 * import { leakageWithinShare } from "pv-to-grid/protection";
 * leakageWithinShare({ value: "9 mA", limit: "9 mA" }).verdict; // "met"
 * ```
 */
export const leakageWithinShare = /* @__PURE__ */ condition({
  id: "protection/leakage-within-share",
  asks: "Is the standing leakage small enough that the device stays closed?",
  force: "requirement",
  value: { unit: "A", symbol: "I_L", about: "standing leakage through the device" },
  relation: "≤",
  limit: { unit: "A", symbol: "0.3 I_Δn", about: "share of the rated residual current" },
  source: [{ in: "IEC 60364-5-53:2019", clause: "531.3.2", grade: "memory" }],
  worse: { "inverters[].residualCurrent.standingLeakage": "up", "routes[].rcd.ratedResidualCurrent": "down" },
});

/**
 * Does the device upstream keep detecting beside the inverter? @function
 *
 * @example
 * ```ts
 * import { upstreamNotBlinded } from "pv-to-grid/protection";
 * upstreamNotBlinded({ value: "A", limit: ["B", "B+"] }).verdict; // "not met"
 * ```
 */
export const upstreamNotBlinded = /* @__PURE__ */ condition({
  id: "protection/upstream-not-blinded",
  asks: "Does the device upstream keep detecting beside the inverter?",
  force: "requirement",
  value: { named: true, about: "type of the residual current device upstream" },
  relation: "one of",
  limit: { named: true, about: "types that are not blinded" },
  source: [
    { in: "IEC 60364-7-712:2017", clause: "712.531.3.5", grade: "memory" },
    { in: "IS/IEC 62548:undated", clause: "residual current devices on the a.c. side", grade: "copied", seen: "b-mac solar page:undated, cl. 4.12.3.8, 8.8.2" },
  ],
  note: "smooth direct current blinds types AC, A and F",
});

/**
 * May the residual current device be fed from its load side? @function
 *
 * @example
 * ```ts
 * import { residualDeviceBidirectional } from "pv-to-grid/protection";
 * residualDeviceBidirectional({ value: "bidirectional", limit: ["bidirectional"] }).verdict; // "met"
 * ```
 */
export const residualDeviceBidirectional = /* @__PURE__ */ condition({
  id: "protection/residual-device-bidirectional",
  asks: "May the residual current device be fed from its load side?",
  force: "requirement",
  value: { named: true, about: "suitability of the device" },
  relation: "one of",
  limit: { named: true, about: "suitabilities that the place asks for" },
  source: [{ in: "BS 7671:2018", clause: "530.3.201", grade: "memory" }],
});

/**
 * Is the device upstream time-delayed? @function
 *
 * @example
 * ```ts
 * import { upstreamDelayed } from "pv-to-grid/protection";
 * upstreamDelayed({ value: "general", limit: ["S"] }).verdict; // "not met"
 * ```
 */
export const upstreamDelayed = /* @__PURE__ */ condition({
  id: "protection/upstream-delayed",
  asks: "Is the device upstream time-delayed?",
  force: "recommendation",
  value: { named: true, about: "delay of the device upstream" },
  relation: "one of",
  limit: { named: true, about: "delays that are selective" },
  source: [{ in: "IEC 60364-5-53:2019", clause: "536.4.1.4", grade: "memory" }],
});

/**
 * Is the device upstream at least three times less sensitive? @function
 *
 * @example
 * ```ts
 * import { upstreamLessSensitive } from "pv-to-grid/protection";
 * upstreamLessSensitive({ value: "0.3 A", limit: "0.09 A" }).verdict; // "met"
 * ```
 */
export const upstreamLessSensitive = /* @__PURE__ */ condition({
  id: "protection/upstream-less-sensitive",
  asks: "Is the device upstream at least three times less sensitive?",
  force: "recommendation",
  value: { unit: "A", symbol: "I_Δn,up", about: "rated residual current upstream" },
  relation: "≥",
  limit: { unit: "A", symbol: "3 I_Δn", about: "three times that of the device" },
  source: [{ in: "IEC 60364-5-53:2019", clause: "536.4.1.4", grade: "memory" }],
});
