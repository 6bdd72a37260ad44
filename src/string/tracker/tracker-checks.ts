import { type Check, type Known, isMissing } from "../../formula/index.js";
import { type Input, InputError, type Problem, type Quantity } from "../../quantity/index.js";
import { largestMet, whole } from "../count.js";
import { maximumStringCurrent } from "../current/maximum-string-current.js";
import { parallelCurrent } from "../current/parallel-current.js";
import type { PvRules } from "../rules.js";
import {
  currentWithinInput,
  mppCurrentWithinTracker,
  shortCircuitCurrentWithinTracker,
  stringsWithinInputs,
} from "./tracker-conditions.js";
import { maximumOfAll, mppCurrentOfAll, type TrackerStrings } from "./tracker-strings.js";
import { unlikeStrings } from "./unlike-strings.js";
import { placeIn } from "../place.js";

/** What a tracker, or several joined ones, may take. */
export interface TrackerLimits {
  /** Pairs of plugs or terminals. */
  readonly inputs: number;
  readonly maximumInputCurrent: Known<Input<"current">>;
  readonly shortCircuitRating: Known<Input<"current">>;
  /** Largest current of one plug or terminal; left out, not judged. */
  readonly inputRating?: Known<Input<"current">>;
}

/** A tracker with its strings. */
export interface TrackerInput {
  readonly at?: string;
  readonly rules: PvRules;
  readonly strings: readonly TrackerStrings[];
  readonly tracker: TrackerLimits;
}

/** A tracker with its strings, judged. */
export interface CheckedTracker {
  readonly strings: Quantity<"ratio">;
  readonly mppCurrent: Quantity<"current">;
  readonly maximumCurrent: Known<Quantity<"current">>;
  readonly inputsUsed: Quantity<"ratio">;
  /** Inputs that stay empty and must be sealed. */
  readonly inputsToSeal: Quantity<"ratio">;
  readonly checks: readonly Check[];
}

/**
 * Judges the strings of one tracker: their current at the maximum power point, their largest short-circuit current,
 * each plug, the inputs, and whether they are alike.
 *
 * @throws InputError for counts that are not whole, or a tracker without a string
 * @example
 * ```ts
 * import { trackerChecks } from "pv-to-grid/string";
 * const tracker = trackerChecks({
 *   rules: "IEC 62548-1:2023",
 *   strings: [{ count: 2, modules: 14, moduleType: "M440", mppCurrent: "13.42 A", shortCircuitCurrent: "14.1 A" }],
 *   tracker: { inputs: 2, maximumInputCurrent: "26 A", shortCircuitRating: "40 A" },
 * });
 * tracker.checks.map((check) => check.verdict).join(", "); // "met, not met, met"
 * tracker.maximumCurrent; // 2 · 1.25 · 14.1 A = 35.25 A
 * ```
 */
export function trackerChecks({ at = "", rules, strings, tracker }: TrackerInput): CheckedTracker {
  refuseBadCounts(strings, tracker.inputs);
  const mppCurrent = mppCurrentOfAll(strings);
  const current = maximumOfAll(strings);
  const loads = inputLoads(strings);
  const used = loads.reduce((sum, { inputs }) => sum + inputs, 0);
  const count = strings.reduce((sum, group) => sum + group.count, 0);
  const checks: Check[] = [
    stringsWithinInputs({
      value: whole(used),
      limit: whole(tracker.inputs),
      at,
      ...(used > tracker.inputs
        ? { remedy: `join strings in a described branch or combiner, or leave ${used - tracker.inputs} off` }
        : {}),
    }),
    mppCurrentWithinTracker({ value: mppCurrent, limit: tracker.maximumInputCurrent, at }),
    shortCircuitCurrentWithinTracker({ value: current, limit: tracker.shortCircuitRating, at }),
  ];
  const { inputRating } = tracker;
  if (inputRating !== undefined) {
    for (const { groups, name } of loads) {
      checks.push(
        currentWithinInput({
          value: maximumOfAll(groups),
          limit: inputRating,
          at: placeIn(at, name),
        }),
      );
    }
  }
  checks.push(...unlikeStrings(at, rules, strings));
  return Object.freeze({
    strings: whole(count),
    mppCurrent,
    maximumCurrent: current,
    inputsUsed: whole(used),
    inputsToSeal: whole(Math.max(0, tracker.inputs - used)),
    checks: Object.freeze(checks),
  });
}

