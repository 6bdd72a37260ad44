import { isMissing, type Known } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import { mppVoltageCoefficientFromPower } from "../coefficient/mpp-voltage-coefficient-from-power.js";
import { mppVoltageCoefficientFromShortCircuit } from "../coefficient/mpp-voltage-coefficient-from-short-circuit.js";
import { relativeCurrentCoefficient } from "../coefficient/relative-current-coefficient.js";
import { relativePowerCoefficient } from "../coefficient/relative-power-coefficient.js";
import { relativeVoltageCoefficient } from "../coefficient/relative-voltage-coefficient.js";
import { DatasheetReader } from "./datasheet-reader.js";
import type { ModuleDatasheet } from "./module-datasheet.js";

type Relative = Quantity<"relativeTemperatureCoefficient">;

/** How the coefficient of the voltage at the maximum power point is known. */
export type MppVoltageCoefficientBasis =
  "stated" | "from power and current" | "from power and short-circuit current" | "unknown";

/** A module type with every value as a quantity and every coefficient relative, in 1/K. */
export interface Module {
  /** Where the module type stands in the description of the plant, such as `moduleTypes.M440`. */
  readonly path: string;
  readonly maximumPower: Quantity<"activePower">;
  readonly openCircuitVoltage: Quantity<"voltage">;
  readonly shortCircuitCurrent: Quantity<"current">;
  readonly mppVoltage: Quantity<"voltage">;
  readonly mppCurrent: Quantity<"current">;
  readonly openCircuitVoltageCoefficient: Relative;
  readonly shortCircuitCurrentCoefficient: Known<Relative>;
  readonly mppCurrentCoefficient: Known<Relative>;
  readonly maximumPowerCoefficient: Known<Relative>;
  /** As stated, or estimated from the coefficients of power and current; that of U_OC never stands in. */
  readonly mppVoltageCoefficient: Known<Relative>;
  readonly mppVoltageCoefficientBasis: MppVoltageCoefficientBasis;
  readonly maximumSystemVoltage: Known<Quantity<"voltage">>;
  readonly maximumSeriesFuse: Known<Quantity<"current">>;
  readonly nominalOperatingCellTemperature: Known<Quantity<"temperature">>;
  readonly cellsInSeries: Known<Quantity<"ratio">>;
  readonly powerToleranceLow: Known<Quantity<"ratio">>;
  readonly powerToleranceHigh: Known<Quantity<"ratio">>;
  readonly bifacialityOfCurrent: Known<Quantity<"ratio">>;
  readonly bifacialityOfPower: Known<Quantity<"ratio">>;
}

const VOLTAGE = { unit: "V", above: 0, usual: [0.3, 200] } as const;
const CURRENT = { unit: "A", above: 0, usual: [0.05, 40] } as const;
const FALLING = { unit: "1/K", above: -0.02, below: 0, usual: [-0.01, -0.0005] } as const;
const OF_CURRENT = { unit: "1/K", above: -0.01, below: 0.01, usual: [-0.003, 0.003] } as const;

/**
 * Reads the datasheet of a module type: every value becomes a quantity and every coefficient relative.
 *
 * @param path - where it stands in the description of the plant; findings that are absent are missing at this path
 * @throws InputError with every problem at once, such as a U_OC coefficient above zero
 * @example
 * ```ts
 * import { readModule } from "pv-to-grid/module";
 * const type = readModule({
 *   maximumPower: "440 W", openCircuitVoltage: "39.2 V", shortCircuitCurrent: "14.1 A", mppVoltage: "32.8 V", mppCurrent: "13.42 A",
 *   openCircuitVoltageCoefficient: "-98 mV/K", statedIn: "datasheet rev. 2",
 * }, "moduleTypes.M440");
 * type.openCircuitVoltageCoefficient.text; // "-0.0025"
 * type.maximumSeriesFuse; // { missing: ["moduleTypes.M440.maximumSeriesFuse"] }
 * ```
 */
