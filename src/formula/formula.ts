import { type Decimal, Exact } from "../quantity/decimal.js";
import { InputError } from "../quantity/input-error.js";
import { makeQuantity, type Origin, type Quantity } from "../quantity/quantity.js";
import type { DimensionOf, Unit } from "../quantity/units.js";
import type { FormulaDeclaration, Requirement } from "./declaration.js";
import { type Call, compile, compileTest, type Evaluate, type Test } from "./evaluation.js";
import { readExpression } from "./expression.js";
import { type Arguments, type Inputs, readInputs, type Slot, slotsOf, type Taken } from "./inputs.js";

/** Came from a formula: the rule and the quantities that went in, by key. */
export interface FormulaOrigin extends Origin {
  readonly kind: "formula";
  readonly rule: FormulaDeclaration;
  readonly inputs: Inputs;
}

/** A declared rule of arithmetic: call it with its symbols, and read its declaration beside it. */
export interface Formula<T, U extends Unit> {
  (inputs: Arguments<T>): Quantity<DimensionOf<U>>;
  readonly kind: "formula";
  readonly id: string;
  readonly declaration: FormulaDeclaration;
}

interface Ready {
  readonly slots: readonly Slot[];
  readonly constants: readonly Decimal[];
  readonly requires: readonly { readonly test: Test; readonly requirement: Requirement }[];
  readonly evaluate: Evaluate;
}

function prepare({ takes, constants = {}, requires = [], expression }: FormulaDeclaration): Ready {
  const symbols = [...Object.keys(takes), ...Object.keys(constants)];
  return {
    slots: slotsOf(takes),
    constants: Object.values(constants).map(({ value }) => new Exact(value)),
    requires: requires.map((requirement) => ({
      test: compileTest(readExpression(requirement.that), symbols),
      requirement,
    })),
    evaluate: compile(readExpression(expression), symbols),
  };
}

function inputsText(inputs: Inputs): string {
  const text = (value: Quantity | readonly Quantity[]): string =>
    "unit" in value ? `${value.text} ${value.unit}` : `[${value.map(text).join(", ")}]`;
  return Object.entries(inputs)
    .map(([key, value]) => `${key} ${text(value)}`)
    .join(", ");
}

/**
 * Declares a rule of arithmetic. Give it literals only, so that bundlers can drop the rules that nobody uses.
 *
 * @throws InputError at a call whose inputs are not finite values of the declared kinds within their domains, or break a
 * requirement between symbols, or for which the rule has no finite result
 */
export function formula<const D extends FormulaDeclaration>(
  declaration: D,
): Formula<{ [K in keyof D["takes"]]: Taken<D["takes"][K]> }, D["gives"]["unit"]> {
  const { id, gives } = declaration;
  let ready: Ready | undefined;

  const rule = (raw: Readonly<Record<string, unknown>>): Quantity => {
    ready ??= prepare(declaration);
    const values: (Decimal | readonly Decimal[])[] = [];
    const kept: number[] = [];
    const inputs = readInputs(id, raw, ready.slots, { values, kept });
    for (const constant of ready.constants) {
      values.push(constant);
      kept.push(Infinity);
    }
    const call: Call = { values, kept, keeps: Infinity };
    for (const { test, requirement } of ready.requires) {
      if (test(call)) continue;
      const { that, because } = requirement;
      throw new InputError(id, [
        { path: that, code: "requirement", message: because, expected: that, received: inputsText(inputs) },
      ]);
    }
    call.keeps = Infinity;
    const value = ready.evaluate(call);
    if (!value.isFinite()) {
      const message = "the result is not finite for these inputs";
      throw new InputError(id, [
        { path: gives.symbol, code: "not-finite", message, expected: "a finite result", received: inputsText(inputs) },
      ]);
    }
    const origin: FormulaOrigin = { kind: "formula", rule: declaration, inputs };
    return makeQuantity({ value, keeps: call.keeps }, gives.unit as never, origin);
  };
  return Object.assign(rule, { kind: "formula", id, declaration }) as never;
}
