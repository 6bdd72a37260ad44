import { conditions, formulas, models } from "../../src/catalogue/index.js";
import { lastDigitShifts } from "../../src/evidence/guards/grid.js";
import { isInputError, type Unit } from "../../src/quantity/index.js";

/** Bounds of one symbol, as the second entry holds them. */
export type Bounds = Partial<Record<"above" | "from" | "below" | "to", number>>;

/** What each rule does at its limits: bounds of symbols, requirements between them, and the verdicts of conditions below, at and above the limit. */
export interface Limits {
  readonly bounds: Readonly<Record<string, Readonly<Record<string, Bounds>>>>;
  readonly requires: Readonly<Record<string, readonly string[]>>;
  readonly verdicts: Readonly<Record<string, readonly [string, string, string]>>;
}

const KEYS = ["above", "from", "below", "to"] as const;

/** The limits as the declarations have them now; `write-limits.ts` writes them down for review. */
export function declaredLimits(): Limits {
  const bounds: Record<string, Record<string, Bounds>> = {};
  for (const { id, declaration } of [...formulas(), ...models()]) {
    for (const [key, take] of Object.entries(declaration.takes)) {
      const own = Object.fromEntries(KEYS.flatMap((name) => (take[name] === undefined ? [] : [[name, take[name]]])));
      if (Object.keys(own).length > 0) (bounds[id] ??= {})[key] = own;
    }
  }
  const verdicts: Record<string, readonly [string, string, string]> = {};
  for (const condition of conditions()) {
    const verdict = verdictsOf(condition);
    if (verdict) verdicts[condition.id] = verdict;
  }
  const requires = Object.fromEntries(
    formulas()
      .filter(({ declaration }) => declaration.requires)
      .map(({ id, declaration }) => [id, declaration.requires!.map(({ that }) => that)]),
  );
  return { bounds, requires, verdicts };
}

type AnyCondition = ReturnType<typeof conditions>[number];

const [BELOW, AT, ABOVE] = ["9.9", "10", "10.1"];

/** Verdicts one last digit below a limit, at it and above it; `null` for a condition on a closed list. */
export function verdictsOf(condition: AnyCondition): readonly [string, string, string] | null {
  const { value, limit } = condition.declaration;
  if (!("unit" in value) || !("unit" in limit)) return null;
  const withUnit = (number: string, unit: Unit): string => (unit === "1" ? number : `${number} ${unit}`);
  const verdict = (number: string): string =>
    (condition as (sides: object) => { readonly verdict: string })({
      value: withUnit(number, value.unit),
      limit: withUnit(AT, limit.unit),
    }).verdict;
  return [verdict(BELOW), verdict(AT), verdict(ABOVE)];
}

/** Whether a rule takes a number for one of its symbols, as far as the domain of that symbol goes. */
export function takes(
  rule: (inputs: never) => unknown,
  symbol: string,
  unit: string,
  isList: boolean,
  number: string,
): boolean {
  const text = unit === "1" ? number : `${number} ${unit}`;
  try {
    rule({ [symbol]: isList ? [text] : text } as never);
    return true;
  } catch (error) {
    if (!isInputError(error)) throw error;
    return !error.problems.some(({ path, code }) => path.replace(/\[0\]$/, "") === symbol && code !== "missing");
  }
}

/** Each number at a bound and one last digit on either side, with whether the bound lets it in. */
export function probesOf(bounds: Bounds): readonly { readonly number: string; readonly taken: boolean }[] {
  const isIn = (number: number): boolean =>
    (bounds.above === undefined || number > bounds.above) &&
    (bounds.from === undefined || number >= bounds.from) &&
    (bounds.below === undefined || number < bounds.below) &&
    (bounds.to === undefined || number <= bounds.to);
  return KEYS.flatMap((key) => {
    const bound = bounds[key];
    if (bound === undefined) return [];
    return [String(bound), ...lastDigitShifts(plain(bound))].map((number) => ({ number, taken: isIn(Number(number)) }));
  });
}

function plain(number: number): string {
  const text = String(number);
  return text.includes("e-") ? number.toFixed(Number(text.split("e-")[1])) : text;
}
