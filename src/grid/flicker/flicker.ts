import { formula } from "../../formula/index.js";
import { type Input, InputError, type Quantity } from "../../quantity/index.js";

/**
 * Rapid voltage change when the largest unit switches on, as a share of the nominal voltage.
 *
 * @function
 * @example
 * ```ts
 * import { rapidVoltageChange } from "pv-to-grid/grid";
 * rapidVoltageChange({ inrushFactor: "1.2", apparentPower: "10 kVA", shortCircuitPower: "800 kVA" }).text; // "0.015"
 * ```
 */
export const rapidVoltageChange = /* @__PURE__ */ formula({
  id: "grid/rapid-voltage-change",
  about: "rapid voltage change when the largest unit switches on, as a share of the nominal voltage",
  takes: {
    inrushFactor: { unit: "1", symbol: "k_imax", about: "largest current at switching on over the rated current", above: 0, usual: [0.1, 10] },
    apparentPower: { unit: "VA", symbol: "S_rE", about: "apparent power of the largest unit", from: 0, usual: [0, 1e9] },
    shortCircuitPower: { unit: "VA", symbol: "S_k", about: "short-circuit power at the connection point", above: 0, usual: [1e4, 1e12] },
  },
  gives: { unit: "1", symbol: "d_max" },
  expression: "inrushFactor * apparentPower / shortCircuitPower",
  source: [{ in: "VDE-AR-N 4105:2018", clause: "5.4.2", grade: "memory" }],
  note: "converters of PV 1.0, unknown converters 1.2, as recalled",
  unproven: { because: "no publication found", sought: "worked switching voltage change with inrush factor and short-circuit power printed" },
});

/**
 * Long-term flicker of one generating unit.
 *
 * @function
 * @example
 * ```ts
 * import { longTermFlickerOfUnit } from "pv-to-grid/grid";
 * longTermFlickerOfUnit({ flickerCoefficient: "10", apparentPower: "10 kVA", shortCircuitPower: "800 kVA" }).text; // "0.125"
 * ```
 */
