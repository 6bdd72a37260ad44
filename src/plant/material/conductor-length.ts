import { formula } from "../../formula/index.js";

/**
 * Length of cable that the equal circuits of a route take.
 *
 * @function
 * @example
 * ```ts
 * import { conductorLength } from "pv-to-grid/plant";
 * conductorLength({ length: "24 m", circuits: "2", cables: "2" }).text; // "96"
 * ```
 */
export const conductorLength = /* @__PURE__ */ formula({
  id: "plant/conductor-length",
  about: "length of cable that the equal circuits of a route take",
  takes: {
    length: { unit: "m", symbol: "L", about: "length of the route, one way", from: 0, usual: [0, 5000] },
    circuits: { unit: "1", symbol: "n_c", about: "equal circuits along the route", from: 1, usual: [1, 10000] },
    cables: { unit: "1", symbol: "n_k", about: "cables of each circuit: one of several cores, or one for each conductor", from: 1, usual: [1, 100] },
  },
  gives: { unit: "m", symbol: "L_k" },
  expression: "length * circuits * cables",
  source: [{ in: "common practice", clause: "length of cable of equal circuits", grade: "common-practice" }],
  unproven: { because: "definition" },
});
