import type { Check, Force } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import { type StringInput, type StringLimit, stringLimits } from "./string-limits.js";

/** One limit of a string's length, and the count at which it turns. */
export interface LengthLimit {
  readonly key: string;
  readonly end: "longest" | "shortest";
  readonly force: Force;
  /** The last count that is met; `null` where the limit is open or no count meets it. */
  readonly count: Quantity<"ratio"> | null;
  readonly met: Check | null;
  /** The next count, which is not met. */
  readonly beyond: Check | null;
}

/** How many modules a string may have, and what says so. */
export interface StringRange {
  /** Largest count within every rating and ceiling: a matter of safety. `null` where none is known or not even one module fits. */
  readonly longest: Quantity<"ratio"> | null;
  /** Smallest count that works the inverter on a hot day: a matter of yield. */
  readonly shortest: Quantity<"ratio"> | null;
  /** Largest count that also stays inside the tracking range when cold; `longest` where that is the smaller one. */
  readonly longestForYield: Quantity<"ratio"> | null;
  /** The check that the next count does not meet, for each end. */
  readonly limitedBy: {
    readonly longest: Check | null;
    readonly shortest: Check | null;
    readonly longestForYield: Check | null;
  };
  readonly limits: readonly LengthLimit[];
  /** Limits that cannot be tried, with what they lack. */
  readonly open: readonly Check[];
  /** Why no count fits, where none does. */
  readonly because: string | null;
}

/**
 * Range of string lengths: from the shortest that works to the longest that is safe, with what limits each end.
 *
 * Every count is found by its own condition: it is met there and not met at the next. What is not known leaves its
 * limit open and narrows nothing.
 *
 * @throws InputError for a voltage or a share that cannot be one
 * @example
 * ```ts
 * import { stringRange } from "pv-to-grid/string";
 * const range = stringRange({
 *   module: { coldOpenCircuitVoltage: "43.2 V", hotMppVoltage: "28.1 V", hotOpenCircuitVoltage: "34.9 V" },
 *   ceilings: [{ key: "inverter", limit: "1000 V" }, { key: "module", limit: "1500 V" }],
 *   mppVoltageRange: ["200 V", "850 V"], startVoltage: "180 V", voltageDrop: "1 %",
 * });
 * range.longest?.text; // "23"
 * range.shortest?.text; // "8"
 * range.limitedBy.longest?.id; // "string/cold-voltage-within-inverter"
 * ```
 */
export function stringRange(input: StringInput): StringRange {
  const limits = stringLimits(input);
  const tried = limits.map(lengthLimit);
  const safety = narrowest(tried.filter(({ end, force }) => end === "longest" && force === "requirement"));
  const forYield = narrowest(tried.filter(({ end }) => end === "longest"));
  const short = narrowest(tried.filter(({ end }) => end === "shortest"));
  return Object.freeze({
    longest: safety?.count ?? null,
    shortest: short?.count ?? null,
    longestForYield: forYield?.count ?? null,
    limitedBy: Object.freeze({
      longest: safety?.beyond ?? null,
      shortest: short?.beyond ?? null,
      longestForYield: forYield?.beyond ?? null,
    }),
    limits: Object.freeze(tried),
    open: Object.freeze(limits.filter(({ missing }) => missing.length > 0).map(({ check }) => check(1))),
    because: whyNone(safety, short),
  });
}

function lengthLimit({ key, end, rule, turn }: StringLimit): LengthLimit {
  return Object.freeze({ key, end, force: rule.force, ...turn() });
}

// The first of equals wins, so that the order in which limits are stated decides which one is named.
function narrowest(limits: readonly LengthLimit[]): LengthLimit | undefined {
  const room = ({ end, count }: LengthLimit): number =>
    end === "longest" ? (count?.number ?? 0) : -(count?.number ?? 0);
  return limits
    .filter(({ count, beyond }) => count !== null || beyond !== null)
    .reduce<LengthLimit | undefined>(
      (least, limit) => (least === undefined || room(limit) < room(least) ? limit : least),
      undefined,
    );
}

function whyNone(longest: LengthLimit | undefined, shortest: LengthLimit | undefined): string | null {
  if (longest?.count === null) return `one module already exceeds the limit of the ${longest.key}`;
  const [most, least] = [longest?.count?.number, shortest?.count?.number];
  if (most === undefined || least === undefined || least <= most) return null;
  return `at least ${least} modules are due by the ${shortest!.key}, at most ${most} fit by the ${longest!.key}`;
}
