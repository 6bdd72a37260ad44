import { isMissing, type Known, whenKnown } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { maximumPowerAt } from "../translation/maximum-power-at.js";
import { mppCurrentAt } from "../translation/mpp-current-at.js";
import { mppVoltageAt } from "../translation/mpp-voltage-at.js";
import { openCircuitVoltageAt } from "../translation/open-circuit-voltage-at.js";
import { shortCircuitCurrentAt } from "../translation/short-circuit-current-at.js";
import type { Module } from "./read-module.js";

/** What a module gives at one cell temperature and standard irradiance; missing where a coefficient or the temperature is. */
export interface ModuleAt {
  readonly cellTemperature: Known<Quantity<"temperature">>;
  readonly openCircuitVoltage: Known<Quantity<"voltage">>;
  readonly shortCircuitCurrent: Known<Quantity<"current">>;
  readonly mppVoltage: Known<Quantity<"voltage">>;
  readonly mppCurrent: Known<Quantity<"current">>;
  readonly maximumPower: Known<Quantity<"activePower">>;
}

/**
 * What a module gives at a cell temperature, by its linear coefficients.
 *
 * @example
 * ```ts
 * import { moduleAt, readModule } from "pv-to-grid/module";
 * const type = readModule({
 *   maximumPower: "440 W", openCircuitVoltage: "39.2 V", shortCircuitCurrent: "14.1 A", mppVoltage: "32.8 V", mppCurrent: "13.42 A",
 *   openCircuitVoltageCoefficient: "-0.26 %/K",
 * });
 * moduleAt(type, "-14 °C").openCircuitVoltage; // 43.17488 V
 * ```
 */
export function moduleAt(module: Module, temperature: Known<Input<"temperature">>): ModuleAt {
  const cellTemperature = isMissing(temperature) ? temperature : given(temperature, "°C");
  const {
    openCircuitVoltage,
    openCircuitVoltageCoefficient,
    shortCircuitCurrent,
    shortCircuitCurrentCoefficient,
    mppVoltage,
    mppVoltageCoefficient,
    mppCurrent,
    mppCurrentCoefficient,
    maximumPower,
    maximumPowerCoefficient,
  } = module;
  return Object.freeze({
    cellTemperature,
    openCircuitVoltage: whenKnown({ cellTemperature }, (known) =>
      openCircuitVoltageAt({ openCircuitVoltage, openCircuitVoltageCoefficient, ...known }),
    ),
    shortCircuitCurrent: whenKnown({ shortCircuitCurrentCoefficient, cellTemperature }, (known) =>
      shortCircuitCurrentAt({ shortCircuitCurrent, ...known }),
    ),
    mppVoltage: whenKnown({ mppVoltageCoefficient, cellTemperature }, (known) =>
      mppVoltageAt({ mppVoltage, ...known }),
    ),
    mppCurrent: whenKnown({ mppCurrentCoefficient, cellTemperature }, (known) =>
      mppCurrentAt({ mppCurrent, ...known }),
    ),
    maximumPower: whenKnown({ maximumPowerCoefficient, cellTemperature }, (known) =>
      maximumPowerAt({ maximumPower, ...known }),
    ),
  });
}
