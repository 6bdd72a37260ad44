import { series } from "../../formula/index.js";

/**
 * Standard rated short-circuit capacities of miniature circuit-breakers. @function
 *
 * @example
 * ```ts
 * import { breakingCapacities } from "pv-to-grid/device";
 * breakingCapacities.sizes().map((capacity) => capacity.text).join(" "); // "1500 3000 4500 6000 10000 20000"
 * ```
 */
export const breakingCapacities = /* @__PURE__ */ series({
  id: "device/breaking-capacities",
  about: "standard rated short-circuit capacities of miniature circuit-breakers",
  unit: "A",
  symbol: "I_cn",
  sizes: "1500 3000 4500 6000 10000 20000",
  source: [{ in: "IEC 60898-1:2015", clause: "5.3.4", grade: "memory" }],
});
