import type { Rule } from "../../catalogue/catalogue.js";
import { add, digitsText, lastDigit, minus, readDigits } from "../digits.js";
import type { CopyGuard } from "../formats/index.js";

/** A shipped cell: its table, its place as text (`2.5 | copper | C`) and its printed text. */
export interface ShippedCell {
  readonly place: string;
  readonly row: string;
  readonly column: readonly string[];
  readonly text: string;
}

const NOT_COMPARED = "–";

export const placeOf = (row: string, column: readonly string[]): string => [row, ...column].join(" | ");

/** The cells of a table, or the sizes of a series as one cell each. */
export function cellsOf(rule: Rule): readonly ShippedCell[] {
  if (rule.kind === "table") {
    return rule.cells().map(({ row, column, text }) => ({ place: placeOf(row, column), row, column, text }));
  }
  if (rule.kind !== "series") return [];
  const sizes = rule.declaration.sizes.trim().split(/\s+/);
  return sizes.map((text) => ({ place: text, row: text, column: [], text }));
}

/** The cells that a copy prints, by place. A line is a row heading and its cells, two or more spaces apart. */
export function copiedCells({ id, cells, columns = [[]] }: CopyGuard): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const line of cells.flatMap((text) => text.split("\n")).map((text) => text.trim())) {
    if (line === "") continue;
    const [row = "", ...values] = line.split(/\s{2,}|\t+/);
    if (values.length > columns.length) throw new Error(`${id}: row "${line}" has more cells than columns`);
    for (const [index, text] of values.entries()) {
      if (text === NOT_COMPARED) continue;
      const place = placeOf(row, columns[index]!);
      if (found.has(place)) throw new Error(`${id}: ${place} stands twice`);
      found.set(place, text);
    }
  }
  return found;
}

/** The sizes that a copy of a series prints: every number of its lines. */
export function copiedSizes({ cells }: CopyGuard): readonly string[] {
  return cells.flatMap((text) => text.trim().split(/\s+/)).filter((text) => text !== "");
}

/** A cell's text with its last digit one more and one less; for a name, another name. */
export function lastDigitShifts(text: string): readonly string[] {
  const digits = readDigits(text);
  if (!digits) return [`not ${text}`];
  return [add(digits, lastDigit(digits)), minus(digits, lastDigit(digits))].map(digitsText);
}
