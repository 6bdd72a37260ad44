import type { Catalogue } from "../../catalogue/catalogue.js";
import { bibliography } from "../../source/bibliography.js";
import type { Guard } from "../formats/index.js";
import type { GuardedCell, GuardOutcome } from "../guards/run-guard.js";

/** What guards one cell. */
export interface CellGuards {
  readonly by: ReadonlySet<"copy" | "formula">;
  readonly noticesShift: boolean;
}

interface Agreeing {
  readonly guard: Guard;
  readonly cell: GuardedCell;
}

/** Who published a source; a source outside the bibliography stands for itself. */
export function publisherOf(key: string): string {
  return key in bibliography ? bibliography[key as keyof typeof bibliography].publisher : key;
}

/** Publications that a table was typed from: guards of the same print say nothing about it. */
export function typedFrom(table: string, from: Catalogue): ReadonlySet<string> {
  const citations = from.rules.get(table)?.declaration.source ?? [];
  const keys = citations.flatMap(({ in: key, grade, seen }) => {
    if (seen !== undefined) return [seenKey(seen)];
    return grade === "original" ? [key] : [];
  });
  return new Set(keys);
}

// A place follows the key after a comma and a space; a key itself holds none.
function seenKey(seen: string): string {
  const keys = Object.keys(bibliography).filter((key) => seen === key || seen.startsWith(`${key}, `));
  return keys.sort((a, b) => b.length - a.length)[0] ?? seen;
}

/**
 * The guards of each cell that count. An original or reproduced copy of another print guards by itself, and so does the
 * law; a copy without an editor needs a second one of another publisher, or the law. What is recalled guards nothing.
 */
export function guardsByCell(outcomes: readonly GuardOutcome[], from: Catalogue): ReadonlyMap<string, CellGuards> {
  const agreeing = new Map<string, Agreeing[]>();
  for (const { guard, cells } of outcomes) {
    if (guard.by === "copy" && typedFrom(guard.table, from).has(guard.seen.in)) continue;
    for (const cell of cells) {
      if (!cell.agrees) continue;
      const key = `${guard.table} ${cell.place}`;
      agreeing.set(key, [...(agreeing.get(key) ?? []), { guard, cell }]);
    }
  }
  return new Map([...agreeing].map(([key, own]) => [key, weigh(own)]));
}

const EDITED: readonly string[] = ["original", "reproduced"];

function weigh(own: readonly Agreeing[]): CellGuards {
  const laws = own.filter(
    ({ guard }) => guard.by === "formula" && (EDITED.includes(guard.seen.grade) || guard.seen.grade === "copied"),
  );
  const edited = own.filter(({ guard }) => guard.by === "copy" && EDITED.includes(guard.seen.grade));
  const copied = own.filter(({ guard }) => guard.by === "copy" && guard.seen.grade === "copied");
  const publishers = new Set(copied.map(({ guard }) => publisherOf(guard.seen.in)));
  const copies =
    edited.length > 0 || publishers.size > 1 || (copied.length > 0 && laws.length > 0) ? [...edited, ...copied] : [];
  const by = new Set<"copy" | "formula">();
  if (copies.length > 0) by.add("copy");
  if (laws.length > 0) by.add("formula");
  return { by, noticesShift: [...copies, ...laws].some(({ cell }) => cell.noticesShift) };
}
