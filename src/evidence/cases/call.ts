import { type Catalogue, catalogue } from "../../catalogue/catalogue.js";
import { given } from "../../quantity/given.js";

/** What a case cannot be run for: an unknown rule, a path into nothing. */
export class CaseFault extends Error {
  override readonly name = "CaseFault";
}

type Nested = Record<string, unknown> | unknown[];

function partsOf(path: string): readonly (string | number)[] {
  return [...path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)].map(([, name, place]) => name ?? Number(place));
}

/** Sets `stretches[0].length` and the like in a nested object. */
function place(into: Nested, path: string, value: unknown): void {
  const parts = partsOf(path);
  let at = into as Record<string | number, unknown>;
  for (const [index, part] of parts.entries()) {
    const next = parts[index + 1];
    if (next === undefined) at[part] = value;
    else at = (at[part] ??= typeof next === "number" ? [] : {}) as Record<string | number, unknown>;
  }
}

/** What stands at a path of a result. */
export function leafAt(result: unknown, path: string): unknown {
  let at = result;
  for (const part of partsOf(path)) {
    if ((typeof at !== "object" && typeof at !== "function") || at === null || !(part in at)) {
      throw new CaseFault(`the result has nothing at "${path}"`);
    }
    at = (at as Record<string | number, unknown>)[part];
  }
  return at;
}

// Keys that begin with a place, such as `[1].cellTemperature`, feed the arguments of a calculation by position.
function argumentsOf(inputs: Readonly<Record<string, unknown>>): readonly unknown[] {
  const byPosition = Object.keys(inputs).some((key) => key.startsWith("["));
  const root: Nested = byPosition ? [] : {};
  for (const [key, value] of Object.entries(inputs)) place(root, key, value);
  return byPosition ? (root as unknown[]) : [root];
}

/** Runs the rule or calculation of an id on inputs and takes what stands at a path of its result. */
export function resultOf(
  id: string,
  inputs: Readonly<Record<string, unknown>>,
  at: string,
  from: Catalogue = catalogue(),
): unknown {
  const rule = from.rules.get(id);
  if (rule?.kind === "formula" && at.startsWith("constants.")) {
    const constant = rule.declaration.constants?.[at.slice("constants.".length)];
    if (!constant) throw new CaseFault(`${id} has no constant at "${at}"`);
    return given(constant.value, constant.unit);
  }
  if (rule && typeof rule === "function") {
    return leafAt((rule as (inputs: Readonly<Record<string, unknown>>) => unknown)(inputs), at);
  }
  const calculation = from.calculations.get(id);
  if (!calculation) throw new CaseFault(rule ? `${id} is a series, which a case cannot call` : `${id} is not known`);
  return leafAt(calculation.call(...argumentsOf(inputs)), at);
}
