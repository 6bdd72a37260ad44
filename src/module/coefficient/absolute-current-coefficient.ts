import { formula } from "../../formula/index.js";

/**
 * Absolute temperature coefficient of a current from the relative one.
 *
 * @function
 * @example
 * ```ts
 * import { absoluteCurrentCoefficient } from "pv-to-grid/module";
 * absoluteCurrentCoefficient({ relativeCurrentCoefficient: "0.05 %/K", stcCurrent: "10 A" }).text; // "0.005"
 * ```
 */
export const absoluteCurrentCoefficient = /* @__PURE__ */ formula({
  id: "module/absolute-current-coefficient",
  about: "absolute temperature coefficient of a current from the relative one",
  takes: {
    relativeCurrentCoefficient: { unit: "1/K", symbol: "α_I", about: "relative temperature coefficient of the current", above: -0.01, below: 0.01, usual: [-0.003, 0.003] },
    stcCurrent: { unit: "A", symbol: "I_STC", about: "current at standard test conditions that the coefficient is stated for", above: 0, usual: [0.05, 40] },
  },
  gives: { unit: "A/K", symbol: "α_abs" },
  expression: "relativeCurrentCoefficient * stcCurrent",
  source: [
    { in: "common practice", clause: "a relative coefficient is the share of the value at standard test conditions", grade: "common-practice" },
  ],
  unproven: { because: "definition" },
});
