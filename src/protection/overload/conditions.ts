import { condition } from "../../formula/index.js";

/**
 * Is the rated current of the device at least the design current? @function
 *
 * @example
 * ```ts
 * import { designCurrentWithinRating } from "pv-to-grid/protection";
 * designCurrentWithinRating({ value: "21.7 A", limit: "25 A" }).verdict; // "met"
 * ```
 */
export const designCurrentWithinRating = /* @__PURE__ */ condition({
  id: "protection/design-current-within-rating",
  asks: "Is the rated current of the device at least the design current?",
  force: "requirement",
  value: { unit: "A", symbol: "I_b", about: "design current" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_n", about: "rated current of the device" },
  source: [{ in: "IEC 60364-4-43:2008", clause: "433.1, condition 1", grade: "memory" }],
  worse: { "inverters[].maximumAcCurrent": "up", "inverters[].apparentPower": "up", "routes[].breaker.rating": "down" },
});

/**
 * Does the cable carry the rated current of the device? @function
 *
 * @example
 * ```ts
 * import { ratingWithinAmpacity } from "pv-to-grid/protection";
 * ratingWithinAmpacity({ value: "25 A", limit: "24 A" }).verdict; // "not met"
 * ```
 */
export const ratingWithinAmpacity = /* @__PURE__ */ condition({
  id: "protection/rating-within-ampacity",
  asks: "Does the cable carry the rated current of the device?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "rated current of the device" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_z", about: "current-carrying capacity of the cable as laid" },
  source: [{ in: "IEC 60364-4-43:2008", clause: "433.1, condition 1", grade: "memory" }],
  worse: { "routes[].breaker.rating": "up", "routes[].stretches[].ambient": "up", "routes[].stretches[].grouped": "up" },
});

/**
 * Does the device surely trip before the cable is overloaded by 45 per cent? @function
 *
 * @example
 * ```ts
 * import { trippingWithinOverload } from "pv-to-grid/protection";
 * trippingWithinOverload({ value: "56 A", limit: "50.75 A" }).verdict; // "not met"
 * ```
 */
export const trippingWithinOverload = /* @__PURE__ */ condition({
  id: "protection/tripping-within-overload",
  asks: "Does the device surely trip before the cable is overloaded by 45 per cent?",
  force: "requirement",
  value: { unit: "A", symbol: "I_2", about: "conventional tripping current of the device" },
  relation: "≤",
  limit: { unit: "A", symbol: "1.45 I_z", about: "tolerated overload of the cable" },
  source: [{ in: "IEC 60364-4-43:2008", clause: "433.1, condition 2", grade: "memory" }],
  worse: { "routes[].breaker.rating": "up", "routes[].stretches[].ambient": "up", "routes[].stretches[].grouped": "up" },
});

/**
 * Is the device no larger than the maker of the inverter allows on the a.c. side? @function
 *
 * @example
 * ```ts
 * import { ratingWithinLargestDevice } from "pv-to-grid/protection";
 * ratingWithinLargestDevice({ value: "40 A", limit: "32 A" }).verdict; // "not met"
 * ```
 */
export const ratingWithinLargestDevice = /* @__PURE__ */ condition({
  id: "protection/rating-within-largest-device",
  asks: "Is the device no larger than the maker of the inverter allows on the a.c. side?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "rated current of the device" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_n,max", about: "largest a.c. device that the maker allows" },
  source: [{ in: "common practice", clause: "installation instructions of the inverter", grade: "common-practice" }],
  worse: { "routes[].breaker.rating": "up", "inverters[].maximumAcDevice": "down" },
});

/**
 * Does the device carry the design current in its place, warm and beside loaded devices? @function
 *
 * @example
 * ```ts
 * import { designCurrentWithinCorrectedRating } from "pv-to-grid/protection";
 * designCurrentWithinCorrectedRating({ value: "21.7 A", limit: "22.5 A" }).verdict; // "met"
 * ```
 */
export const designCurrentWithinCorrectedRating = /* @__PURE__ */ condition({
  id: "protection/design-current-within-corrected-rating",
  asks: "Does the device carry the design current in its place, warm and beside loaded devices?",
  force: "requirement",
  value: { unit: "A", symbol: "I_b", about: "design current" },
  relation: "≤",
  limit: { unit: "A", symbol: "k I_n", about: "current that the device carries in its place" },
  source: [{ in: "common practice", clause: "correction tables of the makers of breakers", grade: "common-practice" }],
  worse: { "inverters[].maximumAcCurrent": "up", "inverters[].apparentPower": "up", "routes[].breaker.rating": "down" },
});
