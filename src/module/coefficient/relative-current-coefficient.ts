import { formula } from "../../formula/index.js";

/**
 * Relative temperature coefficient of a current from the absolute one.
 *
 * @function
 * @example
 * ```ts
 * import { relativeCurrentCoefficient } from "pv-to-grid/module";
 * relativeCurrentCoefficient({ absoluteCurrentCoefficient: "5 mA/K", stcCurrent: "10 A" }).text; // "0.0005"
 * ```
 */
export const relativeCurrentCoefficient = /* @__PURE__ */ formula({
  id: "module/relative-current-coefficient",
  about: "relative temperature coefficient of a current from the absolute one",
  takes: {
    absoluteCurrentCoefficient: { unit: "A/K", symbol: "α_I", about: "absolute temperature coefficient of the current", above: -0.5, below: 0.5, usual: [-0.05, 0.05] },
    stcCurrent: { unit: "A", symbol: "I_STC", about: "current at standard test conditions that the coefficient is stated for", above: 0, usual: [0.05, 40] },
  },
  gives: { unit: "1/K", symbol: "α_rel" },
  expression: "absoluteCurrentCoefficient / stcCurrent",
  source: [
    { in: "common practice", clause: "a relative coefficient is the share of the value at standard test conditions", grade: "common-practice" },
  ],
  unproven: { because: "definition" },
});
