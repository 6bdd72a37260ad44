/** The closed grammar of expressions: a reader for one line of arithmetic, and the tree it yields. */

export type BinaryOperator = "+" | "-" | "*" | "/" | "^";
export type Comparison = "<" | "<=" | ">" | ">=" | "==" | "!=";

/** An expression as a tree. */
export type Expression =
  | { readonly kind: "number"; readonly text: string }
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "negative"; readonly of: Expression }
  | {
      readonly kind: "binary";
      readonly operator: BinaryOperator;
      readonly left: Expression;
      readonly right: Expression;
    }
  | {
      readonly kind: "comparison";
      readonly operator: Comparison;
      readonly left: Expression;
      readonly right: Expression;
    }
  | { readonly kind: "logic"; readonly operator: "and" | "or"; readonly left: Expression; readonly right: Expression }
  | { readonly kind: "choice"; readonly test: Expression; readonly then: Expression; readonly otherwise: Expression }
  | { readonly kind: "call"; readonly name: FunctionName; readonly of: readonly Expression[] };

/** Functions of one number. */
// prettier-ignore
export const scalarFunctions = ["sqrt", "exp", "log", "abs", "floor", "ceil", "sin", "cos", "tan", "acos", "atan"] as const;
/** Functions of one list; `min` and `max` also take two or more numbers. */
export const listFunctions = ["min", "max", "sum", "prod", "count"] as const;
export type FunctionName = (typeof scalarFunctions)[number] | (typeof listFunctions)[number];

const functionNames: readonly string[] = [...scalarFunctions, ...listFunctions];
const TOKEN = /\s*(\d+(?:\.\d+)?|[A-Za-z][A-Za-z0-9]*|<=|>=|==|!=|[-+*/^()<>?:,])/uy;
const POWER = 7;
// One line shows the order.
// prettier-ignore
const binding: Readonly<Record<string, number>> = {
  "?": 1, or: 2, and: 3, "<": 4, "<=": 4, ">": 4, ">=": 4, "==": 4, "!=": 4, "+": 5, "-": 5, "*": 6, "/": 6, "^": POWER,
};

function tokens(text: string): string[] {
  const found: string[] = [];
  TOKEN.lastIndex = 0;
  for (let at = 0; at < text.trimEnd().length; at = TOKEN.lastIndex) {
    const match = TOKEN.exec(text);
    if (!match) throw new SyntaxError(`unexpected "${text.slice(at).trim().slice(0, 12)}" in "${text}"`);
    found.push(match[1]!);
  }
  return found;
}

/** Reads an expression; throws a `SyntaxError` for what the grammar does not know. */
export function readExpression(text: string): Expression {
  const list = tokens(text);
  let at = 0;
  const fail = (): never => {
    throw new SyntaxError(`unexpected ${list[at] === undefined ? "end" : `"${list[at]}"`} in "${text}"`);
  };
  const expect = (token: string): void => {
    if (list[at] !== token) fail();
    at += 1;
  };

  function operand(): Expression {
    const token = list[at] ?? fail();
    at += 1;
    if (/^\d/.test(token)) return { kind: "number", text: token };
    if (token === "-") return { kind: "negative", of: level(POWER) };
    if (token === "(") {
      const inside = level(1);
      expect(")");
      return inside;
    }
    if (!/^[A-Za-z]/.test(token) || token === "and" || token === "or") {
      at -= 1;
      return fail();
    }
    if (list[at] !== "(") return { kind: "name", name: token };
    if (!functionNames.includes(token)) throw new SyntaxError(`unknown function ${token} in "${text}"`);
    at += 1;
    const of = [level(1)];
    while (list[at] === ",") {
      at += 1;
      of.push(level(1));
    }
    expect(")");
    return { kind: "call", name: token as FunctionName, of };
  }

  // Precedence climbing; powers bind to the right, comparisons do not chain.
  function level(least: number): Expression {
    let left = operand();
    for (;;) {
      const operator = list[at];
      const strength = operator === undefined ? undefined : binding[operator];
      if (operator === undefined || strength === undefined || strength < least) return left;
      at += 1;
      if (operator === "?") {
        const then = level(1);
        expect(":");
        left = { kind: "choice", test: left, then, otherwise: level(1) };
        continue;
      }
      const right = level(operator === "^" ? POWER : strength + 1);
      if (operator === "and" || operator === "or") left = { kind: "logic", operator, left, right };
      else if (strength === binding["<"]) {
        left = { kind: "comparison", operator: operator as Comparison, left, right };
        if (list[at] !== undefined && binding[list[at]!] === strength) fail();
      } else left = { kind: "binary", operator: operator as BinaryOperator, left, right };
    }
  }

  const tree = level(1);
  if (at < list.length) fail();
  return tree;
}

/** Every name that an expression uses, once each, in order of appearance. */
export function namesIn(tree: Expression): string[] {
  const names = new Set<string>();
  const visit = (node: Expression): void => {
    if (node.kind === "name") names.add(node.name);
    for (const child of childrenOf(node)) visit(child);
  };
  visit(tree);
  return [...names];
}

/** The parts of a node, in reading order. */
export function childrenOf(node: Expression): readonly Expression[] {
  switch (node.kind) {
    case "number":
    case "name":
      return [];
    case "negative":
      return [node.of];
    case "choice":
      return [node.test, node.then, node.otherwise];
    case "call":
      return node.of;
    default:
      return [node.left, node.right];
  }
}
