import type { PlantRecord } from "../../plant/index.js";
import { CABLE_ALLOWANCE, materialList } from "../material/material-list.js";
import type { Cell } from "../view/cell.js";
import type { ReportOptions } from "../view/options.js";
import { csv } from "./csv.js";

const HEADS = ["group", "what", "size", "quantity", "unit", "where", "note"];

function quantityText(cell: Cell): string {
  switch (cell.kind) {
    case "number":
      return cell.number.value;
    case "made":
      return cell.value;
    default:
      return cell.text;
  }
}

/**
 * The material list as CSV: cables by type with the stated allowance, modules, inverters, devices by rating and number.
 *
 * @example
 * ```ts
 * import { materialsCsv } from "pv-to-grid/report";
 * import { sizePlant } from "pv-to-grid";
 * materialsCsv(sizePlant(plant), { cableAllowance: "5 %" });
 * ```
 */
export function materialsCsv(
  record: PlantRecord,
  { cableAllowance = CABLE_ALLOWANCE }: Pick<ReportOptions, "cableAllowance"> = {},
): string {
  const rows = materialList(record, cableAllowance).map(({ group, what, size, quantity, unit, where }) => [
    group,
    what,
    size,
    quantityText(quantity),
    unit,
    where,
    quantity.kind === "made" ? `with an allowance of ${cableAllowance}` : "",
  ]);
  return csv(HEADS, rows);
}
