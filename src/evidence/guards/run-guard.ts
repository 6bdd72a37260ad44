import { type Catalogue, catalogue } from "../../catalogue/catalogue.js";
import { order, readDigits } from "../digits.js";
import type { CopyGuard, Guard } from "../formats/index.js";
import { cellsOf, copiedCells, copiedSizes, type ShippedCell } from "./grid.js";
import { lawfulCells } from "./law.js";

/** One cell against its guard. */
export interface GuardedCell {
  readonly place: string;
  readonly shipped: string;
  /** What the copy prints, or what the law gives. */
  readonly due: string;
  readonly agrees: boolean;
  /** Whether the guard would disagree with the cell if its last digit were one more or one less. */
  readonly noticesShift: boolean;
}

/** What came of a guard. */
export interface GuardOutcome {
  readonly guard: Guard;
  readonly cells: readonly GuardedCell[];
  /** Faults of the guard itself: an unknown table, a place that the table does not have, an exception that agrees. */
  readonly problems: readonly string[];
}

/** Compares two printed numbers by value and two names by text. */
export function samePrint(a: string, b: string): boolean {
  const [x, y] = [readDigits(a), readDigits(b)];
  return x && y ? order(x, y) === 0 : a === b;
}

/** Compares a shipped table with its guard, cell by cell. */
export function runGuard(guard: Guard, from: Catalogue = catalogue()): GuardOutcome {
  const rule = from.rules.get(guard.table);
  if (rule?.kind !== "table" && rule?.kind !== "series") {
    return { guard, cells: [], problems: [`${guard.table} is not a table or series that is known`] };
  }
  const shipped = cellsOf(rule);
  try {
    if (guard.by === "formula") return { guard, ...lawfulCells(guard, rule, shipped, from) };
    return { guard, ...(rule.kind === "series" ? sameSizes(guard, shipped) : sameCells(guard, shipped)) };
  } catch (error) {
    return { guard, cells: [], problems: [error instanceof Error ? error.message : String(error)] };
  }
}

function sameCells(guard: CopyGuard, shipped: readonly ShippedCell[]): Omit<GuardOutcome, "guard"> {
  const copied = copiedCells(guard);
  const known = new Map(shipped.map((cell) => [cell.place, cell]));
  // A row may be spelt otherwise in the copy (1.0 and 1): numbers find their row by value.
  const numbered = new Map(shipped.map((cell) => [byValue(cell.place), cell]));
  const problems: string[] = [];
  const cells: GuardedCell[] = [];
  for (const [place, due] of copied) {
    const cell = known.get(place) ?? numbered.get(byValue(place));
    if (!cell) problems.push(`the table has no cell ${place}`);
    else cells.push({ place: cell.place, shipped: cell.text, due, ...sameAs(due, cell.text) });
  }
  if (copied.size === 0) problems.push("the guard compares nothing");
  return { cells, problems };
}

// A copy is compared digit by digit, so any other digit would be noticed.
function sameAs(due: string, shipped: string): Pick<GuardedCell, "agrees" | "noticesShift"> {
  const agrees = samePrint(shipped, due);
  return { agrees, noticesShift: agrees };
}

function byValue(place: string): string {
  const [row = "", ...column] = place.split(" | ");
  return /^\d+(\.\d+)?$/.test(row) ? [String(Number(row)), ...column].join(" | ") : place;
}

// A series is one statement: a size too many or too few is a difference as a changed one is.
function sameSizes(guard: CopyGuard, shipped: readonly ShippedCell[]): Omit<GuardOutcome, "guard"> {
  const sizes = copiedSizes(guard);
  const cells = shipped.map(({ place, text }) => {
    const due = sizes.find((size) => samePrint(size, text));
    return {
      place,
      shipped: text,
      due: due ?? "not in the copy",
      agrees: due !== undefined,
      noticesShift: due !== undefined,
    };
  });
  const extra = sizes.filter((size) => !shipped.some(({ text }) => samePrint(size, text)));
  return { cells, problems: extra.map((size) => `the copy has ${size}, which the series has not`) };
}
