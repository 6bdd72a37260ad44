import { transformSync } from "esbuild";

/** A piece of example code, and where it stands. */
export interface Snippet {
  readonly file: string;
  readonly line: number;
  readonly code: string;
}

/** The TypeScript blocks of a text: of a Markdown page, or of the `@example` parts of a source file. */
export function snippetsOf(file: string, text: string): Snippet[] {
  const found: Snippet[] = [];
  const lines = text.split("\n");
  const comment = /^\s*\*? ?/;
  const clean = (line: string): string => (file.endsWith(".ts") ? line.replace(comment, "") : line);
  for (let at = 0; at < lines.length; at += 1) {
    if (!/^```ts\s*$/.test(clean(lines[at]!).trimEnd())) continue;
    const start = at + 1;
    at = lines.findIndex((line, index) => index > at && clean(line).startsWith("```"));
    found.push({ file, line: start + 1, code: lines.slice(start, at).map(clean).join("\n") });
  }
  return found;
}

/** What a snippet says beside an expression: the value that it should have, or a remark that only a person can check. */
export type Claim = (value: unknown, comment: string, code: string) => void;

type Run = (...values: unknown[]) => Promise<void>;

// The constructor of asynchronous functions has no global name.
const AsyncFunction = (async () => Promise.resolve()).constructor as new (...parts: string[]) => Run;

/** Runs a snippet; `claim` is called for every expression with a comment behind it. */
export async function runSnippet(
  { code }: Snippet,
  modules: Readonly<Record<string, object>>,
  scope: Readonly<Record<string, unknown>>,
  claim: Claim,
): Promise<void> {
  const claimed = code
    .split("\n")
    .map((line) => {
      const [, expression, comment] =
        /^(?!\s*(?:const|let|import|export|\/\/|[})\]]))(\S.*?);\s*\/\/ (.+)$/.exec(line) ?? [];
      return expression === undefined
        ? line
        : `claim((${expression}), ${JSON.stringify(comment)}, ${JSON.stringify(expression)});`;
    })
    .join("\n");
  const { code: plain } = transformSync(claimed, {
    loader: "ts",
    format: "esm",
    target: "es2022",
    tsconfigRaw: { compilerOptions: { verbatimModuleSyntax: false } },
  });
  const body = plain
    .replace(
      /^import \{([^}]*)\} from "([^"]+)";$/gm,
      (_, names: string, from: string) =>
        `const {${names.replace(/\bas\b/g, ":")}} = modules[${JSON.stringify(from)}];`,
    )
    .replace(/^export \{\s*\};$/gm, "");
  const names = Object.keys(scope).filter((name) => !new RegExp(`(?:const|let) (?:\\{[^}]*\\b)?${name}\\b`).test(body));
  await new AsyncFunction("modules", "claim", ...names, body)(modules, claim, ...names.map((name) => scope[name]));
}
