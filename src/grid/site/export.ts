import { condition, formula } from "../../formula/index.js";

/**
 * Current that the site feeds into a line conductor with its loads at zero.
 *
 * @function
 * @example
 * ```ts
 * import { exportCurrent } from "pv-to-grid/grid";
 * exportCurrent({ inverterCurrents: ["16 A", "8.5 A"] }).text; // "24.5"
 * ```
 */
export const exportCurrent = /* @__PURE__ */ formula({
  id: "grid/export-current",
  about: "current that the site feeds into a line conductor with its loads at zero",
  takes: { inverterCurrents: { each: "A", symbol: "I_inv", about: "largest output current of each inverter on the conductor", from: 0, usual: [0, 10000] } },
  gives: { unit: "A", symbol: "I_exp" },
  expression: "sum(inverterCurrents)",
  source: [{ in: "common practice", clause: "loads at zero", grade: "common-practice" }],
  unproven: { because: "composition only" },
});

/**
 * Does the service device carry the export with the loads at zero?
 *
 * @function
 * @example
 * ```ts
 * import { exportWithinServiceDevice } from "pv-to-grid/grid";
 * exportWithinServiceDevice({ value: "32 A", limit: "35 A" }).verdict; // "met"
 * ```
 */
export const exportWithinServiceDevice = /* @__PURE__ */ condition({
  id: "grid/export-within-service-device",
  asks: "Does the service device carry the export with the loads at zero?",
  force: "requirement",
  value: { unit: "A", symbol: "I_exp", about: "current that the site feeds in with its loads at zero" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_n", about: "rating of the service fuse or breaker" },
  source: [{ in: "common practice", clause: "loads at zero", grade: "common-practice" }],
  note: "a fuse sees the export for hours; its rating at the temperature of its place counts",
});

/**
 * Does the service cable carry the export with the loads at zero?
 *
 * @function
 * @example
 * ```ts
 * import { exportWithinServiceCable } from "pv-to-grid/grid";
 * exportWithinServiceCable({ value: "32 A", limit: "30 A" }).verdict; // "not met"
 * ```
 */
export const exportWithinServiceCable = /* @__PURE__ */ condition({
  id: "grid/export-within-service-cable",
  asks: "Does the service cable carry the export with the loads at zero?",
  force: "requirement",
  value: { unit: "A", symbol: "I_exp", about: "current that the site feeds in with its loads at zero" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_z", about: "ampacity of the service cable" },
  source: [{ in: "common practice", clause: "loads at zero", grade: "common-practice" }],
});

/**
 * Half of the capacity of a line or a transformer, less the plants that are already connected.
 *
 * @function
 * @example
 * ```ts
 * import { halfOfCapacity } from "pv-to-grid/grid";
 * halfOfCapacity({ capacity: "100 kVA", connectedPower: "20 kVA" }).text; // "30000"
 * ```
 */
export const halfOfCapacity = /* @__PURE__ */ formula({
  id: "grid/half-of-capacity",
  about: "half of the capacity of a line or a transformer, less the plants that are already connected",
  takes: {
    capacity: { unit: "VA", symbol: "S_cap", about: "thermal capacity of the line, or capacity of the transformer", above: 0, usual: [1e3, 1e8] },
    connectedPower: { unit: "VA", symbol: "S_con", about: "apparent power of the plants that are already connected", from: 0, usual: [0, 1e8] },
  },
  gives: { unit: "VA", symbol: "S_lim" },
  expression: "capacity / 2 - connectedPower",
  source: [{ in: "RD 1699/2011:2011", clause: "annex I, 1 a and b", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked capacity of a Spanish low-voltage line or transformer" },
});

/**
 * Does the plant stay within half of the capacity of the line or the transformer?
 *
 * @function
 * @example
 * ```ts
 * import { plantWithinHalfOfCapacity } from "pv-to-grid/grid";
 * plantWithinHalfOfCapacity({ value: "25 kVA", limit: "30 kVA" }).verdict; // "met"
 * ```
 */
export const plantWithinHalfOfCapacity = /* @__PURE__ */ condition({
  id: "grid/plant-within-half-of-capacity",
  asks: "Does the plant stay within half of the capacity of the line or the transformer?",
  force: "requirement",
  value: { unit: "VA", symbol: "S", about: "apparent power of the plant" },
  relation: "≤",
  limit: { unit: "VA", symbol: "S_lim", about: "half of the capacity, less the plants that are already connected" },
  source: [{ in: "RD 1699/2011:2011", clause: "annex I, 1 a and b", grade: "copied" }],
});

/**
 * Does the plant stay within the largest power of the interconnection rule?
 *
 * @function
 * @example
 * ```ts
 * import { plantWithinLargestPower } from "pv-to-grid/grid";
 * plantWithinLargestPower({ value: "60 kVA", limit: "100 kVA" }).verdict; // "met"
 * ```
 */
export const plantWithinLargestPower = /* @__PURE__ */ condition({
  id: "grid/plant-within-largest-power",
  asks: "Does the plant stay within the largest power of the interconnection rule?",
  force: "requirement",
  value: { unit: "VA", symbol: "S", about: "apparent power of the plant" },
  relation: "≤",
  limit: { unit: "VA", symbol: "S_lim", about: "largest apparent power of the rule" },
  source: [{ in: "REBT:2002", clause: "ITC-BT-40, 4.3.1", grade: "copied" }],
});