/** What one plug carries: a single string, or all strings of a junction. */
interface InputLoad {
  readonly inputs: number;
  readonly groups: readonly TrackerStrings[];
  readonly name: string | undefined;
}

function inputLoads(strings: readonly TrackerStrings[]): readonly InputLoad[] {
  const single = strings
    .filter(({ junction }) => junction === undefined)
    .map((group): InputLoad => ({ inputs: group.count, groups: [{ ...group, count: 1 }], name: group.name }));
  const junctions = new Set(strings.flatMap(({ junction }) => junction ?? []));
  const joined = [...junctions].map((name): InputLoad => ({
    inputs: 1,
    groups: strings.filter(({ junction }) => junction === name),
    name,
  }));
  return [...single, ...joined];
}

function refuseBadCounts(strings: readonly TrackerStrings[], inputs: number): void {
  const problems: Problem[] = [];
  const positive = (value: number, path: string): void => {
    if (Number.isInteger(value) && value >= 1) return;
    problems.push({
      path,
      code: "out-of-domain",
      message: "a whole number, one or more, is due",
      expected: "1 or more",
      received: String(value),
    });
  };
  positive(inputs, "tracker.inputs");
  if (strings.length === 0) {
    problems.push({
      path: "strings",
      code: "empty",
      message: "a tracker is judged with its strings",
      expected: "one group or more",
      received: "none",
    });
  }
  for (const [index, { count, modules }] of strings.entries()) {
    positive(count, `strings[${index}].count`);
    positive(modules, `strings[${index}].modules`);
  }
  if (problems.length > 0) throw new InputError("string/tracker-checks", problems);
}

/** How many equal strings a tracker takes, by each of its limits. */
export interface StringsPerTracker {
  /** Within the short-circuit rating: a matter of safety. `null` where it is not known or not even one fits. */
  readonly forSafety: number | null;
  /** Without clipping: a matter of yield. */
  readonly forYield: number | null;
  readonly open: readonly string[];
}

/**
 * How many equal strings may be in parallel on a tracker, found by the conditions themselves.
 *
 * @example
 * ```ts
 * import { stringsPerTracker } from "pv-to-grid/string";
 * const most = stringsPerTracker({ mppCurrent: "13.42 A", shortCircuitCurrent: "14.1 A", tracker: { inputs: 2, maximumInputCurrent: "26 A", shortCircuitRating: "40 A" } });
 * most.forSafety; // 2
 * most.forYield; // 1
 * ```
 */
export function stringsPerTracker(given: {
  readonly mppCurrent: Input<"current">;
  readonly shortCircuitCurrent: Input<"current">;
  readonly currentCorrection?: Known<Input<"ratio">>;
  readonly tracker: TrackerLimits;
}): StringsPerTracker {
  const { mppCurrent, shortCircuitCurrent, currentCorrection, tracker } = given;
  const { maximumInputCurrent, shortCircuitRating } = tracker;
  const open = [currentCorrection, maximumInputCurrent, shortCircuitRating].flatMap((side) =>
    isMissing(side) ? side.missing : [],
  );
  const correction = currentCorrection === undefined || isMissing(currentCorrection) ? {} : { currentCorrection };
  const safe =
    isMissing(shortCircuitRating) || isMissing(currentCorrection)
      ? null
      : largestMet(
          (strings) =>
            shortCircuitCurrentWithinTracker({
              value: maximumStringCurrent({ shortCircuitCurrent, ...correction, strings }),
              limit: shortCircuitRating,
            }),
          1,
        ).count;
  const useful = isMissing(maximumInputCurrent)
    ? null
    : largestMet(
        (strings) =>
          mppCurrentWithinTracker({
            value: parallelCurrent({ strings: whole(strings), current: mppCurrent }),
            limit: maximumInputCurrent,
          }),
        1,
      ).count;
  return Object.freeze({ forSafety: safe, forYield: useful, open: Object.freeze(open) });
}