export function readModule(datasheet: ModuleDatasheet, path = "module"): Module {
  const reader = new DatasheetReader(datasheet, path);
  const openCircuitVoltage = reader.fact("openCircuitVoltage", VOLTAGE);
  const shortCircuitCurrent = reader.fact("shortCircuitCurrent", CURRENT);
  const mppVoltage = reader.fact("mppVoltage", VOLTAGE);
  const mppCurrent = reader.fact("mppCurrent", CURRENT);
  const ofVoltage = (voltage: typeof mppVoltage) => (absolute: Quantity) =>
    voltage &&
    relativeVoltageCoefficient({
      absoluteVoltageCoefficient: absolute as Quantity<"voltageTemperatureCoefficient">,
      stcVoltage: voltage,
    });
  const ofCurrent = (current: typeof mppCurrent) => (absolute: Quantity) =>
    current &&
    relativeCurrentCoefficient({
      absoluteCurrentCoefficient: absolute as Quantity<"currentTemperatureCoefficient">,
      stcCurrent: current,
    });
  const maximumPower = reader.fact("maximumPower", { unit: "W", above: 0, usual: [1, 1000] });
  const ofPower = (absolute: Quantity): Relative | undefined =>
    maximumPower &&
    relativePowerCoefficient({
      absolutePowerCoefficient: absolute as Quantity<"powerTemperatureCoefficient">,
      maximumPower,
    });
  const coefficients = {
    openCircuitVoltageCoefficient: reader.coefficient(
      "openCircuitVoltageCoefficient",
      { ...FALLING, above: -0.01 },
      "V/K",
      ofVoltage(openCircuitVoltage),
    ),
    shortCircuitCurrentCoefficient: reader.coefficient(
      "shortCircuitCurrentCoefficient",
      OF_CURRENT,
      "A/K",
      ofCurrent(shortCircuitCurrent),
    ),
    mppCurrentCoefficient: reader.coefficient("mppCurrentCoefficient", OF_CURRENT, "A/K", ofCurrent(mppCurrent)),
    maximumPowerCoefficient: reader.coefficient("maximumPowerCoefficient", FALLING, "W/K", ofPower),
    mppVoltageCoefficient: reader.coefficient("mppVoltageCoefficient", FALLING, "V/K", ofVoltage(mppVoltage)),
  };
  const module = {
    path,
    maximumPower,
    openCircuitVoltage,
    shortCircuitCurrent,
    mppVoltage,
    mppCurrent,
    ...coefficients,
    maximumSystemVoltage: reader.finding("maximumSystemVoltage", { unit: "V", above: 0, usual: [50, 2000] }),
    maximumSeriesFuse: reader.finding("maximumSeriesFuse", { unit: "A", above: 0, usual: [1, 60] }),
    nominalOperatingCellTemperature: reader.finding("nominalOperatingCellTemperature", {
      unit: "°C",
      above: 20,
      to: 90,
      usual: [30, 60],
    }),
    cellsInSeries: reader.finding("cellsInSeries", { unit: "1", from: 1, to: 1000 }),
    powerToleranceLow: reader.finding("powerToleranceLow", { unit: "1", from: -0.2, to: 0.2 }),
    powerToleranceHigh: reader.finding("powerToleranceHigh", { unit: "1", from: -0.2, to: 0.2 }),
    bifacialityOfCurrent: reader.finding("bifacialityOfCurrent", { unit: "1", from: 0, to: 1 }),
    bifacialityOfPower: reader.finding("bifacialityOfPower", { unit: "1", from: 0, to: 1 }),
  };
  reader.finish();
  return Object.freeze({ ...module, ...mppVoltageCoefficientOf(coefficients) }) as Module;
}

type Coefficients = Pick<
  Module,
  "shortCircuitCurrentCoefficient" | "mppCurrentCoefficient" | "maximumPowerCoefficient" | "mppVoltageCoefficient"
>;

function mppVoltageCoefficientOf(
  stated: Coefficients,
): Pick<Module, "mppVoltageCoefficient" | "mppVoltageCoefficientBasis"> {
  const { mppVoltageCoefficient, maximumPowerCoefficient, mppCurrentCoefficient, shortCircuitCurrentCoefficient } =
    stated;
  if (!isMissing(mppVoltageCoefficient)) return { mppVoltageCoefficient, mppVoltageCoefficientBasis: "stated" };
  if (!isMissing(maximumPowerCoefficient) && !isMissing(mppCurrentCoefficient)) {
    const estimate = mppVoltageCoefficientFromPower({ maximumPowerCoefficient, mppCurrentCoefficient });
    return { mppVoltageCoefficient: estimate, mppVoltageCoefficientBasis: "from power and current" };
  }
  if (!isMissing(maximumPowerCoefficient) && !isMissing(shortCircuitCurrentCoefficient)) {
    const estimate = mppVoltageCoefficientFromShortCircuit({ maximumPowerCoefficient, shortCircuitCurrentCoefficient });
    return { mppVoltageCoefficient: estimate, mppVoltageCoefficientBasis: "from power and short-circuit current" };
  }
  return { mppVoltageCoefficient, mppVoltageCoefficientBasis: "unknown" };
}
