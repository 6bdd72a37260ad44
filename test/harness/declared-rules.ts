import ts from "typescript";
import { sourceFiles, type SourceFile } from "./sources.js";

/** The makers that declare a rule as data. */
export const makers = ["formula", "table", "series", "condition", "model"] as const;
export type Maker = (typeof makers)[number];

/** One call of a maker, as it stands in the source. */
export interface DeclaredRule {
  readonly file: SourceFile;
  readonly maker: Maker;
  readonly call: ts.CallExpression;
  /** Name of the export; `null` where the call is not the value of an exported constant. */
  readonly name: string | null;
  /** The declaration's texts at its top level, by key. */
  readonly texts: Readonly<Record<string, string>>;
  readonly id: string;
  /** The comment above the export, up to its first tag. */
  readonly comment: string;
  readonly pure: boolean;
}

// The kernel defines the makers; `evidence/` calls them on declarations that came as data, to see what a change would do.
const NOT_DECLARING = ["formula", "evidence"];

/** Every rule that the library declares. */
export function declaredRules(): readonly DeclaredRule[] {
  return sourceFiles()
    .filter(({ folder }) => !NOT_DECLARING.includes(folder))
    .flatMap(rulesOf);
}

function rulesOf(file: SourceFile): DeclaredRule[] {
  const found: DeclaredRule[] = [];
  const visit = (node: ts.Node): void => {
    const maker = ts.isCallExpression(node) && ts.isIdentifier(node.expression) ? node.expression.text : "";
    if (isMaker(maker) && importsMaker(file, maker)) found.push(readRule(file, maker, node as ts.CallExpression));
    ts.forEachChild(node, visit);
  };
  visit(file.tree);
  return found;
}

function isMaker(name: string): name is Maker {
  return (makers as readonly string[]).includes(name);
}

// A local function may bear a maker's name; only the kernel's own declares a rule.
function importsMaker({ tree }: SourceFile, maker: string): boolean {
  return tree.statements.some((statement) => {
    if (!ts.isImportDeclaration(statement) || !statement.moduleSpecifier.getText().includes("/formula/")) return false;
    const names = statement.importClause?.namedBindings;
    return names !== undefined && ts.isNamedImports(names) && names.elements.some(({ name }) => name.text === maker);
  });
}

function readRule(file: SourceFile, maker: Maker, call: ts.CallExpression): DeclaredRule {
  const variable = ts.isVariableDeclaration(call.parent) ? call.parent : undefined;
  const statement = variable?.parent.parent;
  const exported =
    statement !== undefined &&
    ts.isVariableStatement(statement) &&
    ts.isSourceFile(statement.parent) &&
    (statement.modifiers ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
  const texts = textsOf(call.arguments[0]);
  return {
    file,
    maker,
    call,
    name: exported && variable && ts.isIdentifier(variable.name) ? variable.name.text : null,
    texts,
    id: texts["id"] ?? "",
    comment: exported ? commentOf(statement) : "",
    pure: /\/\* @__PURE__ \*\/\s*$/.test(file.text.slice(call.getFullStart(), call.getStart())),
  };
}

function textsOf(argument: ts.Expression | undefined): Record<string, string> {
  const texts: Record<string, string> = {};
  if (!argument || !ts.isObjectLiteralExpression(argument)) return texts;
  for (const property of argument.properties) {
    if (!ts.isPropertyAssignment(property) || !ts.isStringLiteralLike(property.initializer)) continue;
    texts[property.name.getText()] = property.initializer.text;
  }
  return texts;
}

function commentOf(statement: ts.Statement): string {
  const comments = ts.getJSDocCommentsAndTags(statement).filter(ts.isJSDoc);
  const text = ts.getTextOfJSDocComment(comments.at(-1)?.comment) ?? "";
  return text.replace(/\s+/g, " ").trim();
}
