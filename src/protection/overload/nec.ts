import { condition, formula } from "../../formula/index.js";

/**
 * Rating that the device of an inverter output must have at least in NEC practice. @function
 *
 * @example
 * ```ts
 * import { necDeviceCurrent } from "pv-to-grid/protection";
 * necDeviceCurrent({ designCurrent: "32 A" }).text; // "40"
 * ```
 */
export const necDeviceCurrent = /* @__PURE__ */ formula({
  id: "protection/nec-device-current",
  about: "rating that the device of an inverter output must have at least in NEC practice",
  takes: {
    designCurrent: { unit: "A", symbol: "I_b", about: "continuous output current of the inverter", above: 0, usual: [0.1, 5000] },
  },
  constants: {
    continuousShare: {
      value: "1.25",
      unit: "1",
      symbol: "k_c",
      about: "device rating over continuous current",
      source: [
        { in: "NFPA 70:2020", clause: "690.9(B)(1)", grade: "copied" },
        { in: "NFPA 70:2017", clause: "705.60(B)", grade: "copied" },
      ],
    },
  },
  gives: { unit: "A", symbol: "1.25 I_b" },
  expression: "continuousShare * designCurrent",
  source: [
    { in: "NFPA 70:2020", clause: "690.9(B)(1)", grade: "copied" },
    { in: "NFPA 70:2017", clause: "705.60(B)", grade: "copied" },
  ],
  unproven: { because: "no publication found", sought: "125 per cent of an inverter's current with the voltage printed" },
});

/**
 * Is the rating of the device at least 125 per cent of the continuous current? @function
 *
 * @example
 * ```ts
 * import { continuousCurrentWithinRating } from "pv-to-grid/protection";
 * continuousCurrentWithinRating({ value: "40 A", limit: "40 A" }).verdict; // "met"
 * ```
 */
export const continuousCurrentWithinRating = /* @__PURE__ */ condition({
  id: "protection/continuous-current-within-rating",
  asks: "Is the rating of the device at least 125 per cent of the continuous current?",
  force: "requirement",
  value: { unit: "A", symbol: "1.25 I_b", about: "125 per cent of the continuous output current" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_n", about: "rated current of the device" },
  source: [
    { in: "NFPA 70:2020", clause: "690.9(B)(1)", grade: "copied" },
    { in: "NFPA 70:2017", clause: "705.60(B)", grade: "copied" },
  ],
  worse: { "inverters[].maximumAcCurrent": "up", "inverters[].apparentPower": "up", "routes[].breaker.rating": "down" },
});

/**
 * Does the device protect the conductor, the next standard size allowed up to 800 A? @function
 *
 * @example
 * ```ts
 * import { ratingProtectsConductor } from "pv-to-grid/protection";
 * ratingProtectsConductor({ value: "60 A", limit: "60 A" }).verdict; // "met"
 * ```
 */
export const ratingProtectsConductor = /* @__PURE__ */ condition({
  id: "protection/rating-protects-conductor",
  asks: "Does the device protect the conductor, the next standard size allowed up to 800 A?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "rated current of the device" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_n,max", about: "ampacity, or the next standard rating above it up to 800 A" },
  source: [{ in: "NFPA 70:2020", clause: "240.4(B), 240.4(C)", grade: "copied" }],
  worse: { "routes[].breaker.rating": "up", "routes[].stretches[].ambient": "up", "routes[].stretches[].grouped": "up" },
});

/**
 * Is the device no larger than a small conductor allows? @function
 *
 * @example
 * ```ts
 * import { ratingWithinSmallConductorLimit } from "pv-to-grid/protection";
 * ratingWithinSmallConductorLimit({ value: "25 A", limit: "20 A" }).verdict; // "not met"
 * ```
 */
export const ratingWithinSmallConductorLimit = /* @__PURE__ */ condition({
  id: "protection/rating-within-small-conductor-limit",
  asks: "Is the device no larger than a small conductor allows?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "rated current of the device" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_n,max", about: "largest device for a conductor of 14, 12 or 10 AWG" },
  source: [{ in: "NFPA 70:2020", clause: "240.4(D)", grade: "copied" }],
  worse: { "routes[].breaker.rating": "up" },
});

/**
 * Is the rating one that 240.4(B) may raise to the next standard size? @function
 *
 * @example
 * ```ts
 * import { withinNextSizeRule } from "pv-to-grid/protection";
 * withinNextSizeRule({ value: "1000 A", limit: "800 A" }).verdict; // "not met"
 * ```
 */
export const withinNextSizeRule = /* @__PURE__ */ condition({
  id: "protection/within-next-size-rule",
  asks: "Is the rating one that 240.4(B) may raise to the next standard size?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "next standard rating above the ampacity" },
  relation: "≤",
  limit: { unit: "A", symbol: "800 A", about: "largest rating of the rule" },
  source: [{ in: "NFPA 70:2020", clause: "240.4(B)(3)", grade: "copied" }],
});
