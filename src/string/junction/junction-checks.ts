import { type Check, isMissing, type Known, type Missing, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { whole } from "../count.js";
import {
  coldVoltageWithinJunction,
  combinerHasLoadBreakSwitch,
  deratedCurrent,
  diodeLoss,
  junctionCarriesCurrent,
  junctionHasInputs,
} from "./junction-conditions.js";

/** A branch or combiner that joins strings before they reach an input. */
export interface JunctionInput {
  readonly at?: string;
  readonly kind: "branch plug" | "combiner";
  readonly inputs: number;
  /** Strings that it joins. */
  readonly strings: number;
  /** Of its trunk, busbar or plug. */
  readonly ratedCurrent: Known<Input<"current">>;
  readonly ratedVoltage: Known<Input<"voltage">>;
  /** Factor on its ratings for the heat inside; left out for a branch in the open air. */
  readonly derating?: Known<Input<"ratio">>;
  /** Of its strings together. */
  readonly maximumCurrent: Known<Input<"current">>;
  readonly coldVoltage: Known<Input<"voltage">>;
  /** Of a combiner; left out for a branch. */
  readonly loadBreakSwitch?: boolean | Missing;
  /** Forward voltage of its blocking diodes, and the string's voltage at its maximum power point. */
  readonly diodes?: { readonly diodeVoltage: Input<"voltage">; readonly mppVoltage: Input<"voltage"> };
}

/** A junction, judged. */
export interface CheckedJunction {
  readonly checks: readonly Check[];
  /** Share of the power that its diodes take; `null` where it has none. */
  readonly diodeLoss: Quantity<"ratio"> | null;
}

/**
 * Judges a branch or combiner: inputs, current in the heat that it works in, voltage, switch, and the loss of its diodes.
 *
 * @example
 * ```ts
 * import { junctionChecks } from "pv-to-grid/string";
 * const combiner = junctionChecks({
 *   kind: "combiner", inputs: 4, strings: 4, ratedCurrent: "80 A", ratedVoltage: "1000 V", derating: "0.8",
 *   maximumCurrent: "70.5 A", coldVoltage: "820 V", loadBreakSwitch: true,
 * });
 * combiner.checks.map((check) => check.verdict).join(); // "met,not met,met,met"
 * ```
 */
export function junctionChecks(input: JunctionInput): CheckedJunction {
  const {
    at = "",
    kind,
    inputs,
    strings,
    ratedCurrent,
    ratedVoltage,
    derating,
    maximumCurrent,
    coldVoltage,
    loadBreakSwitch,
    diodes,
  } = input;
  const carries = derating === undefined ? ratedCurrent : whenKnown({ ratedCurrent, derating }, deratedCurrent);
  const checks = [
    junctionHasInputs({ value: whole(strings), limit: whole(inputs), at }),
    junctionCarriesCurrent({ value: maximumCurrent, limit: carries, at }),
    coldVoltageWithinJunction({ value: coldVoltage, limit: ratedVoltage, at }),
  ];
  if (kind === "combiner" && loadBreakSwitch !== undefined) {
    const value = isMissing(loadBreakSwitch) ? loadBreakSwitch : loadBreakSwitch ? "load-break switch" : "none";
    checks.push(combinerHasLoadBreakSwitch({ value, limit: ["load-break switch"], at }));
  }
  return Object.freeze({ checks: Object.freeze(checks), diodeLoss: diodes === undefined ? null : diodeLoss(diodes) });
}
