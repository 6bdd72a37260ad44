import type { BigNumber } from "mathjs";
import type { Expression } from "../../src/formula/index.js";
import { math, type Value } from "./unit-values.js";

type Scope = Readonly<Record<string, Value | readonly Value[]>>;

const isZero = (node: Expression): boolean => node.kind === "number" && Number(node.text) === 0;

// Zero of any kind is zero: beside another value it takes that value's unit.
function pair(left: Expression, right: Expression, scope: Scope): readonly [Value, Value] {
  if (isZero(left)) {
    const other = inUnits(right, scope);
    return [times(other, 0), other];
  }
  const first = inUnits(left, scope);
  return [first, isZero(right) ? times(first, 0) : inUnits(right, scope)];
}

// What mathjs computes with units, under types as narrow as its own are wide.
const by = math as unknown as Readonly<Record<string, (...values: readonly Value[]) => Value>> & {
  readonly [K in "smaller" | "smallerEq" | "larger" | "largerEq" | "equal" | "unequal"]: (
    a: Value,
    b: Value,
  ) => boolean;
};

const number = (text: string | number): BigNumber => math.bignumber(text);

const times = (value: Value, factor: number): Value => by["multiply"]!(value, number(factor));

/** An expression on values with units, every operation by mathjs; throws where kinds do not fit. */
export function inUnits(node: Expression, scope: Scope): Value {
  switch (node.kind) {
    case "number":
      return number(node.text);
    case "name":
      return node.name === "pi" ? (math.evaluate("pi") as BigNumber) : (scope[node.name] as Value);
    case "negative":
      return times(inUnits(node.of, scope), -1);
    case "choice":
      return inUnits(holds(node.test, scope) ? node.then : node.otherwise, scope);
    case "call":
      return calling(node, scope);
    case "binary":
      return operate(node, scope);
    default:
      throw new TypeError("a comparison is not a number");
  }
}

function operate({ operator, left, right }: Expression & { readonly kind: "binary" }, scope: Scope): Value {
  if (operator === "+" || operator === "-") {
    const [a, b] = pair(left, right, scope);
    return by[operator === "+" ? "add" : "subtract"]!(a, b);
  }
  const [a, b] = [inUnits(left, scope), inUnits(right, scope)];
  if (operator === "*") return by["multiply"]!(a, b);
  if (operator === "/") return by["divide"]!(a, b);
  return by["pow"]!(a, plain(b, "an exponent"));
}

function plain(value: Value, what: string): BigNumber {
  if (!math.isBigNumber(value)) throw new TypeError(`${what} must be a plain number, not ${value.toString()}`);
  return value;
}

function calling({ name, of }: Expression & { readonly kind: "call" }, scope: Scope): Value {
  const [first] = of;
  const list = first!.kind === "name" ? scope[first!.name] : undefined;
  const items = Array.isArray(list) ? (list as readonly Value[]) : undefined;
  switch (name) {
    case "count":
      return number(items!.length);
    case "sum":
      return items!.reduce((a, b) => by["add"]!(a, b));
    case "prod":
      return items!.reduce((a, b) => by["multiply"]!(a, b));
    case "min":
    case "max": {
      const values = items ?? of.map((node) => node);
      const evaluated = items ?? alike(values as readonly Expression[], scope);
      return evaluated.reduce((a, b) => (by.larger(a, b) === (name === "max") ? a : b));
    }
    case "abs":
      return by["abs"]!(inUnits(first!, scope));
    case "sqrt":
      return by["sqrt"]!(inUnits(first!, scope));
    default:
      return by[name]!(plain(inUnits(first!, scope), `the argument of ${name}`));
  }
}

// Zeros among the arguments of min and max take the unit of the others.
function alike(nodes: readonly Expression[], scope: Scope): readonly Value[] {
  const known = nodes.filter((node) => !isZero(node)).map((node) => inUnits(node, scope));
  const zero = known[0] === undefined ? number(0) : times(known[0], 0);
  return nodes.map((node) => (isZero(node) ? zero : inUnits(node, scope)));
}

/** A comparison of values with units. */
export function holds(node: Expression, scope: Scope): boolean {
  if (node.kind === "logic") {
    const [left, right] = [holds(node.left, scope), holds(node.right, scope)];
    return node.operator === "and" ? left && right : left || right;
  }
  if (node.kind !== "comparison") throw new TypeError("a choice needs a comparison");
  const [a, b] = pair(node.left, node.right, scope);
  switch (node.operator) {
    case "<":
      return by.smaller(a, b);
    case "<=":
      return by.smallerEq(a, b);
    case ">":
      return by.larger(a, b);
    case ">=":
      return by.largerEq(a, b);
    case "==":
      return by.equal(a, b);
    case "!=":
      return by.unequal(a, b);
  }
}
