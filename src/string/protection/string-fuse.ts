import { type Check, type Choice, choose, isMissing, type Known, type Series, whenKnown } from "../../formula/index.js";
import {
  nfpa70_2017_240_6_fuses,
  nfpa70_2020_240_6_fuses,
  nfpa70_2023_240_6_fuses,
  stringFuseRatings,
} from "../../device/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { largestMet, whole } from "../count.js";
import { maximumStringCurrent } from "../current/maximum-string-current.js";
import { coldVoltageWithinFuse } from "../voltage/ceiling-conditions.js";
import { fuseReferenceAmbient, hotFuseRating } from "./fuse-heat.js";
import { fuseAmbientWithinReference, fuseCarriesWhenHot } from "./fuse-conditions.js";
import { type FusedStrings, type FuseRules, type FuseWindow, fuseWindow } from "./fuse-window.js";
import {
  largestReverseCurrent,
  reverseCurrent,
  reverseCurrentWithinModule,
  reverseCurrentWithinPart,
} from "./reverse-current.js";
import { placeIn } from "../place.js";

/** A part in the way of a reverse current that no fuse protects: a conductor, a plug, a branch. */
export interface UnfusedPart {
  readonly name: string;
  readonly rating: Known<Input<"current">>;
}

/** Strings in parallel, and what there is to protect them. */
export interface StringFuseInput extends FusedStrings {
  readonly at?: string;
  /** All strings in parallel behind the nearest device. */
  readonly strings: number;
  /** What the inverter can feed back into a faulty string; the form of 2016 does not know it. */
  readonly backfeedCurrent: Known<Input<"current">>;
  /** `"choose"` where one is needed, `"none"`, or the rating that there is. */
  readonly fuse: Input<"current">;
  /** Open-circuit voltage of the string at the lowest temperature, and the rated voltage of the fuses; left out, not judged. */
  readonly coldVoltage?: Known<Input<"voltage">>;
  readonly fuseVoltage?: Known<Input<"voltage">>;
  /** Temperature around the fuses, and the maker's factor for it; left out, not judged. */
  readonly fuseAmbient?: Known<Input<"temperature">>;
  readonly ambientFactor?: Known<Input<"ratio">>;
  readonly unfusedParts?: readonly UnfusedPart[];
}

/** Whether strings need fuses, which, and what was checked. */
export interface StringFuse {
  readonly reverseCurrent: Known<Quantity<"current">>;
  /** Met: the module bears the reverse current without a fuse. It judges the need, and is a requirement only where there is no fuse. */
  readonly need: Check;
  /** `null` while a rating is missing. */
  readonly needed: boolean | null;
  /** How many strings may be in parallel without fuses; `null` while a rating is missing. */
  readonly withoutFuses: Quantity<"ratio"> | null;
  readonly window: FuseWindow;
  readonly choice: Choice<"A"> | null;
  /** The rating chosen or verified; `null` where there is none. */
  readonly rating: Quantity<"current"> | null;
  readonly checks: readonly Check[];
  /** Which bounds fail where no rating of the series fits. */
  readonly blockedBy: readonly Check[];
}

const seriesOf: Partial<Record<FuseRules, Series<"A">>> = {
  "NFPA 70:2017": nfpa70_2017_240_6_fuses,
  "NFPA 70:2020": nfpa70_2020_240_6_fuses,
  "NFPA 70:2023": nfpa70_2023_240_6_fuses,
};

/**
 * Judges whether strings in parallel need fuses, and chooses or verifies their rating by the window of the rule set.
 *
 * @throws InputError for currents and counts that cannot be ones
 * @example
 * ```ts
 * import { stringFuse } from "pv-to-grid/string";
 * const fuse = stringFuse({
 *   rules: "IEC 62548:2016", strings: 4, shortCircuitCurrent: "12.28 A", maximumSeriesFuse: "20 A", backfeedCurrent: "0 A", fuse: "choose",
 * });
 * fuse.needed; // true
 * fuse.rating?.text; // "20"
 * ```
 */
