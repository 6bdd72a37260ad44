import { formula } from "../../formula/index.js";

/**
 * Temperature of the hottest stretch of a conductor.
 *
 * @function
 * @example
 * ```ts
 * import { hottestStretch } from "pv-to-grid/conductor";
 * hottestStretch({ temperatures: ["52 °C", "61 °C"] }).text; // "61"
 * ```
 */
export const hottestStretch = /* @__PURE__ */ formula({
  id: "conductor/hottest-stretch", about: "temperature of the hottest stretch of a conductor",
  takes: { temperatures: { each: "°C", symbol: "θ_i", about: "temperature of the conductor on each stretch" } },
  gives: { unit: "°C", symbol: "θ" },
  expression: "max(temperatures)",
  source: [{ in: "common practice", clause: "the hottest stretch decides", grade: "common-practice" }],
  unproven: { because: "definition" },
});
