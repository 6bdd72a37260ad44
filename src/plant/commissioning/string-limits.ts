import { arrayInsulation, type ArrayInsulation } from "../../commissioning/index.js";
import { isMissing, type Known, missing, type Missing } from "../../formula/index.js";
import type { Module } from "../../module/index.js";
import type { Quantity } from "../../quantity/index.js";
import { stringVoltage } from "../../string/index.js";
import type { Plant } from "../description/plant-description.js";
import { powerOfStrings } from "../sizing/array-formulas.js";

/** How the insulation of one string is tested. */
export function insulationOfString(
  plant: Plant,
  at: string,
  module: Module,
  moduleType: string,
  modules: number,
): ArrayInsulation {
  return arrayInsulation({
    at,
    stringVoltage: stringVoltage({ modules, moduleVoltage: module.openCircuitVoltage }),
    arrayPower: powerOfStrings({ modules, strings: 1, maximumPower: module.maximumPower }),
    lowestRating: lowest([
      module.maximumSystemVoltage,
      plant.moduleTypes[moduleType]!.connectorVoltage ?? missing(`${module.path}.connectorVoltage`),
    ]),
  });
}

/** The lowest of some ratings; missing where any of them is. */
function lowest(ratings: readonly Known<Quantity<"voltage">>[]): Known<Quantity<"voltage">> {
  const lacking = ratings.filter((rating): rating is Missing => isMissing(rating));
  if (lacking.length > 0) return missing(...lacking.flatMap((rating) => rating.missing));
  return (ratings as readonly Quantity<"voltage">[]).reduce((low, rating) =>
    rating.number < low.number ? rating : low,
  );
}
