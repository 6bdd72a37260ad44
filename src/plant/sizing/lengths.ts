import { formula } from "../../formula/index.js";

/**
 * Length of a route, one way.
 *
 * @function
 * @example
 * ```ts
 * import { totalLength } from "pv-to-grid/plant";
 * totalLength({ lengths: ["6 m", "16 m"] }).text; // "22"
 * ```
 */
export const totalLength = /* @__PURE__ */ formula({
  id: "plant/total-length",
  about: "length of a route, one way",
  takes: { lengths: { each: "m", symbol: "L_i", about: "length of each stretch", from: 0, usual: [0, 5000] } },
  gives: { unit: "m", symbol: "L" },
  expression: "sum(lengths)",
  source: [{ in: "common practice", clause: "sum of the stretches of a route", grade: "common-practice" }],
  unproven: { because: "definition" },
});
