import { formula } from "../../formula/index.js";

/**
 * Highest temperature that recurs once in a return period.
 *
 * @function
 * @example
 * ```ts
 * import { returnPeriodMaximum } from "pv-to-grid/climate";
 * returnPeriodMaximum({ meanAnnualMaximum: "45.9 °C", standardDeviation: "1.5 K", returnPeriod: "20 a" }).show({ digits: 3 }); // "48.7 °C"
 * ```
 */
export const returnPeriodMaximum = /* @__PURE__ */ formula({
  id: "climate/return-period-maximum",
  about: "highest temperature that recurs once in a return period",
  takes: {
    meanAnnualMaximum: { unit: "°C", symbol: "M", about: "mean of the highest temperatures of the years", above: -100, to: 70, usual: [-60, 60] },
    standardDeviation: { unit: "K", symbol: "s", about: "standard deviation of the annual extremes", from: 0, to: 20 },
    returnPeriod: { unit: "a", symbol: "n", about: "return period", from: 2, to: 1000 },
  },
  constants: {
    eulerConstant: { value: "0.5772", unit: "1", symbol: "0.5772", about: "Euler constant as the handbook prints it", source: [{ in: "ASHRAE Fundamentals:2013", clause: "chapter 14, return period", grade: "memory" }] },
    oneYear: { value: "1", unit: "a", symbol: "a", about: "one year", source: [{ in: "ASHRAE Fundamentals:2013", clause: "chapter 14, return period", grade: "memory" }] },
  },
  gives: { unit: "°C", symbol: "T_n,max" },
  expression: "meanAnnualMaximum - sqrt(2 * 3) / pi * (eulerConstant + log(log(returnPeriod / (returnPeriod - oneYear)))) * standardDeviation",
  source: [{ in: "ASHRAE Fundamentals:2013", clause: "chapter 14, return period", grade: "copied", seen: "ASHRAE 2013 station file:undated, columns of return-period values" }],
  unproven: { because: "no publication found", sought: "the handbook's own tables; the station data held are a copy without an editor" },
});
