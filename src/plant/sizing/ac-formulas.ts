import { formula } from "../../formula/index.js";

/**
 * Current of several sources that feed through one cable. @function
 *
 * @example
 * ```ts
 * import { combinedCurrent } from "pv-to-grid/plant";
 * combinedCurrent({ currents: ["8 A", "16 A"] }).text; // "24"
 * ```
 */
export const combinedCurrent = /* @__PURE__ */ formula({
  id: "plant/combined-current",
  about: "current of several sources that feed through one cable",
  takes: { currents: { each: "A", symbol: "I_i", about: "current of each source", from: 0, usual: [0, 20000] } },
  gives: { unit: "A", symbol: "I_b" },
  expression: "sum(currents)",
  source: [{ in: "common practice", clause: "sum of the sources on one line conductor, in phase", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Apparent power of several sources that feed through one cable. @function
 *
 * @example
 * ```ts
 * import { combinedApparentPower } from "pv-to-grid/plant";
 * combinedApparentPower({ apparentPowers: ["5 kVA", "10 kVA"] }).text; // "15000"
 * ```
 */
export const combinedApparentPower = /* @__PURE__ */ formula({
  id: "plant/combined-apparent-power",
  about: "apparent power of several sources that feed through one cable",
  takes: { apparentPowers: { each: "VA", symbol: "S_i", about: "apparent power of each source", from: 0, usual: [0, 1e9] } },
  gives: { unit: "VA", symbol: "S" },
  expression: "sum(apparentPowers)",
  source: [{ in: "common practice", clause: "sum of the sources at one power factor", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Reactive factor that goes with a displacement power factor, injecting. @function
 *
 * @example
 * ```ts
 * import { reactiveFactorOf } from "pv-to-grid/plant";
 * reactiveFactorOf({ powerFactor: "0.8" }).text; // "0.6"
 * ```
 */
export const reactiveFactorOf = /* @__PURE__ */ formula({
  id: "plant/reactive-factor-of",
  about: "reactive factor that goes with a displacement power factor, injecting",
  takes: { powerFactor: { unit: "1", symbol: "cos φ", about: "displacement power factor", from: 0, to: 1 } },
  gives: { unit: "1", symbol: "sin φ" },
  expression: "sqrt(1 - powerFactor ^ 2)",
  source: [{ in: "common practice", clause: "trigonometry", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * The same value taken from the grid in place of fed into it. @function
 *
 * @example
 * ```ts
 * import { absorbing } from "pv-to-grid/plant";
 * absorbing({ reactiveFactor: "0.6" }).text; // "-0.6"
 * ```
 */
export const absorbing = /* @__PURE__ */ formula({
  id: "plant/absorbing",
  about: "the same value taken from the grid in place of fed into it",
  takes: { reactiveFactor: { unit: "1", symbol: "sin φ", about: "reactive factor, injecting", from: 0, to: 1 } },
  gives: { unit: "1", symbol: "−sin φ" },
  expression: "-reactiveFactor",
  source: [{ in: "common practice", clause: "sign of reactive power that is absorbed", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Resistance or reactance of a stretch of cable, one conductor. @function
 *
 * @example
 * ```ts
 * import { impedanceOfStretch } from "pv-to-grid/plant";
 * impedanceOfStretch({ impedancePerLength: "1.15 Ω/km", length: "20 m" }).text; // "0.023"
 * ```
 */
export const impedanceOfStretch = /* @__PURE__ */ formula({
  id: "plant/impedance-of-stretch",
  about: "resistance or reactance of a stretch of cable, one conductor",
  takes: {
    impedancePerLength: { unit: "Ω/m", symbol: "z'", about: "resistance or reactance per length", from: 0, usual: [0, 0.1] },
    length: { unit: "m", symbol: "L", about: "length one way", from: 0, usual: [0, 5000] },
  },
  gives: { unit: "Ω", symbol: "Z" },
  expression: "impedancePerLength * length",
  source: [{ in: "common practice", clause: "resistance per length times length", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Resistance or reactance of stretches in series. @function
 *
 * @example
 * ```ts
 * import { impedanceInSeries } from "pv-to-grid/plant";
 * impedanceInSeries({ impedances: ["0.1 Ω", "0.2 Ω"] }).text; // "0.3"
 * ```
 */
export const impedanceInSeries = /* @__PURE__ */ formula({
  id: "plant/impedance-in-series",
  about: "resistance or reactance of stretches in series",
  takes: { impedances: { each: "Ω", symbol: "Z_i", about: "resistance or reactance of each stretch", from: 0, usual: [0, 100] } },
  gives: { unit: "Ω", symbol: "Z" },
  expression: "sum(impedances)",
  source: [{ in: "common practice", clause: "series connection, resistances and reactances apart", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Resistance or reactance of a circuit of two conductors, there and back. @function
 *
 * @example
 * ```ts
 * import { impedanceThereAndBack } from "pv-to-grid/plant";
 * impedanceThereAndBack({ impedance: "0.1 Ω" }).text; // "0.2"
 * ```
 */
export const impedanceThereAndBack = /* @__PURE__ */ formula({
  id: "plant/impedance-there-and-back",
  about: "resistance or reactance of a circuit of two conductors, there and back",
  takes: { impedance: { unit: "Ω", symbol: "Z", about: "resistance or reactance of one conductor", from: 0, usual: [0, 100] } },
  gives: { unit: "Ω", symbol: "2 Z" },
  expression: "2 * impedance",
  source: [{ in: "common practice", clause: "both conductors carry the current", grade: "common-practice" }],
  unproven: { because: "definition" },
});
