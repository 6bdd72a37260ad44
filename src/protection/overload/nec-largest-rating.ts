import { choose, condition, type Series } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import { withinNextSizeRule } from "./nec.js";
import { nfpa70_2020_next_size_limit } from "./nec-next-size.js";

/**
 * Is the standard rating at least the ampacity of the conductor? @function
 *
 * @example
 * ```ts
 * import { ampacityWithinRating } from "pv-to-grid/protection";
 * ampacityWithinRating({ value: "55 A", limit: "60 A" }).verdict; // "met"
 * ```
 */
export const ampacityWithinRating = /* @__PURE__ */ condition({
  id: "protection/ampacity-within-rating",
  asks: "Is the standard rating at least the ampacity of the conductor?",
  force: "requirement",
  value: { unit: "A", symbol: "I_z", about: "ampacity of the conductor, corrected and adjusted" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_n", about: "standard rating" },
  source: [{ in: "NFPA 70:2020", clause: "240.4(B)", grade: "copied" }],
});

/**
 * Largest device that protects a conductor in NEC practice: the next standard rating at or above its ampacity where that
 * is not above 800 A, the ampacity itself otherwise.
 *
 * @param ampacity - ampacity of the conductor, corrected and adjusted
 * @param ratings - the standard ratings of the edition
 * @example
 * ```ts
 * import { given } from "pv-to-grid/quantity";
 * import { nfpa70_2020_240_6 } from "pv-to-grid/device";
 * import { largestProtectingRating } from "pv-to-grid/protection";
 * largestProtectingRating(given("55 A", "A"), nfpa70_2020_240_6).text; // "60"
 * ```
 */
export function largestProtectingRating(ampacity: Quantity<"current">, ratings: Series<"A">): Quantity<"current"> {
  const next = choose(ratings, (rating) => [ampacityWithinRating({ value: ampacity, limit: rating })]).chosen;
  if (next === null) return ampacity;
  const limit = nfpa70_2020_next_size_limit({ rule: "next standard size" });
  return withinNextSizeRule({ value: next, limit }).verdict === "met" ? next : ampacity;
}
