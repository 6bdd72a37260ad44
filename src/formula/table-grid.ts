import { type Decimal, Exact } from "../quantity/decimal.js";
import { bestGrade, type Grade, grades } from "../source/grade.js";
import type { TableDeclaration } from "./declaration.js";

/** One tabulated cell, as printed. */
export interface Cell {
  readonly row: string;
  /** Heading values in the order of the table's headings. */
  readonly column: readonly string[];
  readonly text: string;
  readonly grade: Grade | null;
}

/** A table made ready for lookups. */
export interface Grid {
  readonly rows: readonly string[];
  readonly sorted: readonly { readonly name: string; readonly value: Decimal }[];
  readonly cells: readonly Cell[];
  readonly at: ReadonlyMap<string, Cell>;
}

const NOT_TABULATED = "–";

/** Every combination of heading values, the last heading varying fastest. */
export function columnsOf(columns: Readonly<Record<string, readonly string[]>> = {}): readonly (readonly string[])[] {
  return Object.values(columns).reduce<readonly (readonly string[])[]>(
    (found, values) => found.flatMap((start) => values.map((value) => [...start, value])),
    [[]],
  );
}

/** Reads the lines of cells of a declaration; throws a plain error for a malformed table, which is a fault of the library. */
export function readGrid({ id, cells: text, rows, columns, source, cellGrades = {} }: TableDeclaration): Grid {
  const headings = columnsOf(columns);
  const whole = bestGrade(source);
  const special = new Map(grades.flatMap((grade) => (cellGrades[grade] ?? []).map((cell) => [cell, grade] as const)));
  const names: string[] = [];
  const cells: Cell[] = [];
  const at = new Map<string, Cell>();
  for (const line of text.split("\n").map((each) => each.trim())) {
    if (line === "") continue;
    const [name, ...values] = line.split(/\s{2,}|\t+/);
    if (name === undefined || values.length !== headings.length) {
      throw new Error(`${id}: row "${line}" has ${values.length} cells, not ${headings.length}`);
    }
    if (names.includes(name)) throw new Error(`${id}: row ${name} stands twice`);
    names.push(name);
    for (const [index, column] of headings.entries()) {
      const cell = values[index]!;
      if (cell === NOT_TABULATED) continue;
      const key = `${name} | ${column.join(" | ")}`;
      const made = Object.freeze({
        row: name,
        column,
        text: cell,
        grade: special.get(key) ?? special.get(name) ?? whole,
      });
      cells.push(made);
      at.set(key, made);
    }
  }
  const sorted = "names" in rows ? [] : names.map((name) => ({ name, value: new Exact(name) }));
  sorted.sort((a, b) => a.value.cmp(b.value));
  return { rows: Object.freeze(names), sorted, cells: Object.freeze(cells), at };
}
