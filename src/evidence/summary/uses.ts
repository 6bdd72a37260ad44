import { type Check, isNamed, type Named, steps } from "../../formula/index.js";
import type { Force } from "../../formula/declaration.js";
import { isQuantity, type Quantity } from "../../quantity/index.js";

/** The checks behind whose value or limit a rule stands, with their force. */
export type Uses = ReadonlyMap<string, ReadonlyMap<string, Force>>;

/** Which checks lean on which rules, found in the workings of checks that were computed. */
export function usesIn(checks: readonly Check[]): Uses {
  const uses = new Map<string, Map<string, Force>>();
  for (const { rule, value, limit } of checks) {
    const sides = [value, limit].filter((side): side is Quantity | Named => isQuantity(side) || isNamed(side));
    const ids = sides.flatMap(steps).flatMap(({ id }) => (id === null ? [] : [id]));
    for (const id of new Set([rule.id, ...ids])) {
      const known = uses.get(id) ?? new Map<string, Force>();
      uses.set(id, known.set(rule.id, rule.force));
    }
  }
  return uses;
}
