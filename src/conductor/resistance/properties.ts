import { given, InputError, type Input, type Quantity } from "../../quantity/index.js";
import type { Cable } from "../cable.js";
import type { Arrangement } from "../stretch.js";
import type { WiringRules } from "../wiring.js";
import { iec60228_2004_class1 } from "./iec/class-1.js";
import { iec60228_2004_class2 } from "./iec/class-2.js";
import { iec60228_2004_class5 } from "./iec/class-5.js";
import { temperatureCoefficientsAt20 } from "./metals.js";
import { parallelled } from "./parallel.js";
import { usualReactance } from "./reactance.js";
import { resistanceAtTemperature } from "./temperature.js";

/** What a voltage change needs to know of a cable. */
export interface ConductorProperties {
  /** Of one line, all its parallel conductors together, at the temperature. */
  readonly resistancePerLength: Quantity<"resistancePerLength">;
  /** `null` for direct current. */
  readonly reactancePerLength: Quantity<"resistancePerLength"> | null;
  readonly resistancePerLengthAt20: Quantity<"resistancePerLength">;
}

export interface PropertiesRequest {
  readonly cable: Cable;
  readonly size: Quantity<"area">;
  readonly temperature: Input<"temperature">;
  readonly wiring: WiringRules;
  readonly direct: boolean;
  readonly loaded: 2 | 3;
  readonly arrangement?: Arrangement;
  readonly frequency?: "50 Hz" | "60 Hz";
}

/**
 * Resistance and reactance per length of one line of a cable at a temperature.
 *
 * @throws InputError where the resistance of the size is not tabulated
 */
export function conductorProperties(request: PropertiesRequest): ConductorProperties {
  const { cable, size, temperature, direct } = request;
  const at20 = resistanceAt20Of(cable, size);
  const conductor = cable.kind === "PV" ? "copper" : (cable.conductor ?? "copper");
  const temperatureCoefficientAt20 = temperatureCoefficientsAt20({ conductor });
  const hot = resistanceAtTemperature({ resistancePerLengthAt20: at20, temperatureCoefficientAt20, conductorTemperature: temperature });
  const parallelConductors = given(cable.parallel ?? 1, "1");
  return Object.freeze({
    resistancePerLength: parallelled(hot, parallelConductors),
    reactancePerLength: direct ? null : parallelled(usualReactance(), parallelConductors),
    resistancePerLengthAt20: parallelled(at20, parallelConductors),
  });
}

/** Highest resistance per length of one conductor at 20 °C, by metal, coating and class. */
export function resistanceAt20Of(cable: Cable, section: Quantity<"area">): Quantity<"resistancePerLength"> {
  if (cable.kind === "PV") return iec60228_2004_class5({ section, metal: "coated copper" });
  const { conductor, conductorClass = "class 2" } = cable;
  const metal = conductor === "aluminium" ? "aluminium" : "plain copper";
  if (conductorClass === "class 1") return iec60228_2004_class1({ section, metal });
  if (conductorClass === "class 2") return iec60228_2004_class2({ section, metal });
  if (metal === "aluminium") {
    throw new InputError("conductor/resistance", [
      { path: "cable.conductorClass", code: "not-tabulated", message: "IEC 60228 knows no flexible aluminium conductor", expected: "class 1, class 2", received: "class 5" },
    ]);
  }
  return iec60228_2004_class5({ section, metal });
}
