import { type LookupOrigin, steps, table, type TableDeclaration } from "../../formula/index.js";
import { agreesAgain } from "../cases/agrees-again.js";
import type { Holder } from "../cases/call.js";
import type { JudgedCase } from "../cases/counting.js";
import { valuesOf } from "../cases/noticed-symbols.js";
import { lastDigitShifts, placeOf } from "../guards/grid.js";
import type { Swap } from "../replay.js";

interface UsedCell {
  readonly rule: TableDeclaration;
  readonly row: string;
  readonly column: readonly string[];
}

/** The cells that the working of a value or a check takes. */
export function cellsUsed(holder: Holder): readonly UsedCell[] {
  const used = new Map<string, UsedCell>();
  for (const { of: value } of valuesOf(holder).flatMap(steps)) {
    if (value.origin.kind !== "lookup") continue;
    const { rule, rows, column } = value.origin as LookupOrigin;
    for (const row of rows) {
      const cell = { rule, row, column: Object.values(column) };
      used.set(`${rule.id} ${placeOf(row, cell.column)}`, cell);
    }
  }
  return [...used.values()];
}

/** A table with one cell printed otherwise. */
export function withCell(
  rule: TableDeclaration,
  { row, column }: Pick<UsedCell, "row" | "column">,
  text: string,
): TableDeclaration {
  const headings = Object.values(rule.columns ?? {});
  let at = 0;
  for (const [index, values] of headings.entries()) at = at * values.length + values.indexOf(column[index]!);
  const lines = rule.cells.split("\n").map((line) => {
    const [name, ...cells] = line.trim().split(/\s{2,}|\t+/);
    if (name !== row) return line;
    cells[at] = text;
    return [name, ...cells].join("  ");
  });
  return { ...rule, cells: lines.join("\n") };
}

/** Cells, as table and place, of which some case notices one last digit more or less. */
export function cellsNoticedBy(judged: readonly JudgedCase[]): ReadonlySet<string> {
  const noticed = new Set<string>();
  for (const one of judged) {
    const holder = one.found?.holder;
    if (!holder) continue;
    for (const cell of cellsUsed(holder)) {
      const key = `${cell.rule.id} ${placeOf(cell.row, cell.column)}`;
      if (!noticed.has(key) && noticesCell(one, holder, cell)) noticed.add(key);
    }
  }
  return noticed;
}

function noticesCell(one: JudgedCase, holder: Holder, cell: UsedCell): boolean {
  return lastDigitShifts(textOf(cell)).some((shifted) => {
    const changed = withCell(cell.rule, cell, shifted);
    const swap: Swap = (rule) => (rule.id === changed.id ? (changed as typeof rule) : rule);
    return agreesAgain(one, holder, { swap }) !== true;
  });
}

function textOf({ rule, row, column }: UsedCell): string {
  const place = placeOf(row, column);
  return (
    table(rule)
      .cells()
      .find((cell) => placeOf(cell.row, cell.column) === place)?.text ?? ""
  );
}
