import { type Check, type Choice, choose, type Known, type Series } from "../../formula/index.js";
import {
  fuseRatings,
  nfpa70_2017_240_6_fuses,
  nfpa70_2020_240_6_fuses,
  nfpa70_2023_240_6_fuses,
} from "../../device/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { isNec, type NecRules, type PvRules } from "../rules.js";
import { coldVoltageWithinFuse } from "../voltage/ceiling-conditions.js";
import { continuousCurrent } from "../current/continuous-current.js";
import { fuseUpperBound, groupFuseLowerBound } from "./fuse-bounds.js";
import { deviceReachesLowerBound, fuseBelowUpperBound, groupDeviceAboveLowerBound } from "./fuse-conditions.js";

const necSeries: Readonly<Record<NecRules, Series<"A">>> = {
  "NFPA 70:2017": nfpa70_2017_240_6_fuses,
  "NFPA 70:2020": nfpa70_2020_240_6_fuses,
  "NFPA 70:2023": nfpa70_2023_240_6_fuses,
};

/** A sub-array or array, and the device that is to protect its cable. */
export interface GroupFuseInput {
  readonly at?: string;
  readonly rules: PvRules;
  /** Of the sub-array or array at standard test conditions. */
  readonly shortCircuitCurrent: Input<"current">;
  /** Maximum current of the same, K_I or 1.25 included. */
  readonly maximumCurrent: Input<"current">;
  /** `"choose"`, or the rating that there is. */
  readonly fuse: Input<"current">;
  readonly coldVoltage?: Known<Input<"voltage">>;
  readonly fuseVoltage?: Known<Input<"voltage">>;
}

/** A sub-array or array device, chosen or verified. */
export interface GroupFuse {
  readonly choice: Choice<"A"> | null;
  readonly rating: Quantity<"current"> | null;
  readonly checks: readonly Check[];
}

/**
 * Chooses or verifies the device of a sub-array or array: from 1.25 to 2.4 times its short-circuit current by IEC 62548,
 * from 125 % of its maximum current by the NEC.
 *
 * @example
 * ```ts
 * import { groupFuse } from "pv-to-grid/string";
 * groupFuse({ rules: "IEC 62548-1:2023", shortCircuitCurrent: "84.6 A", maximumCurrent: "105.75 A", fuse: "choose" }).rating?.text; // "125"
 * ```
 */
export function groupFuse({
  at = "",
  rules,
  shortCircuitCurrent,
  maximumCurrent,
  fuse,
  coldVoltage,
  fuseVoltage,
}: GroupFuseInput): GroupFuse {
  const bounds = (rating: Input<"current">): readonly Check[] =>
    isNec(rules)
      ? [deviceReachesLowerBound({ value: rating, limit: continuousCurrent({ maximumCurrent }), at })]
      : [
          groupDeviceAboveLowerBound({ value: rating, limit: groupFuseLowerBound({ shortCircuitCurrent }), at }),
          fuseBelowUpperBound({ value: rating, limit: fuseUpperBound({ shortCircuitCurrent }), at }),
        ];
  const voltage =
    coldVoltage === undefined || fuseVoltage === undefined
      ? []
      : [coldVoltageWithinFuse({ value: coldVoltage, limit: fuseVoltage, at })];
  const checksFor = (rating: Input<"current">): readonly Check[] => Object.freeze([...bounds(rating), ...voltage]);
  if (fuse !== "choose") return Object.freeze({ choice: null, rating: given(fuse, "A"), checks: checksFor(fuse) });
  const choice = choose(isNec(rules) ? necSeries[rules] : fuseRatings, (rating) => checksFor(rating));
  return Object.freeze({ choice, rating: choice.chosen, checks: choice.checks });
}
