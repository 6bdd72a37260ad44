import { formula } from "../../formula/index.js";

/**
 * Lowest temperature that recurs once in a return period.
 *
 * @function
 * @example
 * ```ts
 * import { returnPeriodMinimum } from "pv-to-grid/climate";
 * returnPeriodMinimum({ meanAnnualMinimum: "-17.3 °C", standardDeviation: "3.7 K", returnPeriod: "50 a" }).show({ digits: 3 }); // "-26.9 °C"
 * ```
 */
export const returnPeriodMinimum = /* @__PURE__ */ formula({
  id: "climate/return-period-minimum",
  about: "lowest temperature that recurs once in a return period",
  takes: {
    meanAnnualMinimum: { unit: "°C", symbol: "M", about: "mean of the lowest temperatures of the years", above: -100, to: 70, usual: [-60, 60] },
    standardDeviation: { unit: "K", symbol: "s", about: "standard deviation of the annual extremes", from: 0, to: 20 },
    returnPeriod: { unit: "a", symbol: "n", about: "return period", from: 2, to: 1000 },
  },
  constants: {
    eulerConstant: { value: "0.5772", unit: "1", symbol: "0.5772", about: "Euler constant as the handbook prints it", source: [{ in: "ASHRAE Fundamentals:2013", clause: "chapter 14, return period", grade: "memory" }] },
    oneYear: { value: "1", unit: "a", symbol: "a", about: "one year", source: [{ in: "ASHRAE Fundamentals:2013", clause: "chapter 14, return period", grade: "memory" }] },
  },
  gives: { unit: "°C", symbol: "T_n,min" },
  expression: "meanAnnualMinimum + sqrt(2 * 3) / pi * (eulerConstant + log(log(returnPeriod / (returnPeriod - oneYear)))) * standardDeviation",
  source: [{ in: "ASHRAE Fundamentals:2013", clause: "chapter 14, return period", grade: "copied", seen: "ASHRAE 2013 station file:undated, columns of return-period values" }],
  unproven: { because: "no publication found", sought: "the handbook's own tables; the station data held are a copy without an editor" },
});