export const longTermFlickerOfUnit = /* @__PURE__ */ formula({
  id: "grid/long-term-flicker-of-unit",
  about: "long-term flicker of one generating unit",
  takes: {
    flickerCoefficient: { unit: "1", symbol: "c", about: "flicker coefficient of the unit, from its certificate", from: 0, usual: [0, 50] },
    apparentPower: { unit: "VA", symbol: "S_rE", about: "apparent power of the unit", from: 0, usual: [0, 1e9] },
    shortCircuitPower: { unit: "VA", symbol: "S_k", about: "short-circuit power at the connection point", above: 0, usual: [1e4, 1e12] },
  },
  gives: { unit: "1", symbol: "P_lt" },
  expression: "flickerCoefficient * apparentPower / shortCircuitPower",
  source: [{ in: "VDE-AR-N 4105:2018", clause: "5.4.3", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked flicker of a generating unit with its coefficient printed" },
});

/**
 * Square of a flicker severity.
 *
 * @function
 * @example
 * ```ts
 * import { flickerSquared } from "pv-to-grid/grid";
 * flickerSquared({ flicker: "0.4" }).text; // "0.16"
 * ```
 */
export const flickerSquared = /* @__PURE__ */ formula({
  id: "grid/flicker-squared",
  about: "square of a flicker severity",
  takes: { flicker: { unit: "1", symbol: "P_i", about: "flicker severity of one unit", from: 0, usual: [0, 20] } },
  gives: { unit: "1", symbol: "P_i²" },
  expression: "flicker ^ 2",
  source: [{ in: "common practice", clause: "definition", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Long-term flicker of several units from the squares of their own.
 *
 * @function
 * @example
 * ```ts
 * import { longTermFlickerOfUnits } from "pv-to-grid/grid";
 * longTermFlickerOfUnits({ flickerSquares: ["0.09", "0.16"] }).show(); // "0.5"
 * ```
 */
export const longTermFlickerOfUnits = /* @__PURE__ */ formula({
  id: "grid/long-term-flicker-of-units",
  about: "long-term flicker of several units from the squares of their own",
  takes: { flickerSquares: { each: "1", symbol: "P_i²", about: "square of the flicker of each unit", from: 0, usual: [0, 400] } },
  gives: { unit: "1", symbol: "P_lt" },
  expression: "sqrt(sum(flickerSquares))",
  source: [{ in: "VDE-AR-N 4105:2018", clause: "5.4.3", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked flicker of several units" },
});

/**
 * Mean of neighbouring percentiles of the instantaneous flicker.
 *
 * @function
 * @example
 * ```ts
 * import { smoothedPercentile } from "pv-to-grid/grid";
 * smoothedPercentile({ percentiles: ["2", "3", "4"] }).text; // "3"
 * ```
 */
export const smoothedPercentile = /* @__PURE__ */ formula({
  id: "grid/smoothed-percentile",
  about: "mean of neighbouring percentiles of the instantaneous flicker",
  takes: { percentiles: { each: "1", symbol: "P_k", about: "levels exceeded for neighbouring shares of the time", from: 0, usual: [0, 1000] } },
  gives: { unit: "1", symbol: "P_ks" },
  expression: "sum(percentiles) / count(percentiles)",
  source: [{ in: "IEC 61000-4-15:2010", clause: "5.7.2", grade: "reproduced", seen: "Hioki 3196 manual:undated, p. 211" }],
  note: "1 %: 0.7, 1, 1.5; 3 %: 2.2, 3, 4; 10 %: 6, 8, 10, 13, 17; 50 %: 30, 50, 80",
  unproven: { because: "no publication found", sought: "worked short-term flicker from percentiles" },
});

/**
 * Short-term flicker severity from the percentiles of ten minutes.
 *
 * @function
 * @example
 * ```ts
 * import { shortTermFlicker } from "pv-to-grid/grid";
 * shortTermFlicker({ percentile01: "1.5", percentile1: "1.2", percentile3: "1", percentile10: "0.8", percentile50: "0.5" }).show(); // "0.6632"
 * ```
 */
export const shortTermFlicker = /* @__PURE__ */ formula({
  id: "grid/short-term-flicker",
  about: "short-term flicker severity from the percentiles of ten minutes",
  takes: {
    percentile01: { unit: "1", symbol: "P_0.1", about: "level exceeded for 0.1 % of the time", from: 0, usual: [0, 1000] },
    percentile1: { unit: "1", symbol: "P_1s", about: "smoothed level exceeded for 1 % of the time", from: 0, usual: [0, 1000] },
    percentile3: { unit: "1", symbol: "P_3s", about: "smoothed level exceeded for 3 % of the time", from: 0, usual: [0, 1000] },
    percentile10: { unit: "1", symbol: "P_10s", about: "smoothed level exceeded for 10 % of the time", from: 0, usual: [0, 1000] },
    percentile50: { unit: "1", symbol: "P_50s", about: "smoothed level exceeded for 50 % of the time", from: 0, usual: [0, 1000] },
  },
  constants: {
    flickerWeight01: { value: "0.0314", unit: "1", symbol: "k_0.1", about: "weight of the level of 0.1 %", source: [{ in: "IEC 61000-4-15:2010", clause: "5.7.2", grade: "reproduced", seen: "Hioki 3196 manual:undated, p. 211" }] },
    flickerWeight1: { value: "0.0525", unit: "1", symbol: "k_1", about: "weight of the level of 1 %", source: [{ in: "IEC 61000-4-15:2010", clause: "5.7.2", grade: "reproduced", seen: "Hioki 3196 manual:undated, p. 211" }] },
    flickerWeight3: { value: "0.0657", unit: "1", symbol: "k_3", about: "weight of the level of 3 %", source: [{ in: "IEC 61000-4-15:2010", clause: "5.7.2", grade: "reproduced", seen: "Hioki 3196 manual:undated, p. 211" }] },
    flickerWeight10: { value: "0.28", unit: "1", symbol: "k_10", about: "weight of the level of 10 %", source: [{ in: "IEC 61000-4-15:2010", clause: "5.7.2", grade: "reproduced", seen: "Hioki 3196 manual:undated, p. 211" }] },
    flickerWeight50: { value: "0.08", unit: "1", symbol: "k_50", about: "weight of the level of 50 %", source: [{ in: "IEC 61000-4-15:2010", clause: "5.7.2", grade: "reproduced", seen: "Hioki 3196 manual:undated, p. 211" }] },
  },
  gives: { unit: "1", symbol: "P_st" },
  expression:
    "sqrt(flickerWeight01 * percentile01 + flickerWeight1 * percentile1 + flickerWeight3 * percentile3 + flickerWeight10 * percentile10 + flickerWeight50 * percentile50)",
  source: [{ in: "IEC 61000-4-15:2010", clause: "5.7.2", grade: "reproduced", seen: "Hioki 3196 manual:undated, p. 211" }],
  unproven: { because: "no publication found", sought: "worked short-term flicker from percentiles" },
});

/**
 * Cube of a short-term flicker severity.
 *
 * @function
 * @example
 * ```ts
 * import { flickerCubed } from "pv-to-grid/grid";
 * flickerCubed({ flicker: "0.4" }).text; // "0.064"
 * ```
 */
export const flickerCubed = /* @__PURE__ */ formula({
  id: "grid/flicker-cubed",
  about: "cube of a short-term flicker severity",
  takes: { flicker: { unit: "1", symbol: "P_st,i", about: "short-term flicker severity of ten minutes", from: 0, usual: [0, 20] } },
  gives: { unit: "1", symbol: "P_st,i³" },
  expression: "flicker ^ 3",
  source: [{ in: "common practice", clause: "definition", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Long-term flicker severity from the cubes of the short-term values.
 *
 * @function
 * @example
 * ```ts
 * import { longTermFlicker } from "pv-to-grid/grid";
 * longTermFlicker({ flickerCubes: ["0.064", "0.064", "0.064", "0.064", "0.064", "0.064", "0.064", "0.064", "0.064", "0.064", "0.064", "0.064"] }).show(); // "0.4"
 * ```
 */
export const longTermFlicker = /* @__PURE__ */ formula({
  id: "grid/long-term-flicker",
  about: "long-term flicker severity from the cubes of the short-term values",
  takes: { flickerCubes: { each: "1", symbol: "P_st,i³", about: "cube of each short-term flicker severity", from: 0, usual: [0, 8000] } },
  gives: { unit: "1", symbol: "P_lt" },
  expression: "(sum(flickerCubes) / count(flickerCubes)) ^ (1 / 3)",
  source: [{ in: "IEC 61000-4-15:2010", clause: "5.8", grade: "reproduced", seen: "Hioki 3196 manual:undated, p. 211" }],
  unproven: { because: "no publication found", sought: "worked long-term flicker from twelve values" },
});

const SHORT_TERM_VALUES = 12;

/**
 * Long-term flicker severity from twelve consecutive short-term values of ten minutes.
 *
 * @throws InputError where there are not twelve
 */
export function longTermFlickerOf(shortTerm: readonly Input<"ratio">[]): Quantity<"ratio"> {
  if (shortTerm.length !== SHORT_TERM_VALUES) {
    const expected = "twelve values of ten minutes";
    throw new InputError("long-term flicker", [
      {
        path: "shortTerm",
        code: "out-of-domain",
        message: `expected ${expected}`,
        expected,
        received: `${shortTerm.length} values`,
      },
    ]);
  }
  return longTermFlicker({ flickerCubes: shortTerm.map((flicker) => flickerCubed({ flicker })) });
}
