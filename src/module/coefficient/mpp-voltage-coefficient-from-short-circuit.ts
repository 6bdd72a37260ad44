import { formula } from "../../formula/index.js";

/**
 * Temperature coefficient of the voltage at the maximum power point, the coefficient of the short-circuit current standing in for that of the current.
 *
 * @function
 * @example
 * ```ts
 * import { mppVoltageCoefficientFromShortCircuit } from "pv-to-grid/module";
 * mppVoltageCoefficientFromShortCircuit({ maximumPowerCoefficient: "-0.31 %/K", shortCircuitCurrentCoefficient: "0.05 %/K" }).text; // "-0.0036"
 * ```
 */
export const mppVoltageCoefficientFromShortCircuit = /* @__PURE__ */ formula({
  id: "module/mpp-voltage-coefficient-from-short-circuit",
  about: "temperature coefficient of the voltage at the maximum power point, the coefficient of the short-circuit current standing in for that of the current",
  takes: {
    maximumPowerCoefficient: { unit: "1/K", symbol: "γ_Pmax", about: "relative temperature coefficient of the maximum power", above: -0.02, below: 0, usual: [-0.01, -0.0005] },
    shortCircuitCurrentCoefficient: { unit: "1/K", symbol: "α_ISC", about: "relative temperature coefficient of the short-circuit current", above: -0.01, below: 0.01, usual: [-0.002, 0.003] },
  },
  gives: { unit: "1/K", symbol: "β_UMPP" },
  expression: "maximumPowerCoefficient - shortCircuitCurrentCoefficient",
  source: [
    { in: "RE-wrenches list:2011", clause: "replies on string voltage in hot weather", grade: "copied" },
  ],
  unproven: { because: "no publication found", sought: "examples that state the coefficient of U_MPP beside those of power and current" },
  note: "estimate; the current at the maximum power point usually rises less than the short-circuit current, so that the estimate falls too fast, which is the safe side for the shortest string",
});
