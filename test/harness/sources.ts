import { readdirSync, readFileSync } from "node:fs";
import { posix } from "node:path";
import ts from "typescript";

/** One source file of the library, as text and as a syntax tree. */
export interface SourceFile {
  /** Below `src/`, such as `module/translation/open-circuit-voltage-at.ts`. */
  readonly path: string;
  /** The subject it belongs to; empty for a file that lies directly in `src/`. */
  readonly folder: string;
  readonly text: string;
  readonly tree: ts.SourceFile;
}

const src = new URL("../../src/", import.meta.url);

/** Every source file of the library. */
export function sourceFiles(): readonly SourceFile[] {
  return readdirSync(src, { recursive: true, encoding: "utf8" })
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => path.endsWith(".ts"))
    .sort()
    .map((path) => {
      const text = readFileSync(new URL(path, src), "utf8");
      const tree = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
      return { path, folder: path.includes("/") ? path.slice(0, path.indexOf("/")) : "", text, tree };
    });
}

/** One import or re-export of another source file. */
export interface Import {
  readonly to: string;
  /** Whether nothing of it is left at run time. */
  readonly typeOnly: boolean;
}

/** The files of `src/` that a file imports; a path that leaves `src/` keeps its dots. */
export function importsOf({ path, tree }: SourceFile): readonly Import[] {
  const found: Import[] = [];
  for (const statement of tree.statements) {
    if (!ts.isImportDeclaration(statement) && !ts.isExportDeclaration(statement)) continue;
    const from = statement.moduleSpecifier;
    if (!from || !ts.isStringLiteral(from) || !from.text.startsWith(".")) continue;
    const typeOnly = ts.isImportDeclaration(statement)
      ? statement.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword
      : statement.isTypeOnly;
    found.push({ to: posix.join(posix.dirname(path), from.text.replace(/\.js$/, ".ts")), typeOnly });
  }
  return found;
}
