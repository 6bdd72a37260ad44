import { Exact } from "../quantity/decimal.js";
import { InputError, type Problem, received } from "../quantity/input-error.js";
import { keptOf, makeQuantity, type Origin, type Quantity } from "../quantity/quantity.js";
import { type Input, readInput } from "../quantity/reading.js";
import type { DimensionOf, Unit } from "../quantity/units.js";
import type { Grade } from "../source/grade.js";
import type { TableDeclaration } from "./declaration.js";
import { unknownKey } from "./inputs.js";
import { multiply, add, divide, subtract, type Trust } from "./arithmetic.js";
import { type Named, named } from "./named.js";
import { type Cell, type Grid, readGrid } from "./table-grid.js";

/** Came from a table: the row asked for, the row that the row rule took, and the column. */
export interface LookupOrigin extends Origin {
  readonly kind: "lookup";
  readonly rule: TableDeclaration;
  readonly asked: Quantity | string;
  /** Heading of the row that was taken; two of them where the rule is to interpolate. */
  readonly rows: readonly string[];
  readonly column: Readonly<Record<string, string>>;
  readonly grade: Grade | null;
}

type RowArgument<D extends TableDeclaration> = D["rows"] extends { readonly unit: infer U extends Unit }
  ? { readonly [K in D["rows"]["name"]]: Input<DimensionOf<U>> }
  : { readonly [K in D["rows"]["name"]]: string | Named };

type ColumnArguments<D extends TableDeclaration> =
  D["columns"] extends Readonly<Record<string, readonly string[]>>
    ? { readonly [K in keyof D["columns"]]: D["columns"][K][number] }
    : unknown;

type Given<D extends TableDeclaration> = D["gives"] extends { readonly unit: infer U extends Unit }
  ? Quantity<DimensionOf<U>>
  : Named;

/** A declared table: call it with its headings for one cell, or read its rows and cells. */
export interface Table<A, R> {
  (headings: A): R;
  readonly kind: "table";
  readonly id: string;
  readonly declaration: TableDeclaration;
  /** Row headings as printed, in order. */
  rows(): readonly string[];
  /** Every cell that is tabulated, in reading order. */
  cells(): readonly Cell[];
}

/** Declares a published table. Its cells are its transcription, as printed. */
export function table<const D extends TableDeclaration>(
  declaration: D,
): Table<RowArgument<D> & ColumnArguments<D>, Given<D>> {
  let grid: Grid | undefined;
  const lookUp = (headings: Readonly<Record<string, unknown>>): Quantity | Named => {
    grid ??= readGrid(declaration);
    return cellFor(declaration, grid, headings);
  };
  return Object.assign(lookUp, {
    kind: "table",
    id: declaration.id,
    declaration,
    rows: () => (grid ??= readGrid(declaration)).rows,
    cells: () => (grid ??= readGrid(declaration)).cells,
  }) as unknown as Table<RowArgument<D> & ColumnArguments<D>, Given<D>>;
}

function cellFor(
  declaration: TableDeclaration,
  grid: Grid,
  headings: Readonly<Record<string, unknown>>,
): Quantity | Named {
  const { id, rows: heading, columns = {} } = declaration;
  const problems: Problem[] = [];
  const known = [heading.name, ...Object.keys(columns)];
  for (const name of Object.keys(headings)) {
    if (!known.includes(name)) problems.push(unknownKey(name, known, headings[name]));
  }
  const column: Record<string, string> = {};
  for (const [name, values] of Object.entries(columns)) {
    const value = headings[name];
    if (typeof value === "string" && values.includes(value)) column[name] = value;
    else {
      const expected = values.join(", ");
      const code = value === undefined ? "missing" : "not-in-list";
      problems.push({ path: name, code, message: `must be one of ${expected}`, expected, received: received(value) });
    }
  }
  const row = readRow(declaration, grid, headings[heading.name]);
  if ("problem" in row) problems.push(row.problem);
  if (problems.length > 0 || "problem" in row) throw new InputError(id, problems);

  const columnKey = Object.values(column).join(" | ");
  const found = row.rows.map((name) => grid.at.get(`${name} | ${columnKey}`));
  const absent = found.findIndex((cell) => cell === undefined);
  if (absent >= 0) {
    const place = [
      `${heading.name} ${row.rows[absent]}`,
      ...Object.entries(column).map(([name, value]) => `${name} ${value}`),
    ];
    const message = `${declaration.about}: nothing is tabulated for ${place.join(", ")}`;
    throw new InputError(id, [
      {
        path: heading.name,
        code: "not-tabulated",
        message,
        expected: "a tabulated combination",
        received: place.join(", "),
      },
    ]);
  }
  const cells = found as Cell[];
  const origin: LookupOrigin = {
    kind: "lookup",
    rule: declaration,
    asked: row.asked,
    rows: row.rows,
    column: Object.freeze(column),
    grade: cells[0]!.grade,
  };
  if ("names" in declaration.gives) return named(cells[0]!.text, origin);
  const unit = declaration.gives.unit as never;
  if (cells.length === 1) return makeQuantity({ value: new Exact(cells[0]!.text), keeps: Infinity }, unit, origin);
  return makeQuantity(between(row.asked as Quantity, row.rows, cells), unit, origin);
}

type FoundRow = { readonly rows: readonly string[]; readonly asked: Quantity | string } | { readonly problem: Problem };

function readRow(declaration: TableDeclaration, grid: Grid, input: unknown): FoundRow {
  const { rows: heading, rowRule } = declaration;
  const fail = (code: Problem["code"], message: string): FoundRow => ({
    problem: {
      path: heading.name,
      code,
      message,
      expected: `one of ${grid.rows.join(", ")}`,
      received: received(input),
    },
  });
  if ("names" in heading) {
    const name = typeof input === "object" && input !== null && "name" in input ? input.name : input;
    if (typeof name === "string" && grid.rows.includes(name)) return { rows: [name], asked: name };
    return fail(input === undefined ? "missing" : "not-in-list", `must be one of ${grid.rows.join(", ")}`);
  }
  const reading = readInput(input, heading, heading.name);
  if (!reading.ok) return { problem: reading.problem };
  const { quantity } = reading;
  const { value } = keptOf(quantity);
  const same = grid.sorted.find((row) => row.value.eq(value));
  if (same) return { rows: [same.name], asked: quantity };
  const above = grid.sorted.find((row) => row.value.gt(value));
  const below = grid.sorted.findLast((row) => row.value.lt(value));
  const outside = `${quantity.text} ${heading.unit} lies outside the table, which is never extrapolated`;
  switch (rowRule) {
    case "exact":
      return fail("not-tabulated", `${quantity.text} ${heading.unit} is not a row of the table`);
    case "next above":
      return above ? { rows: [above.name], asked: quantity } : fail("not-tabulated", outside);
    case "next below":
      return below ? { rows: [below.name], asked: quantity } : fail("not-tabulated", outside);
    case "between":
      return above && below ? { rows: [below.name, above.name], asked: quantity } : fail("not-tabulated", outside);
  }
}

function between(
  asked: Quantity,
  rows: readonly string[],
  cells: readonly Cell[],
): { value: InstanceType<typeof Exact>; keeps: number } {
  const kept = keptOf(asked);
  const trust: Trust = { keeps: kept.keeps };
  const [low, high] = rows.map((row) => new Exact(row));
  const [first, second] = cells.map((cell) => new Exact(cell.text));
  const rise = multiply(subtract(second!, first!, trust), subtract(kept.value, low!, trust), trust);
  const value = add(first!, divide(rise, subtract(high!, low!, trust), trust), trust);
  return { value, keeps: trust.keeps };
}
