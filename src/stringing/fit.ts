import { isMissing, type Known, whenKnown } from "../formula/index.js";
import { given, type Input } from "../quantity/index.js";
import {
  type Ceiling,
  currentWithinInput,
  maximumStringCurrent,
  stringFuse,
  stringRange,
  type StringRange,
  stringsPerTracker,
} from "../string/index.js";
import type { StringingInput, StringingInverter, StringingRoof, StringingTracker } from "./input.js";

/** How strings of one roof fit one tracker. */
export interface Fit {
  /** From the shortest string that works to the longest that is safe and inside the tracking range; `null` where there is none. */
  readonly lengths: readonly [number, number] | null;
  /** Most strings in parallel: by the inputs, the short-circuit rating, and the input current, which one string may exceed. */
  readonly strings: number;
  /** For each number of strings, whether they need fuses; `null` where that number is not to be had. */
  readonly fused: readonly (boolean | null)[];
  /** Current of one string over the tracker's largest input current. */
  readonly load: number;
  /** Why nothing fits, where nothing does. */
  readonly because: string | null;
}

/** Fits a roof to a tracker by the conditions of `string/`. */
export function fitOf(
  input: StringingInput,
  roof: StringingRoof,
  inverter: StringingInverter,
  tracker: StringingTracker,
): Fit {
  const range = stringRange({
    module: roof.module,
    ceilings: ceilingsOf(roof, inverter),
    mppVoltageRange: inverter.mppVoltageRange,
    startVoltage: inverter.startVoltage,
    voltageDrop: roof.voltageDrop,
    ...(input.windowMargin === undefined ? {} : { windowMargin: input.windowMargin }),
  });
  const lengths = lengthsOf(range);
  const most = mostStrings(roof, tracker);
  const fused = Array.from({ length: most.strings + 1 }, (_, strings) => fusedAt(input, roof, inverter, strings));
  const strings = fused.reduce((last, state, count) => (state === null ? last : count), 0);
  const because = lengths === null ? whyNoLength(range) : strings === 0 ? (most.because ?? "no fuse fits") : null;
  return { lengths, strings, fused, load: loadOf(roof, tracker), because };
}

function ceilingsOf({ ceilings }: StringingRoof, inverter: StringingInverter): readonly Ceiling[] {
  return [{ key: "inverter", limit: inverter.maximumDcVoltage }, ...(inverter.ceilings ?? []), ...ceilings];
}

function lengthsOf({ longest, longestForYield, shortest }: StringRange): readonly [number, number] | null {
  if (longest === null) return null;
  const from = shortest?.number ?? 1;
  const inside = longestForYield?.number ?? longest.number;
  const to = inside >= from ? inside : longest.number;
  return to < from ? null : [from, to];
}

function whyNoLength({ because, open }: StringRange): string {
  if (because !== null) return because;
  return `not known: ${[...new Set(open.flatMap(({ missing }) => missing))].join(", ")}`;
}

function mostStrings(
  roof: StringingRoof,
  tracker: StringingTracker,
): { readonly strings: number; readonly because: string | null } {
  const { mppCurrent, shortCircuitCurrent, currentCorrection } = roof;
  const correction = currentCorrection === undefined ? {} : { currentCorrection };
  const one = maximumOfOne(roof);
  if (
    tracker.inputRating !== undefined &&
    currentWithinInput({ value: one, limit: tracker.inputRating }).verdict === "not met"
  ) {
    return { strings: 0, because: "one string carries more than a plug of the tracker may" };
  }
  const { forSafety, forYield } = stringsPerTracker({ mppCurrent, shortCircuitCurrent, ...correction, tracker });
  const known = !isMissing(tracker.shortCircuitRating) && !isMissing(currentCorrection);
  if (known && forSafety === null)
    return { strings: 0, because: "one string exceeds the tracker's short-circuit rating" };
  const useful = isMissing(tracker.maximumInputCurrent) ? tracker.inputs : Math.max(1, forYield ?? 1);
  return { strings: Math.min(tracker.inputs, forSafety ?? tracker.inputs, useful), because: null };
}

function maximumOfOne({ shortCircuitCurrent, currentCorrection }: StringingRoof): Known<Input<"current">> {
  if (currentCorrection === undefined) return maximumStringCurrent({ shortCircuitCurrent });
  return whenKnown({ currentCorrection }, (known) => maximumStringCurrent({ shortCircuitCurrent, ...known }));
}

// A need that is not decided counts as a fuse, so that the ranking does not prefer what may turn out to need one.
function fusedAt(
  { rules, fuses }: StringingInput,
  roof: StringingRoof,
  { backfeedCurrent }: StringingInverter,
  strings: number,
): boolean | null {
  if (strings < 2) return false;
  const { shortCircuitCurrent, currentCorrection, maximumSeriesFuse } = roof;
  const correction = currentCorrection === undefined || isMissing(currentCorrection) ? {} : { currentCorrection };
  const fuse = stringFuse({
    rules,
    strings,
    shortCircuitCurrent,
    ...correction,
    maximumSeriesFuse,
    backfeedCurrent,
    fuse: "choose",
  });
  if (fuse.needed === false) return false;
  return fuses === "none" || fuse.rating === null ? null : true;
}

function loadOf({ mppCurrent }: StringingRoof, { maximumInputCurrent }: StringingTracker): number {
  const current = given(mppCurrent, "A").number;
  return isMissing(maximumInputCurrent) ? 1 : current / given(maximumInputCurrent, "A").number;
}
