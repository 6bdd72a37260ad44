import { formula } from "../../formula/index.js";

/**
 * Absolute temperature coefficient of a voltage from the relative one.
 *
 * @function
 * @example
 * ```ts
 * import { absoluteVoltageCoefficient } from "pv-to-grid/module";
 * absoluteVoltageCoefficient({ relativeVoltageCoefficient: "-0.26 %/K", stcVoltage: "50 V" }).text; // "-0.13"
 * ```
 */
export const absoluteVoltageCoefficient = /* @__PURE__ */ formula({
  id: "module/absolute-voltage-coefficient",
  about: "absolute temperature coefficient of a voltage from the relative one",
  takes: {
    relativeVoltageCoefficient: { unit: "1/K", symbol: "β_U", about: "relative temperature coefficient of the voltage", above: -0.02, below: 0.02, usual: [-0.01, 0.001] },
    stcVoltage: { unit: "V", symbol: "U_STC", about: "voltage at standard test conditions that the coefficient is stated for", above: 0, usual: [0.3, 200] },
  },
  gives: { unit: "V/K", symbol: "β_abs" },
  expression: "relativeVoltageCoefficient * stcVoltage",
  source: [
    { in: "common practice", clause: "a relative coefficient is the share of the value at standard test conditions", grade: "common-practice" },
  ],
  unproven: { because: "definition" },
});
