import { formula } from "../../formula/index.js";

/**
 * Current at which a residual current device surely disconnects a fault in a TN system. @function
 *
 * @example
 * ```ts
 * import { residualOperatingCurrent } from "pv-to-grid/protection";
 * residualOperatingCurrent({ ratedResidualCurrent: "300 mA" }).text; // "1.5"
 * ```
 */
export const residualOperatingCurrent = /* @__PURE__ */ formula({
  id: "protection/residual-operating-current",
  about: "current at which a residual current device surely disconnects a fault in a TN system",
  takes: {
    ratedResidualCurrent: { unit: "A", symbol: "I_Δn", about: "rated residual operating current of the device", above: 0, usual: [0.005, 10] },
  },
  constants: {
    residualFaultMultiple: {
      value: "5", unit: "1", symbol: "5", about: "multiple of the rated residual current",
      source: [{ in: "IEC 60364-4-41:2017", clause: "411.4.4, note", grade: "memory" }],
    },
  },
  gives: { unit: "A", symbol: "5 I_Δn" },
  expression: "residualFaultMultiple * ratedResidualCurrent",
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.4.4, note", grade: "memory" }],
  unproven: { because: "definition" },
});
