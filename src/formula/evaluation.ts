import { type Decimal, Exact } from "../quantity/decimal.js";
import { add, divide, multiply, pi, power, subtract, transcendental, type Trust } from "./arithmetic.js";
import type { Expression } from "./expression.js";

/** The values of one call: one decimal a symbol, or a list of them, in the order of the symbols. */
export interface Call extends Trust {
  readonly values: readonly (Decimal | readonly Decimal[])[];
  /** Digits that each symbol can be trusted to. */
  readonly kept: readonly number[];
}

export type Evaluate = (call: Call) => Decimal;
export type Test = (call: Call) => boolean;

/** Turns a tree into a chain of closures, once a rule. */
export function compile(tree: Expression, symbols: readonly string[]): Evaluate {
  const position = (name: string): number => {
    const at = symbols.indexOf(name);
    if (at < 0) throw new SyntaxError(`${name} is not a symbol of this rule`);
    return at;
  };

  function list(node: Expression): (call: Call) => readonly Decimal[] {
    if (node.kind !== "name") throw new SyntaxError("a list function takes the name of a list");
    const at = position(node.name);
    return (call) => {
      trustOf(call, at);
      const values = call.values[at]!;
      if (!Array.isArray(values)) throw new SyntaxError(`${node.name} is not a list`);
      return values as readonly Decimal[];
    };
  }

  function value(node: Expression): Evaluate {
    switch (node.kind) {
      case "number": {
        const literal = new Exact(node.text);
        return () => literal;
      }
      case "name": {
        if (node.name === "pi") return pi;
        const at = position(node.name);
        return (call) => {
          trustOf(call, at);
          return call.values[at] as Decimal;
        };
      }
      case "negative": {
        const of = value(node.of);
        return (call) => of(call).neg();
      }
      case "binary": {
        const left = value(node.left);
        const right = value(node.right);
        const operate = { "+": add, "-": subtract, "*": multiply, "/": divide, "^": power }[node.operator];
        return (call) => operate(left(call), right(call), call);
      }
      case "choice": {
        const [condition, then, otherwise] = [test(node.test), value(node.then), value(node.otherwise)];
        return (call) => (condition(call) ? then(call) : otherwise(call));
      }
      case "call":
        return calling(node.name, node.of);
      default:
        throw new SyntaxError("a comparison is not a number");
    }
  }

  function calling(name: (Expression & { kind: "call" })["name"], of: readonly Expression[]): Evaluate {
    switch (name) {
      case "count":
      case "sum":
      case "prod": {
        const items = list(of[0]!);
        if (name === "count") return (call) => new Exact(items(call).length);
        const [start, operate] = name === "sum" ? [new Exact(0), add] : [new Exact(1), multiply];
        return (call) => items(call).reduce((total, item) => operate(total, item, call), start);
      }
      case "min":
      case "max": {
        const extreme = (...values: readonly Decimal[]): Decimal =>
          name === "min" ? Exact.min(...values) : Exact.max(...values);
        if (of.length === 1) {
          const items = list(of[0]!);
          return (call) => extreme(...items(call));
        }
        const parts = of.map(value);
        return (call) => extreme(...parts.map((part) => part(call)));
      }
      case "abs":
      case "floor":
      case "ceil": {
        const operand = value(of[0]!);
        return (call) => operand(call)[name]();
      }
      default: {
        const operand = value(of[0]!);
        return (call) => transcendental(name, operand(call), call);
      }
    }
  }

  function test(node: Expression): Test {
    if (node.kind === "logic") {
      const [left, right] = [test(node.left), test(node.right)];
      return node.operator === "and" ? (call) => left(call) && right(call) : (call) => left(call) || right(call);
    }
    if (node.kind !== "comparison") throw new SyntaxError("a choice needs a comparison");
    const [left, right] = [value(node.left), value(node.right)];
    switch (node.operator) {
      case "<":
        return (call) => left(call).lt(right(call));
      case "<=":
        return (call) => left(call).lte(right(call));
      case ">":
        return (call) => left(call).gt(right(call));
      case ">=":
        return (call) => left(call).gte(right(call));
      case "==":
        return (call) => left(call).eq(right(call));
      case "!=":
        return (call) => !left(call).eq(right(call));
    }
  }

  if (tree.kind === "comparison" || tree.kind === "logic") throw new SyntaxError("a rule gives a number");
  return value(tree);
}

/** Turns the tree of a condition between symbols into a test. */
export function compileTest(tree: Expression, symbols: readonly string[]): Test {
  const one: Expression = { kind: "number", text: "1" };
  const zero: Expression = { kind: "number", text: "0" };
  const evaluate = compile({ kind: "choice", test: tree, then: one, otherwise: zero }, symbols);
  return (call) => evaluate(call).eq(1);
}

function trustOf(call: Call, at: number): void {
  const kept = call.kept[at]!;
  if (kept < call.keeps) call.keeps = kept;
}
