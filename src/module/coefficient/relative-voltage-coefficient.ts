import { formula } from "../../formula/index.js";

/**
 * Relative temperature coefficient of a voltage from the absolute one.
 *
 * @function
 * @example
 * ```ts
 * import { relativeVoltageCoefficient } from "pv-to-grid/module";
 * relativeVoltageCoefficient({ absoluteVoltageCoefficient: "-130 mV/K", stcVoltage: "50 V" }).text; // "-0.0026"
 * ```
 */
export const relativeVoltageCoefficient = /* @__PURE__ */ formula({
  id: "module/relative-voltage-coefficient",
  about: "relative temperature coefficient of a voltage from the absolute one",
  takes: {
    absoluteVoltageCoefficient: { unit: "V/K", symbol: "β_U", about: "absolute temperature coefficient of the voltage", above: -5, below: 1, usual: [-1, 0] },
    stcVoltage: { unit: "V", symbol: "U_STC", about: "voltage at standard test conditions that the coefficient is stated for", above: 0, usual: [0.3, 200] },
  },
  gives: { unit: "1/K", symbol: "β_rel" },
  expression: "absoluteVoltageCoefficient / stcVoltage",
  source: [
    { in: "common practice", clause: "a relative coefficient is the share of the value at standard test conditions", grade: "common-practice" },
  ],
  unproven: { because: "definition" },
});
