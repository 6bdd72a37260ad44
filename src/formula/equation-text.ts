import type { Expression } from "./expression.js";

// prettier-ignore
const SIGNS: Readonly<Record<string, string>> = {
  "+": " + ", "-": " − ", "*": " · ", "/": " / ", "^": "^",
  "<": " < ", "<=": " ≤ ", ">": " > ", ">=": " ≥ ", "==": " = ", "!=": " ≠ ",
  and: " and ", or: " or ",
};
const STRENGTH: Readonly<Record<string, number>> = { "+": 5, "-": 5, "*": 6, "/": 6, "^": 7, and: 3, or: 2 };

function strengthOf(node: Expression): number {
  switch (node.kind) {
    case "binary":
    case "logic":
      return STRENGTH[node.operator]!;
    case "comparison":
      return 4;
    case "negative":
      return 6;
    case "choice":
      return 1;
    default:
      return 9;
  }
}

/** Prints an expression as a line of text, with `print` giving the text of each name. */
export function equationText(tree: Expression, print: (name: string) => string): string {
  const inside = (node: Expression, least: number): string => {
    const text = line(node);
    return strengthOf(node) < least ? `(${text})` : text;
  };
  const line = (node: Expression): string => {
    switch (node.kind) {
      case "number":
        return node.text;
      case "name":
        return node.name === "pi" ? "π" : print(node.name);
      case "negative":
        return `−${inside(node.of, 7)}`;
      case "binary": {
        const strength = STRENGTH[node.operator]!;
        const rightLeast = node.operator === "-" || node.operator === "/" ? strength + 1 : strength;
        return `${inside(node.left, strength)}${SIGNS[node.operator]}${inside(node.right, rightLeast)}`;
      }
      case "logic":
        return `${inside(node.left, STRENGTH[node.operator]!)}${SIGNS[node.operator]}${inside(node.right, STRENGTH[node.operator]!)}`;
      case "comparison":
        return `${inside(node.left, 5)}${SIGNS[node.operator]}${inside(node.right, 5)}`;
      case "choice":
        return `${line(node.then)} if ${line(node.test)}, otherwise ${inside(node.otherwise, 1)}`;
      case "call":
        return node.name === "sqrt" ? `√(${line(node.of[0]!)})` : `${node.name}(${node.of.map(line).join(", ")})`;
    }
  };
  return line(tree);
}
