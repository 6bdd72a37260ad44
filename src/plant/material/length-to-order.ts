import { formula } from "../../formula/index.js";

/**
 * Length of one cable type to order, with an allowance.
 *
 * @function
 * @example
 * ```ts
 * import { lengthToOrder } from "pv-to-grid/plant";
 * lengthToOrder({ lengths: ["96 m", "52 m"], cableAllowance: "10 %" }).text; // "162.8"
 * ```
 */
export const lengthToOrder = /* @__PURE__ */ formula({
  id: "plant/length-to-order",
  about: "length of one cable type to order, with an allowance",
  takes: {
    lengths: { each: "m", symbol: "L_k,i", about: "length that each route takes", from: 0, usual: [0, 100000] },
    cableAllowance: { unit: "1", symbol: "a", about: "allowance for ends, bends and waste", from: 0, to: 1 },
  },
  gives: { unit: "m", symbol: "L_order" },
  expression: "sum(lengths) * (1 + cableAllowance)",
  source: [{ in: "common practice", clause: "sum of the routes and an allowance", grade: "common-practice" }],
  unproven: { because: "definition" },
});