export function stringFuse(input: StringFuseInput): StringFuse {
  const { at = "", maximumSeriesFuse, fuse, unfusedParts = [] } = input;
  const current = reverseCurrentOf(input, input.strings);
  const need = reverseCurrentWithinModule({ value: current, limit: maximumSeriesFuse, at });
  const parts = unfusedParts.map(({ name, rating }) =>
    reverseCurrentWithinPart({ value: current, limit: rating, at: placeIn(at, name) }),
  );
  const needed = [need, ...parts].some(({ verdict }) => verdict === "not met")
    ? true
    : need.verdict === "open"
      ? null
      : false;
  const window = fuseWindow(input);
  const common = { reverseCurrent: current, need, needed, withoutFuses: withoutFuses(input), window };
  if (fuse === "none" || (fuse === "choose" && needed === false)) {
    return Object.freeze({
      ...common,
      choice: null,
      rating: null,
      checks: Object.freeze([need, ...parts]),
      blockedBy: [],
    });
  }
  const checksFor = (rating: Input<"current">): readonly Check[] => [
    ...window.checksFor(rating, at),
    ...hotChecks(input, rating),
    ...voltageChecks(input),
  ];
  const series: Series<"A"> = seriesOf[input.rules] ?? stringFuseRatings;
  const choice = choose(series, (rating) => checksFor(rating));
  if (fuse !== "choose") {
    return Object.freeze({
      ...common,
      choice: null,
      rating: given(fuse, "A"),
      checks: Object.freeze(checksFor(fuse)),
      blockedBy: [],
    });
  }
  const blockedBy = choice.chosen === null ? blocking(series, window, checksFor, at) : [];
  const checks = choice.chosen === null ? blockedBy : choice.checks;
  return Object.freeze({
    ...common,
    choice,
    rating: choice.chosen,
    checks: Object.freeze(checks),
    blockedBy: Object.freeze(blockedBy),
  });
}

/** Reverse current into one of some strings, in the form of the rule set. */
function reverseCurrentOf(
  { rules, shortCircuitCurrent, currentCorrection, backfeedCurrent }: StringFuseInput,
  strings: number,
): Known<Quantity<"current">> {
  if (rules === "IEC 62548:2016") return reverseCurrent({ strings: whole(strings), shortCircuitCurrent });
  const maximumCurrent = maximumStringCurrent({
    shortCircuitCurrent,
    ...(currentCorrection === undefined ? {} : { currentCorrection }),
  });
  return whenKnown({ backfeedCurrent }, (known) =>
    largestReverseCurrent({ strings: whole(strings), maximumCurrent, ...known }),
  );
}

function withoutFuses(input: StringFuseInput): Quantity<"ratio"> | null {
  const { maximumSeriesFuse } = input;
  if (isMissing(maximumSeriesFuse) || isMissing(reverseCurrentOf(input, 1))) return null;
  const turn = largestMet(
    (strings) => reverseCurrentWithinModule({ value: reverseCurrentOf(input, strings), limit: maximumSeriesFuse }),
    2,
  );
  return turn.count === null ? null : whole(turn.count, "the last count whose reverse current the module bears");
}

function hotChecks(
  { at = "", fuseAmbient, ambientFactor, ...fused }: StringFuseInput,
  rating: Input<"current">,
): readonly Check[] {
  const { shortCircuitCurrent, currentCorrection, stringsPerDevice = 1 } = fused;
  if (ambientFactor !== undefined) {
    const limit = maximumStringCurrent({
      shortCircuitCurrent,
      ...(currentCorrection === undefined ? {} : { currentCorrection }),
      strings: stringsPerDevice,
    });
    const value = whenKnown({ ambientFactor }, (known) => hotFuseRating({ ratedCurrent: rating, ...known }));
    if (!isMissing(value) || fuseAmbient === undefined) return [fuseCarriesWhenHot({ value, limit, at })];
  }
  if (fuseAmbient === undefined) return [];
  const within = fuseAmbientWithinReference({ value: fuseAmbient, limit: fuseReferenceAmbient({}), at });
  if (within.verdict !== "not met") return [within];
  const factor = isMissing(ambientFactor) ? ambientFactor.missing : ["the maker's factor for the ambient of the fuses"];
  return [fuseCarriesWhenHot({ missing: factor, at })];
}

function voltageChecks({ at = "", coldVoltage, fuseVoltage }: StringFuseInput): readonly Check[] {
  if (coldVoltage === undefined || fuseVoltage === undefined) return [];
  return [coldVoltageWithinFuse({ value: coldVoltage, limit: fuseVoltage, at })];
}

// What stands in the way: the failing checks of the smallest rating that clears the lower bound, or of the largest rating.
function blocking(
  series: Series<"A">,
  { checksFor: ofWindow }: FuseWindow,
  checksFor: (rating: Quantity<"current">) => readonly Check[],
  at: string,
): readonly Check[] {
  const sizes = series.sizes();
  const clears = sizes.find((rating) => ofWindow(rating, at)[0]?.verdict === "met") ?? sizes.at(-1)!;
  return checksFor(clears).filter(({ verdict, rule }) => verdict === "not met" && rule.force === "requirement");
}
