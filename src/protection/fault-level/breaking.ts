import { type Check, isMissing, type Known } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import {
  backUpCovers,
  faultWithinBreakingCapacity,
  fusesSelective,
  selectiveWithUpstream,
  suitableForBackfeed,
} from "./conditions.js";
import { selectiveFuseRating } from "./selectivity-ratio.js";

/** What decides whether a device breaks the fault current at its place. */
export interface BreakingQuestion {
  readonly at: string;
  readonly largestFaultCurrent: Known<Input<"current">>;
  readonly breakingCapacity: Known<Input<"current">>;
  /** Current up to which the maker declares back-up by the device upstream; `null` where nothing is declared. */
  readonly backUp: Known<Input<"current">> | null;
}

/**
 * Proves that a device breaks the largest fault current at its place, on its own or in a declared combination.
 *
 * @param question - fault current, breaking capacity and declared combination
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { proveBreaking } from "pv-to-grid/protection";
 * proveBreaking({ at: "INV1", largestFaultCurrent: "8 kA", breakingCapacity: "6 kA", backUp: "10 kA" }).map((check) => check.verdict).join(); // "met"
 * ```
 */
export function proveBreaking({
  at,
  largestFaultCurrent,
  breakingCapacity,
  backUp,
}: BreakingQuestion): readonly Check[] {
  const own = faultWithinBreakingCapacity({ at, value: largestFaultCurrent, limit: breakingCapacity });
  if (own.verdict !== "not met" || backUp === null) return Object.freeze([own]);
  return Object.freeze([backUpCovers({ at, value: largestFaultCurrent, limit: backUp })]);
}

/** What decides whether only the device nearest to a fault trips. */
export interface SelectivityQuestion {
  readonly at: string;
  readonly largestFaultCurrent: Known<Input<"current">>;
  /** Current up to which the makers declare both devices selective. */
  readonly selectivityLimit: Known<Input<"current">>;
  /** Both devices where both are gG fuses from 16 A, which are selective by their ratio; `null` otherwise. */
  readonly fuses: { readonly upstream: Input<"current">; readonly behind: Input<"current"> } | null;
}

/**
 * Proves selectivity with the device upstream: by the ratio of two gG fuses, else by what the makers declare.
 *
 * @param question - fault current, declared limit, and both ratings of fuses
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { missing } from "pv-to-grid/formula";
 * import { proveSelectivity } from "pv-to-grid/protection";
 * proveSelectivity({ at: "INV1", largestFaultCurrent: "6 kA", selectivityLimit: missing("supply.selectivity"), fuses: null }).verdict; // "open"
 * ```
 */
export function proveSelectivity({ at, largestFaultCurrent, selectivityLimit, fuses }: SelectivityQuestion): Check {
  if (fuses !== null) {
    return fusesSelective({ at, value: fuses.upstream, limit: selectiveFuseRating({ fuseBehind: fuses.behind }) });
  }
  return selectiveWithUpstream({ at, value: largestFaultCurrent, limit: selectivityLimit });
}

/**
 * The verdict on feeding a device from its load side.
 *
 * @param at - place of the device
 * @param marking - its marking, or what is missing for it
 * @example
 * ```ts
 * import { proveBackfeed } from "pv-to-grid/protection";
 * proveBackfeed("INV1", "line and load").verdict; // "not met"
 * ```
 */
export function proveBackfeed(at: string, marking: Known<"not marked" | "bidirectional" | "line and load">): Check {
  return isMissing(marking)
    ? suitableForBackfeed({ at, missing: marking.missing })
    : suitableForBackfeed({ at, value: marking, limit: ["not marked", "bidirectional"] });
}
