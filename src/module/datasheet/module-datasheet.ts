import type { Missing } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";

/** A coefficient of a voltage, relative (%/K, 1/K) or absolute (V/K, mV/K). */
export type VoltageCoefficient = Input<"relativeTemperatureCoefficient"> | Input<"voltageTemperatureCoefficient">;
/** A coefficient of the power, relative (%/K, 1/K) or absolute (W/K). */
export type PowerCoefficient = Input<"relativeTemperatureCoefficient"> | Input<"powerTemperatureCoefficient">;
/** A coefficient of a current, relative (%/K, 1/K) or absolute (A/K, mA/K). */
export type CurrentCoefficient = Input<"relativeTemperatureCoefficient"> | Input<"currentTemperatureCoefficient">;

/** A finding of the datasheet: absent, or passed on as missing, where it does not state it. */
type Finding<T> = T | Missing | undefined;

/**
 * What the datasheet of a module type states, at standard test conditions (1000 W/m², 25 °C, AM 1.5). The facts are
 * due; a finding that is left out leaves open what needs it.
 */
export interface ModuleDatasheet {
  readonly maximumPower: Input<"activePower">;
  readonly openCircuitVoltage: Input<"voltage">;
  readonly shortCircuitCurrent: Input<"current">;
  readonly mppVoltage: Input<"voltage">;
  readonly mppCurrent: Input<"current">;
  /** Below zero: a coefficient above zero is refused as a slip. */
  readonly openCircuitVoltageCoefficient: VoltageCoefficient;
  readonly shortCircuitCurrentCoefficient?: Finding<CurrentCoefficient>;
  readonly mppCurrentCoefficient?: Finding<CurrentCoefficient>;
  readonly maximumPowerCoefficient?: Finding<PowerCoefficient>;
  readonly mppVoltageCoefficient?: Finding<VoltageCoefficient>;
  readonly maximumSystemVoltage?: Finding<Input<"voltage">>;
  readonly maximumSeriesFuse?: Finding<Input<"current">>;
  readonly nominalOperatingCellTemperature?: Finding<Input<"temperature">>;
  /** Where a datasheet gives its coefficients for one cell, multiply them first with `moduleVoltageCoefficient`. */
  readonly cellsInSeries?: Finding<Input<"ratio">>;
  /** Lower end of the power tolerance, such as "-3 %"; zero where power is sorted upwards. */
  readonly powerToleranceLow?: Finding<Input<"ratio">>;
  readonly powerToleranceHigh?: Finding<Input<"ratio">>;
  /** Share of the front's short-circuit current that the rear gives under the same light. */
  readonly bifacialityOfCurrent?: Finding<Input<"ratio">>;
  /** Share of the front's maximum power that the rear gives under the same light. */
  readonly bifacialityOfPower?: Finding<Input<"ratio">>;
  /** Where the values are from: the datasheet and its revision. */
  readonly statedIn?: string | undefined;
}
