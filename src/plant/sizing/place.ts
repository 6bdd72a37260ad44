import { type Known, missing } from "../../formula/index.js";
import type { ArrayPlace } from "../../string/index.js";
import type { Plant } from "../description/plant-description.js";

/** Where the array stands, for the rules that ask for it; missing where the building is not described. */
export function arrayPlaceOf({ site }: Plant): Known<ArrayPlace> {
  switch (site.building) {
    case undefined:
      return missing("site.building");
    case "individual residential":
      return "dwelling";
    case "ground-mounted plant":
      return "ground";
    default:
      return "building";
  }
}
