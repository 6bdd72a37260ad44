import { type Check, type Known, isMissing, missing, type Missing } from "../../formula/index.js";
import { given, type Input } from "../../quantity/index.js";
import type { PvRules } from "../rules.js";
import { summedCurrent } from "../current/parallel-current.js";
import { currentWithinJoint, declaredCurrentPlausible, joiningAllowed } from "./tracker-conditions.js";
import { type CheckedTracker, trackerChecks, type TrackerLimits } from "./tracker-checks.js";
import { maximumOfAll, type TrackerStrings } from "./tracker-strings.js";
import { placeIn } from "../place.js";

/** What the maker declares for trackers that are joined in parallel. */
export interface JoinedRatings {
  readonly maximumInputCurrent: Known<Input<"current">>;
  readonly shortCircuitRating: Known<Input<"current">>;
}

/** Something that joins trackers or strings and carries their current: a plug, a branch, a switch pole, a terminal. */
export interface Joint {
  readonly name: string;
  readonly ratedCurrent: Known<Input<"current">>;
  /** Names of the groups of strings that feed through it; left out, all of them. */
  readonly feeds?: readonly string[];
}

/** Trackers in parallel with their strings. */
export interface JoinedTrackersInput {
  readonly at?: string;
  readonly rules: PvRules;
  readonly trackers: readonly TrackerLimits[];
  /** The maker's sums for the joined mode; nothing is ever added up in their place. */
  readonly declared: JoinedRatings | "not allowed" | Missing;
  readonly strings: readonly TrackerStrings[];
  readonly joints: readonly Joint[];
}

/**
 * Judges trackers joined in parallel: their limits are the sums that the maker declares for the joined mode, and where
 * none is declared the checks stay open. Each plug keeps its own limit, and whatever joins carries what feeds through it.
 *
 * @throws InputError for counts that are not whole, or no string
 * @example
 * ```ts
 * import { joinedTrackers } from "pv-to-grid/string";
 * import { missing } from "pv-to-grid/formula";
 * const joined = joinedTrackers({
 *   rules: "IEC 62548-1:2023",
 *   trackers: [
 *     { inputs: 1, maximumInputCurrent: "16 A", shortCircuitRating: "24 A", inputRating: "20 A" },
 *     { inputs: 1, maximumInputCurrent: "16 A", shortCircuitRating: "24 A", inputRating: "20 A" },
 *   ],
 *   declared: missing("inverters[0].joinedTrackers"),
 *   strings: [{ count: 2, modules: 14, moduleType: "M440", mppCurrent: "13.42 A", shortCircuitCurrent: "14.1 A" }],
 *   joints: [],
 * });
 * joined.checks[0]?.verdict; // "open"
 * ```
 */
export function joinedTrackers({
  at = "",
  rules,
  trackers,
  declared,
  strings,
  joints,
}: JoinedTrackersInput): CheckedTracker {
  const permission = joiningAllowed({
    value: isMissing(declared) ? declared : declared === "not allowed" ? declared : "declared",
    limit: ["declared"],
    at,
  });
  const together = trackerChecks({
    at,
    rules,
    strings,
    tracker: { inputs: sumOfInputs(trackers), ...ratingsOf(declared), ...plugOf(trackers) },
  });
  const carried = joints.map(({ name, ratedCurrent, feeds }): Check => {
    const groups = strings.filter(
      ({ name: group }) => feeds === undefined || (group !== undefined && feeds.includes(group)),
    );
    const value = groups.length === 0 ? missing(`${name}.feeds`) : maximumOfAll(groups);
    return currentWithinJoint({ value, limit: ratedCurrent, at: placeIn(at, name) });
  });
  const checks = [permission, ...plausible(at, trackers, declared), ...together.checks, ...carried];
  return Object.freeze({ ...together, checks: Object.freeze(checks) });
}

function plausible(
  at: string,
  trackers: readonly TrackerLimits[],
  declared: JoinedTrackersInput["declared"],
): readonly Check[] {
  const alone = trackers.flatMap(({ maximumInputCurrent }) =>
    isMissing(maximumInputCurrent) ? [] : [maximumInputCurrent],
  );
  if (isMissing(declared) || declared === "not allowed" || alone.length < trackers.length) return [];
  return [
    declaredCurrentPlausible({ value: declared.maximumInputCurrent, limit: summedCurrent({ currents: alone }), at }),
  ];
}

function sumOfInputs(trackers: readonly TrackerLimits[]): number {
  return trackers.reduce((sum, { inputs }) => sum + inputs, 0);
}

function ratingsOf(declared: JoinedTrackersInput["declared"]): JoinedRatings {
  if (isMissing(declared)) return { maximumInputCurrent: declared, shortCircuitRating: declared };
  if (declared !== "not allowed") return declared;
  const none = missing("ratings of trackers that may not be joined");
  return { maximumInputCurrent: none, shortCircuitRating: none };
}

// The weakest plug counts, since it is not said which string is on which.
function plugOf(trackers: readonly TrackerLimits[]): Pick<TrackerLimits, "inputRating"> | Record<string, never> {
  const ratings = trackers.flatMap(({ inputRating }) => inputRating ?? []);
  if (ratings.length === 0) return {};
  const absent = ratings.find((rating) => isMissing(rating));
  if (absent !== undefined) return { inputRating: absent };
  return {
    inputRating: ratings
      .map((rating) => rating as Input<"current">)
      .reduce((least, rating) => (amperes(rating) < amperes(least) ? rating : least)),
  };
}

function amperes(rating: Input<"current">): number {
  return given(rating, "A").number;
}
