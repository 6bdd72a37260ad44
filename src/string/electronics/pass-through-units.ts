import { type Check, type Known, whenKnown } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import { whole } from "../count.js";
import { maximumStringCurrent } from "../current/maximum-string-current.js";
import { stringVoltage } from "../voltage/string-voltage.js";
import { stringPower, unitBearsCurrent, unitBearsVoltage, unitTakesPower } from "./unit-conditions.js";

/** A module-level unit that passes the module's voltage through when it does not switch off. */
export interface PassThroughUnit {
  readonly at?: string;
  /** Modules on one unit. */
  readonly modules: number;
  /** Of one module at the lowest temperature. */
  readonly coldOpenCircuitVoltage: Known<Input<"voltage">>;
  readonly shortCircuitCurrent: Input<"current">;
  readonly maximumPower: Input<"activePower">;
  readonly maximumInputVoltage: Known<Input<"voltage">>;
  readonly maximumInputCurrent: Known<Input<"current">>;
  readonly maximumInputPower: Known<Input<"activePower">>;
  /** Whether the maker compares his current rating with the short-circuit current of the datasheet; otherwise with 1.25 times it. */
  readonly ratedAgainstDatasheetCurrent: boolean;
}

/**
 * Judges pass-through units by their input ratings. The string keeps its ordinary voltage limits beside them.
 *
 * @example
 * ```ts
 * import { passThroughUnitChecks } from "pv-to-grid/string";
 * passThroughUnitChecks({
 *   modules: 1, coldOpenCircuitVoltage: "43.2 V", shortCircuitCurrent: "14.1 A", maximumPower: "440 W",
 *   maximumInputVoltage: "80 V", maximumInputCurrent: "15 A", maximumInputPower: "700 W", ratedAgainstDatasheetCurrent: true,
 * }).every((check) => check.verdict === "met"); // true
 * ```
 */
export function passThroughUnitChecks(unit: PassThroughUnit): readonly Check[] {
  const { at = "", modules, coldOpenCircuitVoltage, shortCircuitCurrent, maximumPower } = unit;
  const count = whole(modules);
  const voltage = whenKnown({ coldOpenCircuitVoltage }, (known) =>
    stringVoltage({ modules: count, moduleVoltage: known.coldOpenCircuitVoltage }),
  );
  const current = unit.ratedAgainstDatasheetCurrent
    ? shortCircuitCurrent
    : maximumStringCurrent({ shortCircuitCurrent });
  return Object.freeze([
    unitBearsVoltage({ value: voltage, limit: unit.maximumInputVoltage, at }),
    unitBearsCurrent({ value: current, limit: unit.maximumInputCurrent, at }),
    unitTakesPower({
      value: stringPower({ modules: count, modulePower: maximumPower }),
      limit: unit.maximumInputPower,
      at,
    }),
  ]);
}
