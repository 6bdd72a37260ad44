import type { PlantRecord, RecordedStep } from "../../plant/index.js";
import { significantText } from "./number-text.js";

const MOST_DIGITS = 6;
const LONG_NUMBER = /\d+\.\d+/g;

/** A line of working with long numbers cut to six digits; every digit stands in the record and at the step that made it. */
export function readable(text: string): string {
  return text.replace(LONG_NUMBER, (number) =>
    number.length > MOST_DIGITS + 1 ? significantText(number, MOST_DIGITS) : number,
  );
}

export interface StepName {
  readonly symbol: string;
  readonly about: string;
}

/** What a working needs of a record. */
export type WithWorking = Pick<PlantRecord, "steps" | "declarations" | "checks">;

/** What each step is called by the first rule that uses it, so that an input has a name too. */
export function stepNames({ steps = {}, declarations, checks }: WithWorking): ReadonlyMap<string, StepName> {
  const names = new Map<string, StepName>();
  const note = (step: string, name: StepName): void => {
    if (!names.has(step)) names.set(step, name);
  };
  for (const { id, uses = {} } of Object.values(steps)) {
    const declaration = id === undefined ? undefined : declarations[id];
    if (!declaration) continue;
    for (const [key, used] of Object.entries(uses)) {
      const side = sideOf(declaration, key);
      if (side) for (const step of [used].flat()) note(step, side);
    }
  }
  for (const { rule, value, limit } of checks) {
    const declaration = declarations[rule];
    if (declaration?.kind !== "condition") continue;
    for (const [side, of] of [
      [value, declaration.value],
      [limit, declaration.limit],
    ] as const) {
      if (typeof side !== "object" || side === null || !("step" in side)) continue;
      note(side.step, { symbol: "symbol" in of ? of.symbol : "", about: of.about });
    }
  }
  // A value that only changed its unit bears the name of what it became.
  for (const [id, { kind, uses = {} }] of Object.entries(steps)) {
    const name = names.get(id);
    if (kind === "conversion" && name) for (const used of Object.values(uses).flat()) note(used, name);
  }
  return names;
}

function sideOf(declaration: PlantRecord["declarations"][string], key: string): StepName | undefined {
  switch (declaration.kind) {
    case "formula":
    case "model": {
      const taken = declaration.takes[key];
      return taken ? { symbol: taken.symbol, about: taken.about } : undefined;
    }
    case "table": {
      const { rows } = declaration;
      return rows.name === key
        ? { symbol: "symbol" in rows ? rows.symbol : "", about: rows.about ?? rows.name }
        : undefined;
    }
    default:
      return undefined;
  }
}

const ORIGINS: Readonly<Record<RecordedStep["kind"], string>> = {
  given: "from the plant description",
  assumed: "assumed",
  conversion: "the same in another unit",
  formula: "computed",
  lookup: "from a table",
  choice: "chosen from a standard series",
  model: "from a method in double precision",
};

/** Where a step has its value from, in words. */
export const originText = ({ kind }: RecordedStep): string => ORIGINS[kind];
