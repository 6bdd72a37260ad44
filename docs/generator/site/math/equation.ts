import type { Expression } from "../../../../src/formula/index.js";
import { isComposed, isSum, symbolMath } from "./symbol.js";

type Kind = Expression["kind"];
type Of<K extends Kind> = Extract<Expression, { readonly kind: K }>;

const RELATIONS = { "<": "&lt;", "<=": "≤", ">": "&gt;", ">=": "≥", "==": "=", "!=": "≠" } as const;
const SUM = 5;
const PRODUCT = 6;
const POWER = 7;
const ATOM = 9;

const operator = (sign: string): string => `<mo>${sign}</mo>`;
const row = (...parts: readonly string[]): string => `<mrow>${parts.join("")}</mrow>`;
const bracketed = (inside: string, open = "(", close = ")"): string =>
  row(`<mo fence="true">${open}</mo>`, inside, `<mo fence="true">${close}</mo>`);
const named = (name: string): string => `<mi mathvariant="normal">${name}</mi>`;
const word = (text: string): string => `<mtext>${text.replaceAll(" ", "&nbsp;")}</mtext>`;

/** An expression as MathML, with `symbolOf` giving the printed symbol of each name. */
export function equationMath(tree: Expression, symbolOf: (name: string) => string): string {
  const strength = (node: Expression): number => {
    switch (node.kind) {
      case "binary":
        // A fraction holds itself together.
        return { "+": SUM, "-": SUM, "*": PRODUCT, "/": PRODUCT, "^": POWER }[node.operator];
      case "negative":
        return SUM;
      case "name":
        return node.name === "pi" || !isComposed(symbolOf(node.name))
          ? ATOM
          : isSum(symbolOf(node.name))
            ? SUM
            : PRODUCT;
      case "call":
        return node.name === "exp" ? POWER : ATOM;
      case "number":
        return ATOM;
      default:
        return 1;
    }
  };
  const inside = (node: Expression, least: number): string =>
    strength(node) < least ? bracketed(math(node)) : math(node);

  const binary = ({ operator: sign, left, right }: Of<"binary">): string => {
    switch (sign) {
      case "+":
        return row(inside(left, SUM), operator("+"), inside(right, SUM));
      case "-":
        return row(inside(left, SUM), operator("−"), inside(right, SUM + 1));
      case "*":
        return row(inside(left, PRODUCT), operator("·"), inside(right, PRODUCT));
      case "/":
        return `<mfrac>${row(math(left))}${row(math(right))}</mfrac>`;
      case "^":
        return `<msup>${inside(left, POWER + 1)}${row(math(right))}</msup>`;
    }
  };

  const call = ({ name, of }: Of<"call">): string => {
    const only = of[0]!;
    switch (name) {
      case "sqrt":
        return `<msqrt>${math(only)}</msqrt>`;
      case "abs":
        return bracketed(math(only), "|", "|");
      case "floor":
        return bracketed(math(only), "⌊", "⌋");
      case "ceil":
        return bracketed(math(only), "⌈", "⌉");
      case "exp":
        return `<msup>${named("e")}${row(math(only))}</msup>`;
      case "sum":
      case "prod":
        return row(
          `<munder><mo largeop="true">${name === "sum" ? "∑" : "∏"}</mo><mi>i</mi></munder>`,
          inside(only, PRODUCT),
        );
      case "count":
        return row(word("number of "), math(only));
      default: {
        const shown = { log: "ln", acos: "arccos", atan: "arctan" }[name as string] ?? name;
        return row(named(shown), bracketed(of.map(math).join(operator(","))));
      }
    }
  };

  // Choices that follow each other stand below each other, behind one brace.
  const pieces = (first: Of<"choice">): string => {
    const rows: string[] = [];
    let node: Expression = first;
    for (; node.kind === "choice"; node = node.otherwise) {
      rows.push(`<mtr><mtd>${math(node.then)}</mtd><mtd>${row(word("if "), math(node.test))}</mtd></mtr>`);
    }
    rows.push(`<mtr><mtd>${math(node)}</mtd><mtd>${word("otherwise")}</mtd></mtr>`);
    return row(`<mo class="brace">{</mo>`, `<mtable class="pieces" displaystyle="true">${rows.join("")}</mtable>`);
  };

  const math = (node: Expression): string => {
    switch (node.kind) {
      case "number":
        return `<mn>${node.text}</mn>`;
      case "name":
        return node.name === "pi" ? "<mi>π</mi>" : symbolMath(symbolOf(node.name));
      case "negative":
        return row(operator("−"), inside(node.of, PRODUCT));
      case "binary":
        return binary(node);
      case "comparison":
        return row(inside(node.left, SUM), operator(RELATIONS[node.operator]), inside(node.right, SUM));
      case "logic":
        return row(math(node.left), word(` ${node.operator} `), math(node.right));
      case "choice":
        return pieces(node);
      case "call":
        return call(node);
    }
  };
  return math(tree);
}

/** An equation on a line of its own. */
export function displayEquation(left: string, relation: string, right: string): string {
  return `<div class="equation"><math display="block">${row(left, operator(relation), right)}</math></div>`;
}
