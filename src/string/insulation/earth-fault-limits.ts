import { type Check, isMissing, type Known, type Missing, whenKnown } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { isNec, type PvRules } from "../rules.js";
import {
  iec62548_2016_arrayInsulation,
  iec62548_2016_functionalEarthDevice,
  insulationBeforeConnection,
  residualCurrentLimit,
} from "./array-insulation.js";
import {
  groundFaultCurrent,
  groundFaultProtectionPresent,
  groundFaultVoltage,
  insulationMeasured,
  withinGroundFaultCurrent,
  withinGroundFaultVoltage,
} from "./ground-fault.js";

/** An array on one inverter, and what watches its insulation. */
export interface EarthFaultInput {
  readonly at?: string;
  readonly rules: PvRules;
  /** At standard test conditions. */
  readonly arrayPower: Input<"activePower">;
  readonly coldVoltage: Known<Input<"voltage">>;
  readonly maximumCurrent: Known<Input<"current">>;
  /** Rated output of the inverter. */
  readonly apparentPower: Input<"apparentPower">;
  /** Whether the inverter measures the insulation of the array before it connects. */
  readonly insulationMonitoring: boolean | Missing;
  /** Whether one pole of the array is earthed for function. */
  readonly functionalEarthing: boolean | Missing;
}

/** The limits that watch an array's insulation, by rating. */
export interface EarthFaultLimits {
  /** Resistance below which the array is reported or kept off. */
  readonly insulationByPower: Quantity<"resistance">;
  /** Resistance that the inverter asks for before it connects. */
  readonly insulationBeforeConnection: Known<Quantity<"resistance">>;
  /** Continuous residual current at which it disconnects. */
  readonly residualCurrent: Quantity<"current">;
  /** Rated current of the device in a functional earth; `null` where there is none. */
  readonly functionalEarthDevice: Known<Quantity<"current">> | null;
  /** Whether the NEC asks for ground-fault protection; `null` where another rule set applies or an input is missing. */
  readonly groundFaultProtection: boolean | null;
  readonly checks: readonly Check[];
}

/**
 * Insulation-resistance and residual-current limits of an array by its rating, and whether something watches them.
 *
 * @example
 * ```ts
 * import { earthFaultLimits } from "pv-to-grid/string";
 * const limits = earthFaultLimits({
 *   rules: "IEC 62548-1:2023", arrayPower: "18 kW", coldVoltage: "780 V", maximumCurrent: "35.25 A", apparentPower: "15 kVA",
 *   insulationMonitoring: true, functionalEarthing: false,
 * });
 * limits.insulationByPower.text; // "30"
 * limits.residualCurrent.text; // "300"
 * ```
 */
export function earthFaultLimits(input: EarthFaultInput): EarthFaultLimits {
  const { at = "", rules, arrayPower, coldVoltage, apparentPower, insulationMonitoring, functionalEarthing } = input;
  const power = given(arrayPower, "W").in("kW");
  const due = isNec(rules) ? groundFaultDue(input) : null;
  const watched = isMissing(insulationMonitoring)
    ? insulationMonitoring
    : insulationMonitoring
      ? "measured by the inverter"
      : "none";
  const serves = { value: watched, limit: ["measured by the inverter"], at };
  const checks = isNec(rules)
    ? due === false
      ? []
      : [groundFaultProtectionPresent(serves)]
    : [insulationMeasured(serves)];
  const earthed = isMissing(functionalEarthing)
    ? functionalEarthing
    : functionalEarthing
      ? iec62548_2016_functionalEarthDevice({ arrayPower: power })
      : null;
  return Object.freeze({
    insulationByPower: iec62548_2016_arrayInsulation({ arrayPower: power }),
    insulationBeforeConnection: whenKnown({ coldVoltage }, (known) =>
      insulationBeforeConnection({ maximumVoltage: known.coldVoltage }),
    ),
    residualCurrent: residualCurrentLimit({ apparentPower }),
    functionalEarthDevice: earthed,
    groundFaultProtection: due,
    checks: Object.freeze(checks),
  });
}

function groundFaultDue({ at = "", coldVoltage, maximumCurrent }: EarthFaultInput): boolean | null {
  const verdicts = [
    withinGroundFaultVoltage({ value: coldVoltage, limit: groundFaultVoltage({}), at }).verdict,
    withinGroundFaultCurrent({ value: maximumCurrent, limit: groundFaultCurrent({}), at }).verdict,
  ];
  if (verdicts.includes("not met")) return true;
  return verdicts.includes("open") ? null : false;
}
