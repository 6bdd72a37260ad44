import { type Check, isMissing, type Known } from "../../formula/index.js";
import type { LightningSituation, SurgeType } from "../lists.js";
import { surgeTypeSuitsLightning } from "./conditions.js";
import { dehn2014_types } from "./type-by-lightning.js";

/** Places of a plant where a surge protective device may belong. */
export type SurgePlace = "service entrance" | "inverter, a.c. side" | "inverter, d.c. side";

/**
 * Types of surge protective device that a lightning situation allows at a place; type 1 serves wherever type 2 does.
 *
 * @param lightning - how the plant stands to a lightning protection system, or what is missing for it
 * @param place - where the device belongs
 * @example
 * ```ts
 * import { typesFor } from "pv-to-grid/surge";
 * const types = typesFor("separation distance not kept", "inverter, d.c. side");
 * "length" in types && types.join(", "); // "type 1, type 1 and 2"
 * ```
 */
export function typesFor(lightning: Known<LightningSituation>, place: SurgePlace): Known<readonly SurgeType[]> {
  if (isMissing(lightning)) return lightning;
  const least = dehn2014_types({ situation: lightning, place }).name;
  return least === "type 1" ? ["type 1", "type 1 and 2"] : ["type 2", "type 1", "type 1 and 2"];
}

/** The verdict on the type of a device. */
export function typeCheck(at: string, type: Known<SurgeType>, types: Known<readonly SurgeType[]>): Check {
  return surgeTypeSuitsLightning({ at, value: type, limit: types });
}
