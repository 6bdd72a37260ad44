import type { TableDeclaration } from "../../formula/index.js";
import type { RecordedStep } from "../../plant/record/record.js";
import { type Digits, order, readDigits } from "../digits.js";
import type { Due, Evaluator } from "./evaluator.js";

/** The lines of a table, read from its printed text alone. */
function linesOf({ cells }: TableDeclaration): ReadonlyMap<string, readonly string[]> {
  const lines = cells
    .split("\n")
    .map((line) => line.trim().split(/\s{2,}|\t+/))
    .filter(([name]) => name !== "");
  return new Map(lines.map(([name = "", ...texts]) => [name, texts]));
}

function placeOf({ columns = {} }: TableDeclaration, column: Readonly<Record<string, string>>): number {
  let place = 0;
  for (const [name, values] of Object.entries(columns)) {
    const at = values.indexOf(column[name] ?? "");
    if (at < 0) return -1;
    place = place * values.length + at;
  }
  return place;
}

/** The rows that the row rule takes for what was asked. */
function rowsDue({ rows, rowRule }: TableDeclaration, names: readonly string[], asked: string): readonly string[] {
  if ("names" in rows) return names.includes(asked) ? [asked] : [];
  const value = readDigits(asked);
  if (!value) return [];
  const sorted = names.map((name) => ({ name, value: readDigits(name)! })).sort((a, b) => order(a.value, b.value));
  const equal = sorted.find((row) => order(row.value, value) === 0);
  if (equal) return [equal.name];
  const above = nearest(sorted, value, 1)?.name;
  const below = nearest(sorted.toReversed(), value, -1)?.name;
  const due = { exact: [], "next above": [above], "next below": [below], between: [below, above] }[rowRule];
  return due.every((name) => name !== undefined) ? (due as readonly string[]) : [];
}

interface Row {
  readonly name: string;
  readonly value: Digits;
}

function nearest(rows: readonly Row[], value: Digits, side: 1 | -1): Row | undefined {
  return rows.find((row) => order(row.value, value) === side);
}

/** What a lookup gives, from the printed text of the table. */
export function lookupDue(
  declaration: TableDeclaration,
  step: RecordedStep,
  used: Readonly<Record<string, RecordedStep | readonly RecordedStep[]>>,
  evaluate: Evaluator,
): Due {
  const lines = linesOf(declaration);
  const asked = (used[declaration.rows.name] as RecordedStep | undefined)?.value ?? step.rows?.[0] ?? "";
  const rows = rowsDue(declaration, [...lines.keys()], asked);
  if (rows.join() !== (step.rows ?? []).join())
    return { fault: `the rows due for ${asked} are ${rows.join(" and ") || "none"}` };
  const place = placeOf(declaration, step.column ?? {});
  const [low, high] = rows.map((row) => lines.get(row)?.[place]);
  if (low === undefined) return { fault: "nothing is tabulated there" };
  if (high === undefined) return { value: low };
  const names = { x: asked, x1: rows[0]!, x2: rows[1]!, y1: low, y2: high };
  const value = evaluate("y1 + (y2 - y1) * (x - x1) / (x2 - x1)", names);
  return typeof value === "string" ? { value } : { fault: "the interpolation gives no number" };
}
