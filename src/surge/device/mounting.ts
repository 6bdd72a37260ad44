import { type Check, isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import { leadLengthLimits } from "../limits.js";
import { leadsShort, leadsShortEnough, protectionLevelLowEnough } from "./conditions.js";
import { allowedDistantProtectionLevel, allowedProtectionLevel, effectiveProtectionLevel } from "./levels.js";

/** How a surge protective device is mounted. */
export interface SurgeMounting {
  readonly protectionLevel: Known<Input<"voltage">>;
  /** Leads of the device, both together. */
  readonly leadLength: Known<Input<"length">>;
}

/** The verdicts on leads and protection level; far from the equipment the surge doubles on the way, unless a second device stands there. */
export function mountingChecks(
  at: string,
  { protectionLevel, leadLength }: SurgeMounting,
  impulseWithstand: Known<Input<"voltage">>,
  distant: Known<boolean>,
): readonly Check[] {
  const value = whenKnown({ protectionLevel, leadLength }, effectiveProtectionLevel);
  const limit = isMissing(impulseWithstand)
    ? impulseWithstand
    : isMissing(distant)
      ? missing(...distant.missing)
      : distant
        ? allowedDistantProtectionLevel({ impulseWithstand })
        : allowedProtectionLevel({ impulseWithstand });
  return [
    protectionLevelLowEnough({ at, value, limit }),
    leadsShortEnough({ at, value: leadLength, limit: leadLengthLimits({ rule: "at most" }) }),
    leadsShort({ at, value: leadLength, limit: leadLengthLimits({ rule: "preferred" }) }),
  ];
}
