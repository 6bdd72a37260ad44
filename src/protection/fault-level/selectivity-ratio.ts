import { formula } from "../../formula/index.js";

/**
 * Rated current that a gG fuse upstream needs for selectivity. @function
 *
 * @example
 * ```ts
 * import { selectiveFuseRating } from "pv-to-grid/protection";
 * selectiveFuseRating({ fuseBehind: "35 A" }).text; // "56"
 * ```
 */
export const selectiveFuseRating = /* @__PURE__ */ formula({
  id: "protection/selective-fuse-rating",
  about: "rated current that a gG fuse upstream needs for selectivity",
  takes: {
    fuseBehind: { unit: "A", symbol: "I_n", about: "rated current of the fuse behind", above: 0, usual: [2, 1250] },
  },
  constants: {
    selectivityRatio: {
      value: "1.6", unit: "1", symbol: "1.6", about: "ratio of selective fuses",
      source: [{ in: "IEC 60269-1:2006", clause: "selectivity of gG fuses from 16 A", grade: "memory" }],
    },
  },
  gives: { unit: "A", symbol: "1.6 I_n" },
  expression: "selectivityRatio * fuseBehind",
  source: [{ in: "IEC 60269-1:2006", clause: "selectivity of gG fuses from 16 A", grade: "memory" }],
  unproven: { because: "definition" },
});
