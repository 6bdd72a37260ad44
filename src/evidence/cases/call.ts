import { type Catalogue, catalogue } from "../../catalogue/catalogue.js";
import { type Check, isNamed, type Named } from "../../formula/index.js";
import { given, isQuantity, type Quantity } from "../../quantity/index.js";

/** What a case cannot be run for: an unknown rule, a path into nothing. */
export class CaseFault extends Error {
  override readonly name = "CaseFault";
}

/** A value that knows how it came to be, or a check of such values. */
export type Holder = Quantity | Named | Check;

/** What stands at a path of a result. */
export interface Found {
  readonly leaf: unknown;
  /** The last value on the way to it that has a working, and the path from there. */
  readonly holder: Holder | null;
  readonly rest: string;
}

type Steps = Record<string | number, unknown>;

function partsOf(path: string): readonly (string | number)[] {
  return [...path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)].map(([, name, place]) => name ?? Number(place));
}

/** Sets `stretches[0].length` and the like in a nested object. */
function place(into: Steps | unknown[], path: string, value: unknown): void {
  const parts = partsOf(path);
  let at = into as Steps;
  for (const [index, part] of parts.entries()) {
    const next = parts[index + 1];
    if (next === undefined) at[part] = value;
    else at = (at[part] ??= typeof next === "number" ? [] : {}) as Steps;
  }
}

export function isCheck(value: unknown): value is Check {
  return typeof value === "object" && value !== null && "verdict" in value && "rule" in value;
}

function holds(value: unknown): value is Holder {
  return isQuantity(value) || isNamed(value) || isCheck(value);
}

/** What stands at a path of a result. */
export function leafAt(result: unknown, path: string): Found {
  const parts = partsOf(path);
  let leaf = result;
  let holder: Holder | null = holds(leaf) ? leaf : null;
  let from = 0;
  for (const [index, part] of parts.entries()) {
    if (typeof leaf !== "object" || leaf === null || !(part in leaf)) {
      throw new CaseFault(`the result has nothing at "${path}"`);
    }
    leaf = (leaf as Steps)[part];
    if (holds(leaf)) [holder, from] = [leaf, index + 1];
  }
  return { leaf, holder, rest: parts.slice(from).join(".") };
}

// Keys that begin with a place, such as `[1].cellTemperature`, feed the arguments of a calculation by position.
function argumentsOf(inputs: Readonly<Record<string, unknown>>): readonly unknown[] {
  const byPosition = Object.keys(inputs).some((key) => key.startsWith("["));
  const root = byPosition ? [] : {};
  for (const [key, value] of Object.entries(inputs)) place(root, key, value);
  return Array.isArray(root) ? root : [root];
}

/** Runs the rule or calculation of an id on inputs and takes what stands at a path of its result. */
export function resultOf(
  id: string,
  inputs: Readonly<Record<string, unknown>>,
  at: string,
  from: Catalogue = catalogue(),
): Found {
  const rule = from.rules.get(id);
  if (rule?.kind === "formula" && at.startsWith("constants.")) {
    const constant = rule.declaration.constants?.[at.slice("constants.".length)];
    if (!constant) throw new CaseFault(`${id} has no constant at "${at}"`);
    return leafAt(given(constant.value, constant.unit), "");
  }
  if (rule && typeof rule === "function") {
    return leafAt((rule as (inputs: Readonly<Record<string, unknown>>) => unknown)(inputs), at);
  }
  const calculation = from.calculations.get(id);
  if (!calculation) throw new CaseFault(rule ? `${id} is a series, which a case cannot call` : `${id} is not known`);
  return leafAt(calculation.call(...argumentsOf(inputs)), at);
}
