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

/** What is changed on the way: rules, and what goes into the formulas. */
export interface Changes {
  readonly swap: Swap;
  /** Gives another quantity for one that feeds a symbol of a formula, and the same one for all others. */
  readonly shift: (rule: FormulaDeclaration, symbol: string, input: Quantity) => Quantity;
}

const NOTHING: Changes = { swap: (rule) => rule, shift: (_rule, _symbol, input) => input };

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
export function replay<H extends Holder>(value: H, changes: Partial<Changes>): H {
  return again(value, { ...NOTHING, ...changes }, new Map<object, unknown>()) as H;
}

function again(value: Holder, changes: Changes, done: Map<object, unknown>): unknown {
  const known = done.get(value);
  if (known !== undefined) return known;
  const result = isCheck(value) ? checkAgain(value, changes, done) : valueAgain(value, changes, done);
  done.set(value, result);
  return result;
}

function valueAgain(value: Value, changes: Changes, done: Map<object, unknown>): Value {
  switch (value.origin.kind) {
    case "conversion": {
      const { from } = value.origin as ConversionOrigin;
      const other = again(from, changes, done) as Quantity;
      return other === from ? value : other.in((value as Quantity).unit);
    }
    case "formula": {
      const { rule, inputs } = value.origin as FormulaOrigin;
      const swapped = changes.swap(rule);
      const others = Object.entries(inputs).map(([key, input]) => {
        const shift = (quantity: Quantity): Quantity => changes.shift(rule, key, quantity);
        return [key, inputAgain(input, changes, done, shift)] as const;
      });
      if (swapped === rule && others.every(([key, input]) => input === inputs[key])) return value;
      return ruleOf(swapped, () => formula(swapped))(Object.fromEntries(others)) as Value;
    }
    case "lookup": {
      const { rule, asked, column } = value.origin as LookupOrigin;
      const swapped = changes.swap(rule);
      const other = typeof asked === "string" ? asked : (again(asked, changes, done) as Quantity);
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

function inputAgain(
  input: Quantity | readonly Quantity[],
  changes: Changes,
  done: Map<object, unknown>,
  shift: (quantity: Quantity) => Quantity,
): unknown {
  if (isQuantity(input)) return shift(again(input, changes, done) as Quantity);
  const items = input.map((item) => shift(again(item, changes, done) as Quantity));
  return items.every((item, index) => item === input[index]) ? input : items;
}

function checkAgain(check: Check, changes: Changes, done: Map<object, unknown>): Check {
  const swapped = changes.swap(check.rule);
  const [value, limit] = [check.value, check.limit].map((side) =>
    isQuantity(side) ? again(side, changes, done) : side,
  );
  if (check.missing.length > 0 || value === null || limit === null) return check;
  if (swapped === check.rule && value === check.value && limit === check.limit) return check;
  return ruleOf(swapped, () => condition(swapped))({ value, limit, at: check.at }) as Check;
}
