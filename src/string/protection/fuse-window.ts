import { type Check, type Known, isMissing } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { whole } from "../count.js";
import { maximumStringCurrent } from "../current/maximum-string-current.js";
import { parallelCurrent } from "../current/parallel-current.js";
import { isNec, type PvRules } from "../rules.js";
import { continuousCurrent } from "../current/continuous-current.js";
import { fuseLowerBound, fuseLowerBoundOfMaximum, fuseUpperBound } from "./fuse-bounds.js";
import { fuseRatingForHeat } from "./fuse-heat.js";
import { moduleRatingLeft } from "./shared-device.js";
import {
  deviceReachesLowerBound,
  fuseAboveLowerBound,
  fuseBelowUpperBound,
  fuseCarriesSummer,
  fuseWithinModuleRating,
} from "./fuse-conditions.js";

/** Rule sets for string fuses: those for arrays, and the former edition of IEC 62548 that is still adopted in places. */
export type FuseRules = PvRules | "IEC 62548:2016";

/** The strings behind one fuse. */
export interface FusedStrings {
  readonly rules: FuseRules;
  /** Of one string at standard test conditions. */
  readonly shortCircuitCurrent: Input<"current">;
  /** Correction of the current factor, K_Corr; left out, none. */
  readonly currentCorrection?: Input<"ratio">;
  /** How many strings share one fuse; left out, one. */
  readonly stringsPerDevice?: number;
  readonly maximumSeriesFuse: Known<Input<"current">>;
  /** Whether the device is listed for continuous duty at its full rating (NEC only). */
  readonly ratedForContinuousDuty?: boolean;
}

/** Between what values a rating must lie. */
export interface FuseWindow {
  readonly low: Quantity<"current">;
  /** Whether the lower bound itself is allowed. */
  readonly lowAllowed: boolean;
  /** Upper bound that the rating must stay below; `null` where the rule set has none beside the module's. */
  readonly high: Quantity<"current"> | null;
  /** What the module allows, less what other strings on the same fuse add. */
  readonly module: Known<Input<"current">>;
  /** The checks of one rating. */
  readonly checksFor: (rating: Input<"current">, at: string) => readonly Check[];
}

/**
 * The window of a string fuse's rating, as the rule set draws it: IEC 62548 and AS/NZS 5033 from 1.5 to 2.4 times the
 * short-circuit current, IEC 60364-7-712 from 1.1 times the maximum current, the NEC from 1.5625 times; all up to what the
 * module allows.
 */
export function fuseWindow(fused: FusedStrings): FuseWindow {
  const { rules, shortCircuitCurrent, currentCorrection, stringsPerDevice = 1, ratedForContinuousDuty = false } = fused;
  const together = parallelIfMany(stringsPerDevice, shortCircuitCurrent);
  const correction = currentCorrection === undefined ? {} : { currentCorrection };
  const ofOne = maximumStringCurrent({ shortCircuitCurrent, ...correction });
  const maximum = maximumStringCurrent({ shortCircuitCurrent, ...correction, strings: stringsPerDevice });
  const module = moduleBound(fused, isNec(rules as PvRules) ? ofOne : shortCircuitCurrent);

  const byMaximum = isNec(rules as PvRules)
    ? ratedForContinuousDuty
      ? maximum
      : continuousCurrent({ maximumCurrent: maximum })
    : rules === "IEC 60364-7-712:2017"
      ? fuseLowerBoundOfMaximum({ maximumCurrent: maximum })
      : null;
  const low = byMaximum ?? fuseLowerBound({ shortCircuitCurrent: together });
  const lowCondition = byMaximum ? deviceReachesLowerBound : fuseAboveLowerBound;
  const high = byMaximum || stringsPerDevice > 1 ? null : fuseUpperBound({ shortCircuitCurrent });
  const summer = fuseRatingForHeat({ shortCircuitCurrent: together });
  return Object.freeze({
    low,
    lowAllowed: byMaximum !== null,
    high,
    module,
    checksFor: (rating: Input<"current">, at: string) => [
      lowCondition({ value: rating, limit: low, at }),
      ...(high === null ? [] : [fuseBelowUpperBound({ value: rating, limit: high, at })]),
      fuseWithinModuleRating({ value: rating, limit: module, at }),
      fuseCarriesSummer({ value: rating, limit: summer, at }),
    ],
  });
}

function moduleBound(
  { maximumSeriesFuse, stringsPerDevice = 1 }: FusedStrings,
  currentOfOne: Input<"current">,
): Known<Input<"current">> {
  if (isMissing(maximumSeriesFuse) || stringsPerDevice === 1) return maximumSeriesFuse;
  return moduleRatingLeft({ maximumSeriesFuse, strings: whole(stringsPerDevice), currentOfOne });
}

function parallelIfMany(strings: number, current: Input<"current">): Input<"current"> {
  return strings === 1 ? current : parallelCurrent({ strings: whole(strings), current });
}
