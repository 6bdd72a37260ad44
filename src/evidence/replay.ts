import {
  type Check,
  condition,
  type ConditionDeclaration,
  formula,
  type FormulaDeclaration,
  type FormulaOrigin,
  type LookupOrigin,
  type Named,
  table,
  type TableDeclaration,
} from "../formula/index.js";
import { type ConversionOrigin, isQuantity, type Quantity } from "../quantity/index.js";
import { type Holder, isCheck } from "./cases/call.js";

type Value = Quantity | Named;

/** Gives another declaration for one that is to be changed, and the same one for all others. */
export type Swap = <D extends FormulaDeclaration | TableDeclaration | ConditionDeclaration>(declaration: D) => D;

const remade = /* @__PURE__ */ new WeakMap<object, (inputs: never) => unknown>();

function ruleOf(
  declaration: object,
  make: () => (inputs: never) => unknown,
): (inputs: Readonly<Record<string, unknown>>) => unknown {
  let rule = remade.get(declaration);
  if (!rule) remade.set(declaration, (rule = make()));
  return rule as (inputs: Readonly<Record<string, unknown>>) => unknown;
}

/**
 * Works a value or a check out again from its own derivation, with some rules changed. Choices from a series and
 * double-precision methods stay as they came. A value that no change reaches is returned as it is.
 *
 * @throws InputError where a changed rule refuses its inputs
 */
export function replay<H extends Holder>(value: H, swap: Swap): H {
  const done = new Map<object, unknown>();
  return again(value, swap, done) as H;
}

function again(value: Holder, swap: Swap, done: Map<object, unknown>): unknown {
  const known = done.get(value);
  if (known !== undefined) return known;
  const result = isCheck(value) ? checkAgain(value, swap, done) : valueAgain(value, swap, done);
  done.set(value, result);
  return result;
}

function valueAgain(value: Value, swap: Swap, done: Map<object, unknown>): Value {
  switch (value.origin.kind) {
    case "conversion": {
      const { from } = value.origin as ConversionOrigin;
      const other = again(from, swap, done) as Quantity;
      return other === from ? value : other.in((value as Quantity).unit);
    }
    case "formula": {
      const { rule, inputs } = value.origin as FormulaOrigin;
      const swapped = swap(rule);
      const others = Object.entries(inputs).map(([key, input]) => [key, inputAgain(input, swap, done)] as const);
      if (swapped === rule && others.every(([key, input]) => input === inputs[key])) return value;
      return ruleOf(swapped, () => formula(swapped))(Object.fromEntries(others)) as Value;
    }
    case "lookup": {
      const { rule, asked, column } = value.origin as LookupOrigin;
      const swapped = swap(rule);
      const other = typeof asked === "string" ? asked : (again(asked, swap, done) as Quantity);
      if (swapped === rule && other === asked) return value;
      return ruleOf(swapped, () => table(swapped))({ [rule.rows.name]: other, ...column }) as Value;
    }
    case "given":
    case "assumed":
    case "choice":
    case "model":
      return value;
  }
}

function inputAgain(input: Quantity | readonly Quantity[], swap: Swap, done: Map<object, unknown>): unknown {
  if (isQuantity(input)) return again(input, swap, done);
  const items = input.map((item) => again(item, swap, done));
  return items.every((item, index) => item === input[index]) ? input : items;
}

function checkAgain(check: Check, swap: Swap, done: Map<object, unknown>): Check {
  const swapped = swap(check.rule);
  const [value, limit] = [check.value, check.limit].map((side) => (isQuantity(side) ? again(side, swap, done) : side));
  if (check.missing.length > 0 || value === null || limit === null) return check;
  if (swapped === check.rule && value === check.value && limit === check.limit) return check;
  return ruleOf(swapped, () => condition(swapped))({ value, limit, at: check.at }) as Check;
}
