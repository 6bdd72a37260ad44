import type { RecordedCheck, RecordedNumber } from "../../plant/index.js";
import { shown, shownPair, shownText } from "./number-text.js";

export function isNumber(side: unknown): side is RecordedNumber {
  return typeof side === "object" && side !== null && "step" in side;
}

/** The two sides of a check as a reader sees them; `null` where a side is not known. */
export interface Sides {
  readonly value: string | null;
  readonly relation: string;
  readonly limit: string | null;
}

/** How the value stands to the limit where the check is not met, so that what is printed is true. */
const OTHERWISE: Readonly<Record<RecordedCheck["relation"], string>> = {
  "<": "≥",
  "≤": ">",
  "≥": "<",
  ">": "≤",
  "=": "≠",
  "one of": "is not one of",
};

function standing({ relation, verdict }: RecordedCheck): string {
  if (verdict === "not-met") return OTHERWISE[relation];
  if (relation !== "one of") return relation;
  return verdict === "met" ? "is one of" : "is it one of";
}

export function sidesOf(check: RecordedCheck): Sides {
  const { value, limit } = check;
  const relation = standing(check);
  if (isNumber(value) && isNumber(limit)) {
    const [a, b] = shownPair(value, limit);
    return { value: shownText(a), relation, limit: shownText(b) };
  }
  return { value: sideText(value), relation, limit: sideText(limit) };
}

function sideText(side: RecordedCheck["limit"]): string | null {
  if (side === null) return null;
  if (typeof side === "string") return side;
  return isNumber(side) ? shownText(shown(side)) : side.join(", ");
}

/** Value, relation and limit in one line. */
export function comparisonText(check: RecordedCheck): string {
  const { value, relation, limit } = sidesOf(check);
  if (value === null && limit === null) return "";
  return `${value ?? "?"} ${relation} ${limit ?? "?"}`;
}

/** Keys of the steps behind both sides. */
export function stepsOf({ value, limit }: RecordedCheck): readonly string[] {
  return [value, limit].flatMap((side) => (isNumber(side) ? [side.step] : []));
}
