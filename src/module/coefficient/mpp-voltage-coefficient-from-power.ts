import { formula } from "../../formula/index.js";

/**
 * Temperature coefficient of the voltage at the maximum power point, from those of the power and of its current.
 *
 * @function
 * @example
 * ```ts
 * import { mppVoltageCoefficientFromPower } from "pv-to-grid/module";
 * mppVoltageCoefficientFromPower({ maximumPowerCoefficient: "-0.31 %/K", mppCurrentCoefficient: "0.02 %/K" }).text; // "-0.0033"
 * ```
 */
export const mppVoltageCoefficientFromPower = /* @__PURE__ */ formula({
  id: "module/mpp-voltage-coefficient-from-power",
  about: "temperature coefficient of the voltage at the maximum power point, from those of the power and of its current",
  takes: {
    maximumPowerCoefficient: { unit: "1/K", symbol: "γ_Pmax", about: "relative temperature coefficient of the maximum power", above: -0.02, below: 0, usual: [-0.01, -0.0005] },
    mppCurrentCoefficient: { unit: "1/K", symbol: "α_IMPP", about: "relative temperature coefficient of the current at the maximum power point", above: -0.01, below: 0.01, usual: [-0.003, 0.003] },
  },
  gives: { unit: "1/K", symbol: "β_UMPP" },
  expression: "maximumPowerCoefficient - mppCurrentCoefficient",
  source: [
    { in: "RE-wrenches list:2011", clause: "replies on string voltage in hot weather", grade: "copied" },
  ],
  unproven: { because: "no publication found", sought: "examples that state all three coefficients of one module" },
  note: "to first order; stated as an estimate wherever it is used",
});
