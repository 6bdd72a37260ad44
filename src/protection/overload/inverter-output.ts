import { isMissing, type Known } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { largestSinglePhaseOutputCurrent, largestThreePhaseOutputCurrent } from "./output-current.js";

/** The facts of an inverter from which its largest output current follows. */
export interface InverterOutput {
  readonly phases: 1 | 3;
  readonly apparentPower: Input<"apparentPower">;
  /** Nominal voltage: between lines with three phases, between the two terminals otherwise. */
  readonly acVoltage: Input<"voltage">;
  /** The maker's largest output current, or what is missing for it. */
  readonly maximumAcCurrent: Known<Input<"current">>;
}

/**
 * Largest output current of an inverter: the maker's value, or else its apparent power at a supply ten per cent low.
 *
 * @param inverter - phases, apparent power, voltage and the maker's current or what is missing for it
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { inverterOutputCurrent } from "pv-to-grid/protection";
 * inverterOutputCurrent({ phases: 3, apparentPower: "5 kVA", acVoltage: "400 V", maximumAcCurrent: "8 A" }).text; // "8"
 * ```
 */
export function inverterOutputCurrent(inverter: InverterOutput): Quantity<"current"> {
  const { phases, apparentPower, acVoltage, maximumAcCurrent } = inverter;
  if (!isMissing(maximumAcCurrent)) return given(maximumAcCurrent, "A", "maker's largest output current");
  return phases === 3
    ? largestThreePhaseOutputCurrent({ apparentPower, lineToLine: acVoltage })
    : largestSinglePhaseOutputCurrent({ apparentPower, terminalVoltage: acVoltage });
}
