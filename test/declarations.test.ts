import ts from "typescript";
import { describe, expect, it } from "vitest";
import { childrenOf, type Expression, readExpression } from "../src/formula/expression.js";
import { subjects } from "../.config/package-map.js";
import { type DeclaredRule, declaredRules } from "./harness/declared-rules.js";

const rules = declaredRules();

describe("declared rules", () => {
  it("bear one id each", () => {
    const ids = rules.map(({ id }) => id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });

  it.each(subjects())("of %s stand in its public face", async (folder) => {
    const face = (await import(`../src/${folder}/index.ts`)) as object;
    const due = rules.filter(({ file, name }) => file.folder === folder && name !== null).map(({ name }) => name!);
    expect(due.filter((name) => !(name in face))).toEqual([]);
  });

  for (const rule of rules) {
    it(`${rule.maker} ${rule.id} is literal, pure, named and described`, () => {
      expect(faultsOf(rule), rule.file.path).toEqual([]);
    });
  }
});

function faultsOf(rule: DeclaredRule): string[] {
  const { file, name, id, call, pure, maker } = rule;
  if (name === null) return ["is not the value of a constant exported at the top of its file"];
  const faults: string[] = [];
  const due = `${file.folder}/${hyphenated(name)}`;
  if (spread(id) !== spread(due)) faults.push(`the id is ${id}, due is ${due}`);
  if (!pure) faults.push("/* @__PURE__ */ is missing before the call");
  const said = (maker === "condition" ? rule.texts["asks"] : rule.texts["about"]) ?? "";
  if (!opensWith(rule.comment, said)) faults.push(`the comment “${rule.comment}” does not open with “${said}”`);
  faults.push(...notLiteral(call.arguments[0]), ...unnamedNumbers(rule));
  return faults;
}

/** `routeDrop` and `iec60364_5_52` in the spelling of ids. */
function hyphenated(name: string): string {
  return name
    .replaceAll("_", "-")
    .replace(/(?<=[a-z0-9])[A-Z]/g, (letter) => `-${letter}`)
    .toLowerCase();
}

// An export cannot show whether a hyphen stood between a letter and a digit: `iec60364` is `iec-60364`.
function spread(id: string): string {
  return id.replace(/(?<=[a-z])(?=\d)|(?<=\d)(?=[a-z])/g, "-");
}

/** Whether a comment's first sentence is the given text; capital letter and full stop are the comment's own. */
function opensWith(comment: string, text: string): boolean {
  const plain = (words: string): string => words.trim().replace(/[.?]$/, "");
  const [first, due] = [comment.slice(0, plain(text).length), plain(text)];
  const rest = comment.slice(due.length);
  return due !== "" && sameButCapital(first, due) && /^(?:$|[.?](?:\s|$))/.test(rest);
}

function sameButCapital(a: string, b: string): boolean {
  return a.slice(0, 1).toLowerCase() === b.slice(0, 1).toLowerCase() && a.slice(1) === b.slice(1);
}

/** What keeps bundlers from dropping a declaration, or a reader of the source from seeing all of it. */
function notLiteral(node: ts.Expression | undefined): string[] {
  if (!node) return ["the declaration is missing"];
  if (ts.isObjectLiteralExpression(node)) {
    return node.properties.flatMap((property) =>
      ts.isPropertyAssignment(property) && !ts.isComputedPropertyName(property.name)
        ? notLiteral(property.initializer)
        : [`“${property.getText()}” is not a literal property`],
    );
  }
  if (ts.isArrayLiteralExpression(node)) return node.elements.flatMap(notLiteral);
  if (ts.isPrefixUnaryExpression(node) && ts.isNumericLiteral(node.operand)) return [];
  return isLiteral(node) ? [] : [`“${node.getText()}” is not a literal`];
}

function isLiteral(node: ts.Expression): boolean {
  const { NullKeyword, TrueKeyword, FalseKeyword } = ts.SyntaxKind;
  return (
    ts.isStringLiteralLike(node) ||
    ts.isNumericLiteral(node) ||
    [NullKeyword, TrueKeyword, FalseKeyword].includes(node.kind)
  );
}

/** Numbers that an expression may hold without a name and a source. */
const PLAIN = ["0", "1", "2", "3", "100", "1000"];

function unnamedNumbers({ maker, texts, call }: DeclaredRule): string[] {
  if (maker !== "formula") return [];
  const expressions = [texts["expression"] ?? "", ...requirementsOf(call)];
  return expressions
    .flatMap((text) => numbersIn(readExpression(text)))
    .filter((number) => !PLAIN.includes(number))
    .map((number) => `${number} in an expression is to be a named constant with its source`);
}

function numbersIn(tree: Expression): string[] {
  return tree.kind === "number" ? [tree.text] : childrenOf(tree).flatMap(numbersIn);
}

function requirementsOf(call: ts.CallExpression): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAssignment(node) && node.name.getText() === "that" && ts.isStringLiteralLike(node.initializer)) {
      found.push(node.initializer.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(call);
  return found;
}
