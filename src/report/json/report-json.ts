import type { PlantRecord } from "../../plant/index.js";

/**
 * The record as JSON text, every digit, ending in a line feed; the same record gives the same bytes.
 *
 * @example
 * ```ts
 * import { reportJson } from "pv-to-grid/report";
 * import { sizePlant } from "pv-to-grid";
 * reportJson(sizePlant(plant)).endsWith("}\n"); // true
 * ```
 */
export function reportJson(record: PlantRecord): string {
  return `${JSON.stringify(record, null, 2)}\n`;
}
