import { type Check, isMissing, type Known } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { largestMet, smallestMet, type Turn, whole } from "../count.js";
import { stringVoltage } from "../voltage/string-voltage.js";
import {
  regulatedPowerWithinLimit,
  regulatedStringPower,
  regulatedVoltageWithinCeiling,
  stringPower,
  unitCountWithinMaker,
  unitsReachStringVoltage,
} from "./unit-conditions.js";
import { placeIn } from "../place.js";

/** A string of module-level units that regulate their output, on an inverter that holds one voltage. */
export interface RegulatedString {
  readonly at?: string;
  /** Voltage that the inverter holds. */
  readonly inverterVoltage: Input<"voltage">;
  /** Largest output voltage and current of one unit. */
  readonly outputVoltage: Input<"voltage">;
  readonly outputCurrent: Input<"current">;
  /** Power of the modules of one unit at standard test conditions. */
  readonly unitPower: Input<"activePower">;
  /** The maker's largest power of a string and largest number of units; left out where he states none. */
  readonly maximumStringPower?: Known<Input<"activePower">>;
  readonly maximumUnits?: Known<number>;
  /** Largest voltage of the regulated string by its maker, and the ceilings that it must keep. */
  readonly largestVoltage?: Known<Input<"voltage">>;
  readonly ceilings?: readonly { readonly name: string; readonly limit: Known<Input<"voltage">> }[];
}

/** How many units a regulated string may have, and what says so. */
export interface RegulatedRange {
  readonly shortest: Quantity<"ratio"> | null;
  readonly longest: Quantity<"ratio"> | null;
  readonly limitedBy: { readonly shortest: Check | null; readonly longest: Check | null };
  /** Limits that cannot be tried. */
  readonly open: readonly Check[];
  /** Checks that do not depend on the number of units. */
  readonly checks: readonly Check[];
  /** The checks of a string with some units. */
  readonly checksFor: (units: number) => readonly Check[];
}

/**
 * Range of a regulated string: from the fewest units that reach the inverter's voltage to the most whose power it passes.
 *
 * @example
 * ```ts
 * import { regulatedString } from "pv-to-grid/string";
 * const range = regulatedString({ inverterVoltage: "380 V", outputVoltage: "60 V", outputCurrent: "15 A", unitPower: "440 W" });
 * range.shortest?.text; // "7"
 * range.longest?.text; // "12"
 * ```
 */
export function regulatedString(input: RegulatedString): RegulatedRange {
  const { at = "", inverterVoltage, outputVoltage, outputCurrent, unitPower, maximumStringPower, maximumUnits } = input;
  const passed = regulatedStringPower({ inverterVoltage, outputCurrent });
  const reach = (units: number): Check =>
    unitsReachStringVoltage({
      value: stringVoltage({ modules: whole(units), moduleVoltage: outputVoltage }),
      limit: inverterVoltage,
      at,
    });
  const powerOf = (units: number): Quantity<"activePower"> =>
    stringPower({ modules: whole(units), modulePower: unitPower });
  const upper = [(units: number): Check => regulatedPowerWithinLimit({ value: powerOf(units), limit: passed, at })];
  if (maximumStringPower !== undefined) {
    upper.push((units) =>
      regulatedPowerWithinLimit({
        value: powerOf(units),
        limit: maximumStringPower,
        at: placeIn(at, "maker"),
      }),
    );
  }
  if (maximumUnits !== undefined) {
    const limit = isMissing(maximumUnits) ? maximumUnits : whole(maximumUnits);
    upper.push((units) => unitCountWithinMaker({ value: whole(units), limit, at }));
  }
  const least = smallestMet(reach, given(inverterVoltage, "V").number / given(outputVoltage, "V").number);
  const guess = passed.number / given(unitPower, "W").number;
  const closed = upper.filter((check) => check(1).missing.length === 0);
  const most = closed
    .map((check) => largestMet(check, guess))
    .reduce((narrow, turn) => (countOf(turn) < countOf(narrow) ? turn : narrow));
  const asQuantity = ({ count }: Turn): Quantity<"ratio"> | null =>
    count === null ? null : whole(count, "the last count that the condition admits");
  return Object.freeze({
    shortest: asQuantity(least),
    longest: asQuantity(most),
    limitedBy: Object.freeze({ shortest: least.beyond, longest: most.beyond }),
    open: Object.freeze(upper.map((check) => check(1)).filter(({ missing }) => missing.length > 0)),
    checks: Object.freeze(ceilingChecks(input)),
    checksFor: (units: number) => Object.freeze([reach(units), ...upper.map((check) => check(units))]),
  });
}

function countOf({ count }: Turn): number {
  return count ?? 0;
}

function ceilingChecks({ at = "", largestVoltage, inverterVoltage, ceilings = [] }: RegulatedString): readonly Check[] {
  const value = largestVoltage ?? inverterVoltage;
  return ceilings.map(({ name, limit }) => regulatedVoltageWithinCeiling({ value, limit, at: placeIn(at, name) }));
}
