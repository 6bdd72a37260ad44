import { sandiaCellTemperature } from "../../module/index.js";
import type { Module } from "../../module/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { cellTemperatureFromVoltage, cellTemperatureFromVoltageInLight } from "./cell-temperature.js";

/** A thermometer on the back of a module. */
export interface BackOfModule {
  readonly by: "back of module";
  readonly moduleTemperature: Input<"temperature">;
  readonly irradiance: Input<"irradiance">;
  /** Of the cells over the back at 1000 W/m²; `sandiaCellRise` tabulates it. */
  readonly cellRise: Input<"temperatureDifference">;
}

/** The open-circuit voltage of a sound string. */
export interface SoundString {
  readonly by: "open-circuit voltage";
  readonly module: Pick<Module, "openCircuitVoltage" | "openCircuitVoltageCoefficient">;
  readonly modules: number;
  readonly openCircuitVoltage: Input<"voltage">;
  /** With the factor, the loss of voltage in weak light is taken into account. */
  readonly light?: { readonly irradiance: Input<"irradiance">; readonly irradianceFactor: Input<"ratio"> };
}

/**
 * Cell temperature by a thermometer on the back of a module, or by the open-circuit voltage of a string that is known to be sound.
 *
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { cellTemperatureFrom } from "pv-to-grid/commissioning";
 * cellTemperatureFrom({ by: "back of module", moduleTemperature: "43 °C", irradiance: "800 W/m2", cellRise: "3 K" }).text; // "45.4"
 * ```
 */
export function cellTemperatureFrom(measurement: BackOfModule | SoundString): Quantity<"temperature"> {
  if (measurement.by === "back of module") {
    const { moduleTemperature, irradiance, cellRise } = measurement;
    return sandiaCellTemperature({ moduleTemperature, irradiance, cellRise });
  }
  const { module, modules, openCircuitVoltage, light } = measurement;
  const string = {
    measuredVoltage: openCircuitVoltage,
    modules,
    openCircuitVoltage: module.openCircuitVoltage,
    openCircuitVoltageCoefficient: module.openCircuitVoltageCoefficient,
  };
  return light ? cellTemperatureFromVoltageInLight({ ...string, ...light }) : cellTemperatureFromVoltage(string);
}
