import { given, type Quantity } from "../../quantity/index.js";
import { areaWithinBound } from "./conditions.js";

/** Whether an area lies above the last row of a table by areas. */
export function aboveLastRow(table: { rows(): readonly string[] }, area: Quantity<"area">): boolean {
  return areaWithinBound({ value: area, limit: given(`${table.rows().at(-1)!} cmil`, "cmil") }).verdict === "not met";
}
