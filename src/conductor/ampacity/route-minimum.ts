import { formula } from "../../formula/index.js";

/**
 * Ampacity of a route of stretches.
 *
 * @function
 * @example
 * ```ts
 * import { routeMinimum } from "pv-to-grid/conductor";
 * routeMinimum({ ampacities: ["41 A", "32.5 A"] }).text; // "32.5"
 * ```
 */
export const routeMinimum = /* @__PURE__ */ formula({
  id: "conductor/route-minimum", about: "ampacity of a route of stretches",
  takes: { ampacities: { each: "A", symbol: "I_z,i", about: "ampacity of each stretch", above: 0 } },
  gives: { unit: "A", symbol: "I_z" },
  expression: "min(ampacities)",
  source: [{ in: "IEC 60364-5-52:2009", clause: "523", grade: "copied" }],
  unproven: { because: "definition" },
});
