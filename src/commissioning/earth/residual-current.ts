import { formula } from "../../formula/index.js";

/**
 * Current of a test of a residual current device. @function
 *
 * @example
 * ```ts
 * import { residualTestCurrent } from "pv-to-grid/commissioning";
 * residualTestCurrent({ ratedResidualCurrent: "30 mA", multiple: 5 }).text; // "0.15"
 * ```
 */
export const residualTestCurrent = /* @__PURE__ */ formula({
  id: "commissioning/residual-test-current",
  about: "current of a test of a residual current device",
  takes: {
    ratedResidualCurrent: { unit: "A", symbol: "I_Δn", about: "rated residual operating current of the device", above: 0, usual: [0.005, 10] },
    multiple: { unit: "1", symbol: "k", about: "multiple of the rated residual current", above: 0, usual: [0.5, 5] },
  },
  gives: { unit: "A", symbol: "I_test" },
  expression: "multiple * ratedResidualCurrent",
  source: [{ in: "IEC 60364-6:2016", clause: "test of residual current devices", grade: "memory" }],
  unproven: { because: "definition" },
  note: "alternating current; types A and B are tested with their own wave forms as their makers state",
});
