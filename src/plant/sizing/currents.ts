import { isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import { bifacialCurrentCorrection } from "./bifacial-correction.js";
import { maximumStringCurrent } from "../../string/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { Plant } from "../description/plant-description.js";
import type { ArrayDesign } from "./arrays.js";

/**
 * Correction of the current factor for light on the rear: nothing for a module stated as not bifacial, missing where the
 * description does not say.
 */
export function currentCorrectionOf(plant: Plant, { roof, module }: ArrayDesign): Known<Quantity<"ratio">> | undefined {
  const { bifacial, rearIrradiance } = plant.moduleTypes[roof.moduleType]!;
  if (bifacial === false) return undefined;
  if (bifacial === undefined) return missing(`${module.path}.bifacial`);
  return whenKnown(
    {
      bifacialityOfCurrent: module.bifacialityOfCurrent,
      rearIrradiance: rearIrradiance ?? missing(`${module.path}.rearIrradiance`),
    },
    (known) => bifacialCurrentCorrection(known),
  );
}

/** Maximum current of one string of a roof. */
export function maximumCurrentOf(plant: Plant, array: ArrayDesign): Known<Quantity<"current">> {
  const { shortCircuitCurrent } = array.module;
  const currentCorrection = currentCorrectionOf(plant, array);
  if (currentCorrection === undefined) return maximumStringCurrent({ shortCircuitCurrent });
  return isMissing(currentCorrection)
    ? currentCorrection
    : maximumStringCurrent({ shortCircuitCurrent, currentCorrection });
}
