/** Writes the parts of package.json that follow from the folders of `src/`, so that no subpath is ever forgotten. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = new URL("../", import.meta.url);
const has = (path: string): boolean => existsSync(new URL(path, root));

/** Every folder of `src/` with a public face; each is a subpath of its own name. */
export function subjects(): string[] {
  return readdirSync(new URL("src/", root), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && has(`src/${entry.name}/index.ts`))
    .map(({ name }) => name)
    .sort();
}

/** Entry points of the build, by their name in `dist/`. */
export function entries(): Record<string, string> {
  const paths = subjects().map((name) => `${name}/index`);
  if (has("src/index.ts")) paths.push("index");
  if (has(COMMAND_SOURCE)) paths.push("cli/main");
  return Object.fromEntries(paths.map((path) => [path, `src/${path}.ts`]));
}

const COMMAND_SOURCE = "src/cli/main.ts";

// Types first in each branch: TypeScript takes the first condition that fits.
function bothFormats(path: string): object {
  return {
    import: { types: `./dist/${path}.d.ts`, default: `./dist/${path}.js` },
    require: { types: `./dist/${path}.d.cts`, default: `./dist/${path}.cjs` },
  };
}

/** The generated fields of package.json. */
export function packageMap(): Record<string, unknown> {
  const names = subjects();
  const barrel = has("src/index.ts");
  return {
    ...(barrel && { main: "./dist/index.cjs", module: "./dist/index.js", types: "./dist/index.d.ts" }),
    ...(has(COMMAND_SOURCE) && { bin: { "pv-to-grid": "./dist/cli/main.js" } }),
    exports: {
      ...(barrel && { ".": bothFormats("index") }),
      ...Object.fromEntries(names.map((name) => [`./${name}`, bothFormats(`${name}/index`)])),
      ...(has("reference-data") && { "./reference-data/*": "./reference-data/*" }),
      "./package.json": "./package.json",
    },
    // The older Node resolution knows no `exports`.
    typesVersions: { "*": Object.fromEntries(names.map((name) => [name, [`./dist/${name}/index.d.ts`]])) },
  };
}

const GENERATED = ["main", "module", "types", "bin", "exports", "typesVersions"];
const AFTER = "engines";

/** The text of package.json with its generated fields renewed. */
export function renewed(text: string): string {
  const fields = Object.entries(JSON.parse(text) as Record<string, unknown>).filter(
    ([key]) => !GENERATED.includes(key),
  );
  const at = fields.findIndex(([key]) => key === AFTER) + 1;
  const all = [...fields.slice(0, at), ...Object.entries(packageMap()), ...fields.slice(at)];
  return `${JSON.stringify(Object.fromEntries(all), null, 2)}\n`;
}

export const packageFile = new URL("package.json", root);

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(packageFile, renewed(readFileSync(packageFile, "utf8")));
}
