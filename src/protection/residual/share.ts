import { formula } from "../../formula/index.js";

/**
 * Standing leakage that a residual current device bears. @function
 *
 * @example
 * ```ts
 * import { leakageShare } from "pv-to-grid/protection";
 * leakageShare({ ratedResidualCurrent: "30 mA" }).text; // "0.009"
 * ```
 */
export const leakageShare = /* @__PURE__ */ formula({
  id: "protection/leakage-share",
  about: "standing leakage that a residual current device bears",
  takes: {
    ratedResidualCurrent: { unit: "A", symbol: "I_Δn", about: "rated residual operating current of the device", above: 0, usual: [0.005, 10] },
  },
  constants: {
    standingLeakageShare: {
      value: "0.3", unit: "1", symbol: "0.3", about: "standing leakage over rated residual current",
      source: [{ in: "IEC 60364-5-53:2019", clause: "531.3.2", grade: "memory" }],
    },
  },
  gives: { unit: "A", symbol: "0.3 I_Δn" },
  expression: "standingLeakageShare * ratedResidualCurrent",
  source: [{ in: "IEC 60364-5-53:2019", clause: "531.3.2", grade: "memory" }],
  unproven: { because: "definition" },
});

/**
 * Rated residual current that a device upstream needs for selectivity. @function
 *
 * @example
 * ```ts
 * import { selectiveResidualCurrent } from "pv-to-grid/protection";
 * selectiveResidualCurrent({ ratedResidualCurrent: "30 mA" }).text; // "0.09"
 * ```
 */
export const selectiveResidualCurrent = /* @__PURE__ */ formula({
  id: "protection/selective-residual-current",
  about: "rated residual current that a device upstream needs for selectivity",
  takes: {
    ratedResidualCurrent: { unit: "A", symbol: "I_Δn", about: "rated residual operating current of the device", above: 0, usual: [0.005, 10] },
  },
  gives: { unit: "A", symbol: "3 I_Δn" },
  expression: "3 * ratedResidualCurrent",
  source: [{ in: "IEC 60364-5-53:2019", clause: "536.4.1.4", grade: "memory" }],
  unproven: { because: "definition" },
});
