import { given, InputError, type Quantity } from "../../../quantity/index.js";
import type { Cable } from "../../cable.js";
import type { ConductorProperties, SizedRequest } from "../conductor-properties.js";
import { temperatureCoefficientsAt20 } from "../metals.js";
import { parallelled } from "../parallel.js";
import { reactanceAtFrequency } from "../reactance-laws.js";
import {
  alternatingResistance,
  proximityEffectOfThree,
  proximityEffectOfTwo,
  skinEffectArgument,
  skinEffectFactor,
} from "../skin-effect.js";
import { diameterOverSpacing } from "../spacing-ratio.js";
import { resistanceAtTemperature } from "../temperature.js";
import { usualReactances } from "../usual-reactances.js";
import { iec60228_2004_class1 } from "./class-1.js";
import { iec60228_2004_class2 } from "./class-2.js";
import { iec60228_2004_class5 } from "./class-5.js";

/** From this cross-section on, in mm², alternating current meets a resistance that is higher by one per cent and more. */
const SKIN_EFFECT_FROM = 185;

/** Resistance and reactance of a cable of IEC 60228. */
export function propertiesIec(request: SizedRequest): ConductorProperties {
  const { cable, size, temperature, direct, frequency = "50 Hz" } = request;
  const conductor = cable.kind === "PV" ? "copper" : (cable.conductor ?? "copper");
  const hot = resistanceAtTemperature({
    resistancePerLengthAt20: resistanceAt20Of(cable, size),
    temperatureCoefficientAt20: temperatureCoefficientsAt20({ conductor }),
    conductorTemperature: temperature,
  });
  const conductorsInParallel = given(cable.parallel ?? 1, "1");
  if (direct) return { resistancePerLength: parallelled(hot, conductorsInParallel), reactancePerLength: null };
  const resistance = size.number < SKIN_EFFECT_FROM ? hot : withSkinEffect(hot, request);
  const usual = usualReactances({ formation: formationOf(request) });
  const reactance = frequency === "50 Hz" ? usual : reactanceAtFrequency({ reactancePerLength: usual, frequency });
  return Object.freeze({
    resistancePerLength: parallelled(resistance, conductorsInParallel),
    reactancePerLength: parallelled(reactance, conductorsInParallel),
  });
}

/** Highest resistance per length of one conductor at 20 °C, by metal, coating and class. */
function resistanceAt20Of(cable: Cable, section: Quantity<"area">): Quantity<"resistancePerLength"> {
  if (cable.kind === "PV") return iec60228_2004_class5({ section, metal: "coated copper" });
  const { conductor, conductorClass = "class 2" } = cable;
  const metal = conductor === "aluminium" ? "aluminium" : "plain copper";
  if (conductorClass === "class 1") return iec60228_2004_class1({ section, metal });
  if (conductorClass === "class 2") return iec60228_2004_class2({ section, metal });
  if (metal === "aluminium") {
    const message = "IEC 60228 knows no flexible aluminium conductor";
    throw new InputError("conductor/resistance", [
      {
        path: "cable.conductorClass",
        code: "not-tabulated",
        message,
        expected: "class 1, class 2",
        received: "class 5",
      },
    ]);
  }
  return iec60228_2004_class5({ section, metal });
}

function formationOf({ cable, arrangement }: SizedRequest): string {
  if (cable.kind === "multi-core") return "multi-core";
  if (arrangement === "spaced") return "spaced";
  return arrangement === "flat" || arrangement === "vertical" ? "flat touching" : "trefoil";
}

function withSkinEffect(hot: Quantity<"resistancePerLength">, request: SizedRequest): Quantity<"resistancePerLength"> {
  const { loaded, arrangement, frequency = "50 Hz" } = request;
  const argumentSquared = skinEffectArgument({ resistancePerLength: hot, frequency, skinConstant: 1 });
  const proximity = Number(loaded) === 3 ? proximityEffectOfThree : proximityEffectOfTwo;
  return alternatingResistance({
    resistancePerLength: hot,
    skinEffect: skinEffectFactor({ argumentSquared }),
    proximityEffect: proximity({ argumentSquared, diameterOverSpacing: diameterOverSpacing(arrangement) }),
  });
}
