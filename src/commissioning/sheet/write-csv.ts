import { type ReadingKey, readingKind } from "../evaluation/reading-kinds.js";
import { csvCell } from "./csv.js";

/** The columns of the sheet as text; `value` and `note` are filled in by hand. */
export const SHEET_COLUMNS = ["at", "reading", "what", "unit", "expected", "low", "high", "value", "note"] as const;

/** A place of the sheet that is to be filled in; expected values are texts in the unit of the reading. */
export interface SheetRow {
  readonly at: string;
  readonly reading: ReadingKey;
  readonly expected?: string;
  readonly low?: string;
  readonly high?: string;
}

/**
 * A measurement sheet to fill in, as comma-separated text.
 *
 * @example
 * ```ts
 * import { blankSheetCsv } from "pv-to-grid/commissioning";
 * blankSheetCsv([{ at: "INV1/A", reading: "shortCircuitCurrent" }]).split("\n")[1]; // "INV1/A,shortCircuitCurrent,short-circuit current,A,,,,,"
 * ```
 */
export function blankSheetCsv(rows: readonly SheetRow[]): string {
  const lines = rows.map(({ at, reading, expected = "", low = "", high = "" }) => {
    const { label, unit } = readingKind(reading)!;
    return [at, reading, label, unit, expected, low, high, "", ""].map(csvCell).join(",");
  });
  return `${[SHEET_COLUMNS.join(","), ...lines].join("\n")}\n`;
}
