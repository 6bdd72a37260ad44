import type { WiringRules } from "../../conductor/index.js";
import { type DeviceKind, deviceRatings } from "../../device/index.js";
import { choose, condition } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
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
 * @param conductor - its ampacity, corrected and adjusted, the kind of device and the edition of the rules
 * @throws InputError where the rules are not an edition of NFPA 70
 * @example
 * ```ts
 * import { largestProtectingRating } from "pv-to-grid/protection";
 * largestProtectingRating({ ampacity: "55 A", kind: "NEC breaker", wiring: "NFPA 70:2020" }).text; // "60"
 * ```
 */
export function largestProtectingRating(conductor: {
  readonly ampacity: Input<"current">;
  readonly kind: DeviceKind;
  readonly wiring: WiringRules;
}): Quantity<"current"> {
  const ampacity = given(conductor.ampacity, "A");
  const ratings = deviceRatings(conductor.kind, conductor.wiring);
  const next = choose(ratings, (rating) => [ampacityWithinRating({ value: ampacity, limit: rating })]).chosen;
  if (next === null) return ampacity;
  const limit = nfpa70_2020_next_size_limit({ rule: "next standard size" });
  return withinNextSizeRule({ value: next, limit }).verdict === "met" ? next : ampacity;
}
