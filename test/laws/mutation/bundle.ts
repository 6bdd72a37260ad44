import { build, type Plugin } from "esbuild";
import { existsSync, readdirSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));
const root = resolve(here, "../../..");

// Laws compare a rule with its own declaration, and packages and formats know no rule: none of them judges one.
const NOT_JUDGES = [
  "laws",
  "examples",
  "cli",
  "browser",
  "evidence",
  "catalogue",
  "bundling",
  "package",
  "harness",
  "formula",
  "quantity",
  "report",
];

/** The test files whose tests judge the rules of a subject, or of all. */
export function judgingFiles(subject: string | null): readonly string[] {
  return readdirSync(join(root, "test"), { withFileTypes: true })
    .filter(
      (entry) => entry.isDirectory() && (subject === null ? !NOT_JUDGES.includes(entry.name) : entry.name === subject),
    )
    .flatMap(({ name }) =>
      readdirSync(join(root, "test", name), { recursive: true, encoding: "utf8" }).map((path) =>
        join(root, "test", name, path),
      ),
    )
    .filter((path) => path.endsWith(".test.ts"))
    .concat(join(root, "test/laws/limits.test.ts"))
    .sort();
}

const LIVE = ["formula", "condition", "table", "model"];

/** Puts the live makers in the place of the kernel's and the collector in the place of the test runner. */
const liveRules: Plugin = {
  name: "live rules",
  setup(building) {
    building.onResolve({ filter: /^(vitest|@fast-check\/vitest)$/ }, () => ({ path: join(here, "collector.ts") }));
    building.onResolve({ filter: /^pv-to-grid(\/|$)/ }, ({ path }) => {
      const name = path.split("/")[1];
      return { path: join(root, "src", name ?? "", "index.ts") };
    });
    building.onResolve({ filter: /^\.{1,2}\/.*\.js$/ }, ({ path, resolveDir, importer }) => {
      const file = resolve(resolveDir, path.replace(/\.js$/, ".ts"));
      if (!existsSync(file)) return undefined;
      const maker = LIVE.find((name) => file === join(root, "src/formula", `${name}.ts`));
      if (maker === undefined || importer.startsWith(join(here, "live"))) return { path: file };
      return { path: join(here, "live", `${maker}.ts`) };
    });
    building.onLoad({ filter: /\/test\/.*\.ts$/ }, async ({ path }) => {
      const text = await readFile(path, "utf8");
      return { contents: text.replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href)), loader: "ts" };
    });
  },
};

/** Bundles the judging test files with the worker that runs them; gives the path of the bundle. */
export async function bundleJudges(outfile: string, subject: string | null): Promise<void> {
  const imports = judgingFiles(subject).map(
    (path) => `begin(${JSON.stringify(path.slice(root.length + 1))}); await import(${JSON.stringify(path)});`,
  );
  await build({
    stdin: {
      contents: `import { begin, serve } from "./worker.ts";\n${imports.join("\n")}\nserve();`,
      resolveDir: here,
      sourcefile: "judges.ts",
      loader: "ts",
    },
    outfile,
    bundle: true,
    format: "esm",
    platform: "node",
    target: "node20",
    packages: "external",
    plugins: [liveRules],
    logLevel: "error",
  });
}
