import { series } from "../../formula/index.js";

/**
 * Preferred rated currents of miniature circuit-breakers. @function
 *
 * @example
 * ```ts
 * import { breakerRatings } from "pv-to-grid/device";
 * breakerRatings.sizes().map((rating) => rating.text).join(" "); // "6 8 10 13 16 20 25 32 40 50 63 80 100 125"
 * ```
 */
export const breakerRatings = /* @__PURE__ */ series({
  id: "device/breaker-ratings",
  about: "preferred rated currents of miniature circuit-breakers",
  unit: "A",
  symbol: "I_n",
  sizes: "6 8 10 13 16 20 25 32 40 50 63 80 100 125",
  source: [{ in: "IEC 60898-1:2015", clause: "5.3.2", grade: "memory" }],
});
