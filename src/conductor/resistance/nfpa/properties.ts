import { given, type Quantity } from "../../../quantity/index.js";
import { sizeName } from "../../size/size.js";
import type { ConductorProperties, SizedRequest } from "../conductor-properties.js";
import { parallelled } from "../parallel.js";
import { alternatingResistance, proximityEffectOfThree, skinEffectArgument, skinEffectFactor } from "../skin-effect.js";
import { diameterOverSpacing } from "../spacing-ratio.js";
import { nfpa70_2017_table_8 } from "./table-8.js";
import { nfpa70_2017_table_9_reactance } from "./table-9-reactance.js";
import { nfpa70_2017_table_9_resistance } from "./table-9-resistance.js";
import { resistanceFrom75, temperatureCoefficientsAt75 } from "./temperature.js";

/** Resistance and reactance of a conductor of NFPA 70, chapter 9. */
export function propertiesNfpa(request: SizedRequest): ConductorProperties {
  const { cable, temperature, direct } = request;
  const conductor = cable.kind === "PV" ? "copper" : (cable.conductor ?? "copper");
  const temperatureCoefficientAt75 = temperatureCoefficientsAt75({ conductor });
  const at75 = direct ? directAt75(request) : alternatingAt75(request, conductor);
  const resistance = resistanceFrom75({
    resistancePerLengthAt75: at75,
    temperatureCoefficientAt75,
    conductorTemperature: temperature,
  });
  const conductorsInParallel = given(cable.parallel ?? 1, "1");
  return Object.freeze({
    resistancePerLength: parallelled(resistance, conductorsInParallel),
    reactancePerLength: direct ? null : parallelled(reactanceOf(request), conductorsInParallel),
  });
}

function directAt75({ cable, size }: SizedRequest): Quantity<"resistancePerLength"> {
  const metal = cable.kind === "PV" ? "coated copper" : cable.conductor === "aluminium" ? "aluminium" : "plain copper";
  const make = cable.conductorClass === "class 1" ? "solid" : "stranded";
  return nfpa70_2017_table_8({ conductorSize: sizeName(size), make, metal });
}

// Table 9 leaves out some sizes; their resistance comes from table 8 and the skin effect.
function alternatingAt75(request: SizedRequest, conductor: "copper" | "aluminium"): Quantity<"resistancePerLength"> {
  const size = sizeName(request.size);
  const { raceway = "steel" } = request;
  if (nfpa70_2017_table_9_resistance.rows().includes(size)) {
    return nfpa70_2017_table_9_resistance({ conductorSize: size, conductor, raceway });
  }
  const resistancePerLength = directAt75(request);
  const argumentSquared = skinEffectArgument({ resistancePerLength, frequency: "60 Hz", skinConstant: 1 });
  return alternatingResistance({
    resistancePerLength,
    skinEffect: skinEffectFactor({ argumentSquared }),
    proximityEffect: proximityEffectOfThree({ argumentSquared, diameterOverSpacing: diameterOverSpacing(undefined) }),
  });
}

// A smaller size has the higher reactance, so the next smaller one of the table is on the safe side.
function reactanceOf({ size, raceway = "steel" }: SizedRequest): Quantity<"resistancePerLength"> {
  const names = nfpa70_2017_table_8.rows();
  const upTo = names.slice(0, names.indexOf(sizeName(size)) + 1);
  const row = upTo.findLast((name) => nfpa70_2017_table_9_reactance.rows().includes(name));
  return nfpa70_2017_table_9_reactance({ conductorSize: row ?? sizeName(size), raceway });
}
