import { all, type BigNumber, create } from "mathjs";
import { childrenOf, type Expression, type FormulaDeclaration, readExpression } from "../../src/formula/index.js";
import { bare, type Draw } from "./draws.js";

const PRECISION = 80;
const EQUAL = 1e-60;

const math = create(all!, { number: "BigNumber", precision: PRECISION, relTol: EQUAL, absTol: EQUAL });

/** Numbers with 80 digits. */
export const big = (text: string): BigNumber => math.bignumber(text);

type Scope = Readonly<Record<string, BigNumber | readonly BigNumber[]>>;

/** The names of a formula with the values of one draw, constants among them. */
export function scopeOf({ constants = {} }: FormulaDeclaration, draw: Draw): Scope {
  return Object.fromEntries([
    ...Object.entries(constants).map(([key, { value }]) => [key, big(value)] as const),
    ...Object.entries(draw).map(
      ([key, value]) =>
        [key, typeof value === "string" ? big(bare(value)) : value.map((item) => big(bare(item)))] as const,
    ),
  ]);
}

/** An expression by mathjs, from its text; `null` where the result is no finite real number. */
export function byMathjs(expression: string, scope: Scope): BigNumber | boolean | null {
  const result: unknown = math.evaluate(expression, { ...scope });
  if (typeof result === "boolean") return result;
  return math.isBigNumber(result) && result.isFinite() ? result : null;
}

/** The arms of every `a ? b : c` of an expression, in reading order, that mathjs takes on the way. */
export function armsTaken(expression: string, scope: Scope): ReadonlySet<string> {
  const taken = new Set<string>();
  let count = 0;
  const visit = (node: Expression, reached: boolean): void => {
    if (node.kind !== "choice") {
      for (const child of childrenOf(node)) visit(child, reached);
      return;
    }
    const at = (count += 1);
    visit(node.test, reached);
    const holds = reached && byMathjs(textOf(node.test), scope) === true;
    if (reached) taken.add(`${at} ${holds ? "then" : "otherwise"}`);
    visit(node.then, reached && holds);
    visit(node.otherwise, reached && !holds);
  };
  visit(readExpression(expression), true);
  return taken;
}

/** How many arms an expression has. */
export function armCount(expression: string): number {
  const count = (node: Expression): number =>
    (node.kind === "choice" ? 2 : 0) + childrenOf(node).reduce((sum, child) => sum + count(child), 0);
  return count(readExpression(expression));
}

/** A tree as fully bracketed text. */
export function textOf(node: Expression): string {
  switch (node.kind) {
    case "number":
      return node.text;
    case "name":
      return node.name;
    case "negative":
      return `(-${textOf(node.of)})`;
    case "choice":
      return `(${textOf(node.test)} ? ${textOf(node.then)} : ${textOf(node.otherwise)})`;
    case "call":
      return `${node.name}(${node.of.map(textOf).join(", ")})`;
    default:
      return `(${textOf(node.left)} ${node.operator} ${textOf(node.right)})`;
  }
}
