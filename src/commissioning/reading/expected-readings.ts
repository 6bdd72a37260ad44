import { isMissing, type Known, whenKnown } from "../../formula/index.js";
import { type Module, mppCurrentUnder, shortCircuitCurrentUnder } from "../../module/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { type Band, bandOfCurrent, bandOfPower, bandOfVoltage } from "./bands.js";
import { expectedMaximumPower } from "./expected-power.js";
import {
  expectedMppVoltage,
  expectedOpenCircuitVoltage,
  expectedOpenCircuitVoltageInLight,
} from "./expected-voltage.js";
import { operatingTolerance, voltageTolerance } from "./tolerances.js";

/** A string and the conditions under which it is measured. */
export interface StringUnderTest {
  readonly module: Module;
  /** Modules in series. */
  readonly modules: number;
  readonly cellTemperature: Known<Input<"temperature">>;
  /** In the plane of the modules. */
  readonly irradiance: Known<Input<"irradiance">>;
  /** Of the open-circuit voltage; left out, the voltage is expected by temperature alone, as in full light. */
  readonly irradianceFactor?: Input<"ratio">;
  /** The contract's own tolerance; left out, the one of contract practice. */
  readonly tolerance?: Input<"ratio">;
}

/** What an instrument should read on a string, each with its band. */
export interface ExpectedReadings {
  readonly openCircuitVoltage: Band<"voltage">;
  readonly shortCircuitCurrent: Band<"current">;
  readonly operatingVoltage: Band<"voltage">;
  readonly operatingCurrent: Band<"current">;
  readonly power: Band<"activePower">;
  /** What a reader must know before leaning on them. */
  readonly notes: readonly string[];
}

const NOTES = {
  dark: "The open-circuit voltage is expected by temperature alone; in weaker light it reads lower.",
  standIn: "The coefficient of I_SC stands in for that of I_MPP, which the datasheet does not state.",
  tracking:
    "Operating values hold while the inverter tracks the maximum power point, not while it starts, clips or throttles.",
} as const;

/**
 * What an instrument should read on a string at a cell temperature and an irradiance, with the band of the contract.
 *
 * @param string - the string, its module type and the measured conditions
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { expectedReadings } from "pv-to-grid/commissioning";
 * import { readModule } from "pv-to-grid/module";
 * const module = readModule({
 *   maximumPower: "440 W", openCircuitVoltage: "39.2 V", shortCircuitCurrent: "14.1 A", mppVoltage: "32.8 V", mppCurrent: "13.42 A",
 *   openCircuitVoltageCoefficient: "-0.26 %/K", shortCircuitCurrentCoefficient: "0.05 %/K",
 * });
 * const readings = expectedReadings({ module, modules: 14, cellTemperature: "45 °C", irradiance: "800 W/m2" });
 * readings.openCircuitVoltage.expected; // 520.2624 V
 * readings.operatingVoltage.expected; // { missing: ["module.mppVoltageCoefficient"] }
 * ```
 */
export function expectedReadings(string: StringUnderTest): ExpectedReadings {
  const { module, modules, irradianceFactor } = string;
  const { mppVoltageCoefficient, maximumPowerCoefficient } = module;
  const cellTemperature = isMissing(string.cellTemperature)
    ? string.cellTemperature
    : given(string.cellTemperature, "°C");
  const irradiance = isMissing(string.irradiance) ? string.irradiance : given(string.irradiance, "W/m²");
  const forVoltage = string.tolerance === undefined ? voltageTolerance({}) : given(string.tolerance, "1");
  const forOperation = string.tolerance === undefined ? operatingTolerance({}) : given(string.tolerance, "1");
  const current = operatingCoefficientOf(module);

  const openCircuitVoltage = expectedVoltage(string, cellTemperature, irradiance);
  const shortCircuitCurrent = whenKnown(
    { shortCircuitCurrentCoefficient: module.shortCircuitCurrentCoefficient, cellTemperature, irradiance },
    (known) => shortCircuitCurrentUnder({ shortCircuitCurrent: module.shortCircuitCurrent, ...known }),
  );
  const operatingVoltage = whenKnown({ mppVoltageCoefficient, cellTemperature }, (known) =>
    expectedMppVoltage({ modules, mppVoltage: module.mppVoltage, ...known }),
  );
  const operatingCurrent = whenKnown(
    { mppCurrentCoefficient: current.coefficient, cellTemperature, irradiance },
    (known) => mppCurrentUnder({ mppCurrent: module.mppCurrent, ...known }),
  );
  const power = whenKnown({ maximumPowerCoefficient, cellTemperature, irradiance }, (known) =>
    expectedMaximumPower({ modules, maximumPower: module.maximumPower, ...known }),
  );
  return Object.freeze({
    openCircuitVoltage: bandOfVoltage(openCircuitVoltage, forVoltage),
    shortCircuitCurrent: bandOfCurrent(shortCircuitCurrent, forOperation),
    operatingVoltage: bandOfVoltage(operatingVoltage, forOperation),
    operatingCurrent: bandOfCurrent(operatingCurrent, forOperation),
    power: bandOfPower(power, forOperation),
    notes: Object.freeze([
      ...(irradianceFactor === undefined ? [NOTES.dark] : []),
      ...(current.standsIn ? [NOTES.standIn] : []),
      NOTES.tracking,
    ]),
  });
}

function expectedVoltage(
  { module, modules, irradianceFactor }: StringUnderTest,
  cellTemperature: Known<Quantity<"temperature">>,
  irradiance: Known<Quantity<"irradiance">>,
): Known<Quantity<"voltage">> {
  const { openCircuitVoltage, openCircuitVoltageCoefficient } = module;
  const string = { modules, openCircuitVoltage, openCircuitVoltageCoefficient };
  return irradianceFactor === undefined
    ? whenKnown({ cellTemperature }, (known) => expectedOpenCircuitVoltage({ ...string, ...known }))
    : whenKnown({ cellTemperature, irradiance }, (known) =>
        expectedOpenCircuitVoltageInLight({ ...string, irradianceFactor, ...known }),
      );
}

/** The coefficient of I_MPP, or that of I_SC in its place. */
export function operatingCoefficientOf(module: Module): {
  readonly coefficient: Module["mppCurrentCoefficient"];
  readonly standsIn: boolean;
} {
  const { mppCurrentCoefficient, shortCircuitCurrentCoefficient } = module;
  const standsIn = isMissing(mppCurrentCoefficient) && !isMissing(shortCircuitCurrentCoefficient);
  return { coefficient: standsIn ? shortCircuitCurrentCoefficient : mppCurrentCoefficient, standsIn };
}
