/**
 * Writes the package's declarations, a twin for each module format. Types made by the schema library are written out, so
 * that a user's compiler needs nothing of that library; files that no subpath leads to are left out.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { entries } from "./package-map.js";

const root = fileURLToPath(new URL("..", import.meta.url));
const dist = join(root, "dist");
const { NoTruncation, InTypeAlias, MultilineObjectLiterals } = ts.TypeFormatFlags;
const WHOLE = (NoTruncation | InTypeAlias | MultilineObjectLiterals) as ts.TypeFormatFlags;
const IMPORTED = /(from |import\()"(\.{1,2}\/[^"]+)\.js"/g;

const config = ts.getParsedCommandLineOfConfigFile(join(root, ".config/tsconfig.build.json"), undefined, {
  ...ts.sys,
  onUnRecoverableConfigFileDiagnostic: ({ messageText }) => {
    throw new Error(ts.flattenDiagnosticMessageText(messageText, "\n"));
  },
})!;
const program = ts.createProgram(config.fileNames, config.options);
const checker = program.getTypeChecker();

const written = new Map<string, string>();
const { diagnostics } = program.emit(
  undefined,
  (path, text, _mark, _onError, sources) => written.set(path, withoutSchemas(text, sources![0]!)),
  undefined,
  true,
);
if (diagnostics.length > 0) {
  throw new Error(diagnostics.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, "\n")).join("\n"));
}

const reached = new Set(Object.keys(entries()).map((name) => join(dist, `${name}.d.ts`)));
for (const path of reached) {
  const text = written.get(path);
  if (text === undefined) throw new Error(`${path} is imported and was not written`);
  for (const [, , name] of text.matchAll(IMPORTED)) reached.add(join(dirname(path), `${name!}.d.ts`));
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
  // A relative import of the twin for CommonJS names a `.cjs` file.
  writeFileSync(path.replace(/\.d\.ts$/, ".d.cts"), text.replace(IMPORTED, '$1"$2.cjs"'));
}

/** A declaration file with its schemas dropped and the types that follow from them written out. */
function withoutSchemas(text: string, source: ts.SourceFile): string {
  const file = ts.createSourceFile("file.d.ts", text, ts.ScriptTarget.Latest, true);
  const library = file.statements.find(
    (statement) => ts.isImportDeclaration(statement) && /^"zod\b/.test(statement.moduleSpecifier.getText()),
  );
  if (!library) return text;
  const kept = file.statements
    .filter((statement) => statement !== library)
    .map((statement) => {
      const whole = statement.getFullText();
      if (!/\bz\.\w/.test(statement.getText())) return whole;
      if (!ts.isTypeAliasDeclaration(statement)) return "";
      const start = statement.type.getFullStart() - statement.getFullStart();
      return `${whole.slice(0, start)} ${writtenOut(statement.name.text, source)};`;
    });
  return kept.join("");
}

/** What a type alias of a source file stands for. */
function writtenOut(name: string, source: ts.SourceFile): string {
  const alias = source.statements.filter(ts.isTypeAliasDeclaration).find((statement) => statement.name.text === name)!;
  const text = checker.typeToString(checker.getTypeAtLocation(alias.name), alias, WHOLE);
  // The compiler prints a line break as nothing, but keeps the indentation that follows it.
  const inLines = text.replace(/([{;])( {4,})/g, "$1\n$2");
  return inLines.replace(/import\("([^"]+)"\)/g, (_, path: string) => {
    const from = relative(dirname(source.fileName), path);
    return `import("${from.startsWith(".") ? from : `./${from}`}.js")`;
  });
}
