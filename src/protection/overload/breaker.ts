import { type Check, choose, type Choice, isMissing, type Known } from "../../formula/index.js";
import { conventionalTripping, type DeviceKind, deviceRatings } from "../../device/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import type { WiringRules } from "../../conductor/index.js";
import {
  designCurrentWithinCorrectedRating,
  designCurrentWithinRating,
  ratingWithinAmpacity,
  ratingWithinLargestDevice,
  trippingWithinOverload,
} from "./conditions.js";
import { correctedDeviceRating, toleratedOverload, uncorrectedDeviceLoad } from "./limits.js";
import {
  continuousCurrentWithinRating,
  necDeviceCurrent,
  ratingProtectsConductor,
  ratingWithinSmallConductorLimit,
} from "./nec.js";
import { largestProtectingRating } from "./nec-largest-rating.js";

/** What decides an overcurrent device of an inverter circuit. */
export interface BreakerQuestion {
  /** Place of the plant, for the ids of the checks. */
  readonly at: string;
  readonly wiring: WiringRules;
  readonly kind: DeviceKind;
  /** `"choose"`, or the stated one. */
  readonly rating: Input<"current">;
  readonly designCurrent: Known<Input<"current">>;
  /** Current-carrying capacity of the cable as laid; left out while no cable is chosen yet. */
  readonly ampacity?: Known<Input<"current">>;
  /** Largest a.c. device that the maker of the inverter allows. */
  readonly largestDevice: Known<Input<"current">>;
  /** The maker's factor for the temperature of the board and loaded neighbours. */
  readonly ambientFactor: Known<Input<"ratio">>;
  /** Whether loaded devices stand beside it. */
  readonly neighboursLoaded: Known<boolean>;
  /** NFPA 70: largest device for a conductor of 14, 12 or 10 AWG; left out for larger ones. */
  readonly smallConductorLimit?: Known<Input<"current">>;
}

/** The device that was chosen or verified. */
export interface BreakerChoice {
  readonly rating: Quantity<"current"> | null;
  /** How it was chosen; `null` where the rating was stated. */
  readonly choice: Choice<"A"> | null;
  readonly checks: readonly Check[];
  /** What the next smaller rating fails. */
  readonly fixedBy: readonly Check[];
  readonly conventionalTrippingCurrent: Quantity<"current"> | null;
}

/**
 * Chooses the smallest standard device that meets every requirement, or verifies a stated one.
 *
 * @param question - currents, cable, maker's limits; what is not known is said as missing
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { missing } from "pv-to-grid/formula";
 * import { chooseBreaker } from "pv-to-grid/protection";
 * const breaker = chooseBreaker({
 *   at: "INV1", wiring: "IEC 60364:2009-2017", kind: "miniature breaker", rating: "choose", designCurrent: "21.7 A", ampacity: "32 A",
 *   largestDevice: "32 A", ambientFactor: missing("routes[1].breaker.ambientFactor"), neighboursLoaded: false,
 * });
 * breaker.rating?.text; // "25"
 * ```
 */
export function chooseBreaker(question: BreakerQuestion): BreakerChoice {
  const { kind, wiring, rating } = question;
  const checksFor = (size: Quantity<"current">): readonly Check[] => breakerChecks(question, size);
  if (rating !== "choose") {
    const stated = given(rating, "A", "stated rating");
    return Object.freeze({
      rating: stated,
      choice: null,
      checks: Object.freeze(checksFor(stated)),
      fixedBy: [],
      conventionalTrippingCurrent: conventionalTripping(kind, stated),
    });
  }
  const choice = choose(deviceRatings(kind, wiring), checksFor);
  return Object.freeze({
    rating: choice.chosen,
    choice,
    checks: choice.checks,
    fixedBy: choice.fixedBy,
    conventionalTrippingCurrent: choice.chosen && conventionalTripping(kind, choice.chosen),
  });
}

function breakerChecks(question: BreakerQuestion, rating: Quantity<"current">): readonly Check[] {
  const { at, wiring, largestDevice } = question;
  const own = wiring.startsWith("NFPA 70") ? necChecks(question, rating) : iecChecks(question, rating);
  return [...own, ratingWithinLargestDevice({ at, value: rating, limit: largestDevice }), placeCheck(question, rating)];
}

function iecChecks(
  { at, kind, designCurrent, ampacity }: BreakerQuestion,
  rating: Quantity<"current">,
): readonly Check[] {
  const checks = [designCurrentWithinRating({ at, value: designCurrent, limit: rating })];
  if (ampacity === undefined) return checks;
  checks.push(ratingWithinAmpacity({ at, value: rating, limit: ampacity }));
  const tripping = conventionalTripping(kind, rating);
  const overload = isMissing(ampacity) ? ampacity : toleratedOverload({ ampacity });
  if (tripping !== null) checks.push(trippingWithinOverload({ at, value: tripping, limit: overload }));
  return checks;
}

function necChecks(question: BreakerQuestion, rating: Quantity<"current">): readonly Check[] {
  const { at, kind, wiring, designCurrent, ampacity, smallConductorLimit } = question;
  const due = isMissing(designCurrent) ? designCurrent : necDeviceCurrent({ designCurrent });
  const checks = [continuousCurrentWithinRating({ at, value: due, limit: rating })];
  if (ampacity !== undefined) {
    const limit = isMissing(ampacity) ? ampacity : largestProtectingRating({ ampacity, kind, wiring });
    checks.push(ratingProtectsConductor({ at, value: rating, limit }));
  }
  if (smallConductorLimit !== undefined) {
    checks.push(ratingWithinSmallConductorLimit({ at, value: rating, limit: smallConductorLimit }));
  }
  return checks;
}

// A device that is loaded to more than 80 % of its rating, or stands beside loaded ones, needs its maker's correction.
function placeCheck(question: BreakerQuestion, rating: Quantity<"current">): Check {
  const { at, designCurrent, ambientFactor, neighboursLoaded } = question;
  const value = designCurrent;
  if (!isMissing(ambientFactor)) {
    const limit = correctedDeviceRating({ ratedCurrent: rating, ambientFactor });
    return designCurrentWithinCorrectedRating({ at, value, limit });
  }
  const because = "loaded to more than 80 per cent or beside loaded devices, it needs the maker's correction data";
  if (neighboursLoaded === false) {
    const check = designCurrentWithinCorrectedRating({
      at,
      value,
      limit: uncorrectedDeviceLoad({ ratedCurrent: rating }),
    });
    if (check.verdict !== "not met") return check;
    return designCurrentWithinCorrectedRating({ at, value, missing: ambientFactor.missing, because });
  }
  const paths = isMissing(neighboursLoaded)
    ? [...ambientFactor.missing, ...neighboursLoaded.missing]
    : ambientFactor.missing;
  return designCurrentWithinCorrectedRating({ at, value, missing: paths, because });
}
