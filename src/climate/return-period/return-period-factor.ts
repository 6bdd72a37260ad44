import { formula } from "../../formula/index.js";

/**
 * Factor on the standard deviation of annual extremes for a return period.
 *
 * @function
 * @example
 * ```ts
 * import { returnPeriodFactor } from "pv-to-grid/climate";
 * returnPeriodFactor({ returnPeriod: "50 a" }).show(); // "2.592"
 * ```
 */
export const returnPeriodFactor = /* @__PURE__ */ formula({
  id: "climate/return-period-factor",
  about: "factor on the standard deviation of annual extremes for a return period",
  takes: {
    returnPeriod: { unit: "a", symbol: "n", about: "return period", from: 2, to: 1000 },
  },
  constants: {
    eulerConstant: { value: "0.5772", unit: "1", symbol: "0.5772", about: "Euler constant as the handbook prints it", source: [{ in: "ASHRAE Fundamentals:2013", clause: "chapter 14, return period", grade: "memory" }] },
    oneYear: { value: "1", unit: "a", symbol: "a", about: "one year", source: [{ in: "ASHRAE Fundamentals:2013", clause: "chapter 14, return period", grade: "memory" }] },
  },
  gives: { unit: "1", symbol: "F" },
  expression: "-sqrt(2 * 3) / pi * (eulerConstant + log(log(returnPeriod / (returnPeriod - oneYear))))",
  source: [{ in: "ASHRAE Fundamentals:2013", clause: "chapter 14, return period", grade: "memory" }],
  unproven: { because: "no publication found", sought: "the handbook's own tables; the station data held are a copy without an editor" },
  note: "Gumbel distribution of annual extremes; for two years the factor is below zero, since the mean recurs more rarely than the median",
});
