import { isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import type { Module } from "../../module/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { operatingCoefficientOf } from "../reading/expected-readings.js";
import { maximumPowerAtStandard, mppCurrentAtStandard, shortCircuitCurrentAtStandard } from "./current-at-standard.js";
import {
  mppVoltageAtStandard,
  openCircuitVoltageAtStandard,
  openCircuitVoltageInLightAtStandard,
} from "./voltage-at-standard.js";

/** What was measured on a string, and under which conditions; what was not measured is left out. */
export interface MeasuredString {
  readonly module: Module;
  readonly cellTemperature: Known<Input<"temperature">>;
  readonly irradiance: Known<Input<"irradiance">>;
  readonly irradianceFactor?: Input<"ratio">;
  readonly openCircuitVoltage?: Input<"voltage">;
  readonly shortCircuitCurrent?: Input<"current">;
  readonly operatingVoltage?: Input<"voltage">;
  readonly operatingCurrent?: Input<"current">;
  readonly power?: Input<"activePower">;
}

/** The same values of the whole string at standard test conditions. */
export interface StringAtStandard {
  readonly openCircuitVoltage: Known<Quantity<"voltage">>;
  readonly shortCircuitCurrent: Known<Quantity<"current">>;
  readonly operatingVoltage: Known<Quantity<"voltage">>;
  readonly operatingCurrent: Known<Quantity<"current">>;
  readonly power: Known<Quantity<"activePower">>;
}

/**
 * Measured values of a string, brought to standard test conditions by the coefficients of its module type.
 *
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { atStandard } from "pv-to-grid/commissioning";
 * import { readModule } from "pv-to-grid/module";
 * const module = readModule({
 *   maximumPower: "440 W", openCircuitVoltage: "39.2 V", shortCircuitCurrent: "14.1 A", mppVoltage: "32.8 V", mppCurrent: "13.42 A",
 *   openCircuitVoltageCoefficient: "-0.26 %/K", shortCircuitCurrentCoefficient: "0.05 %/K",
 * });
 * atStandard({ module, cellTemperature: "45 °C", irradiance: "800 W/m2", shortCircuitCurrent: "11.3928 A" }).shortCircuitCurrent; // 14.1 A
 * ```
 */
export function atStandard(measured: MeasuredString): StringAtStandard {
  const { module, irradianceFactor } = measured;
  const {
    openCircuitVoltageCoefficient,
    mppVoltageCoefficient,
    shortCircuitCurrentCoefficient,
    maximumPowerCoefficient,
  } = module;
  const cellTemperature = isMissing(measured.cellTemperature)
    ? measured.cellTemperature
    : given(measured.cellTemperature, "°C");
  const irradiance = isMissing(measured.irradiance) ? measured.irradiance : given(measured.irradiance, "W/m²");
  const read = <T>(value: T | undefined, name: string): Known<T> => value ?? missing(name);
  return Object.freeze({
    openCircuitVoltage: whenKnown(
      { measuredVoltage: read(measured.openCircuitVoltage, "openCircuitVoltage"), cellTemperature },
      (known) =>
        irradianceFactor === undefined
          ? openCircuitVoltageAtStandard({ openCircuitVoltageCoefficient, ...known })
          : whenKnown({ irradiance }, (light) =>
              openCircuitVoltageInLightAtStandard({
                openCircuitVoltageCoefficient,
                irradianceFactor,
                ...known,
                ...light,
              }),
            ),
    ),
    shortCircuitCurrent: whenKnown(
      {
        measuredCurrent: read(measured.shortCircuitCurrent, "shortCircuitCurrent"),
        shortCircuitCurrentCoefficient,
        cellTemperature,
        irradiance,
      },
      shortCircuitCurrentAtStandard,
    ),
    operatingVoltage: whenKnown(
      { measuredVoltage: read(measured.operatingVoltage, "operatingVoltage"), mppVoltageCoefficient, cellTemperature },
      mppVoltageAtStandard,
    ),
    operatingCurrent: whenKnown(
      {
        measuredCurrent: read(measured.operatingCurrent, "operatingCurrent"),
        mppCurrentCoefficient: operatingCoefficientOf(module).coefficient,
        cellTemperature,
        irradiance,
      },
      mppCurrentAtStandard,
    ),
    power: whenKnown(
      { measuredPower: read(measured.power, "power"), maximumPowerCoefficient, cellTemperature, irradiance },
      maximumPowerAtStandard,
    ),
  });
}
