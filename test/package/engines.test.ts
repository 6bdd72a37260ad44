/** The demo's records, byte by byte the same by every engine that the library is for. */
import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { chromium as browsers } from "playwright-core";
import { beforeAll, describe, expect, inject, it } from "vitest";
import { chromium, FLAGS } from "../browser/chromium.js";
import { root } from "../harness/built.js";

const SLOW = 180_000;
const NEWER_NODE = "24";

const plants = readdirSync(join(root, "shared/plants"))
  .sort()
  .map((name) => readFileSync(join(root, "shared/plants", name), "utf8"));

const APP = `
  import { sizePlant } from "pv-to-grid";
  export const records = JSON.stringify(${JSON.stringify(plants)}.map((text) => sizePlant(JSON.parse(text))));`;

/** The app as one file, which any engine can run. */
async function appOf(use: string): Promise<string> {
  const stdin = { contents: APP + use, resolveDir: inject("installed").module };
  const { outputFiles } = await build({ stdin, bundle: true, format: "esm", platform: "browser", write: false });
  return outputFiles[0]!.text;
}

describe("the records of the demo", () => {
  let file = "";
  let here = "";
  const by = (command: string, args: readonly string[]): string =>
    execFileSync(command, [...args, file], { encoding: "utf8", maxBuffer: 2 ** 28 });

  beforeAll(async () => {
    file = join(inject("installed").module, "records.js");
    writeFileSync(file, await appOf("console.log(records);"));
    here = by(process.execPath, []).trim();
  }, SLOW);

  it("are of every plant", () => {
    expect(JSON.parse(here)).toHaveLength(plants.length);
  });

  it(
    "are the same by the newest long-term Node.js",
    () => {
      const node = ["-y", "--prefer-offline", "-p", `node@${NEWER_NODE}`, "node"];
      expect(execFileSync("npx", [...node, "--version"], { encoding: "utf8" })).toMatch(`v${NEWER_NODE}.`);
      expect(by("npx", node).trim() === here).toBe(true);
    },
    SLOW,
  );

  it(
    "are the same in a browser",
    async () => {
      const browser = await browsers.launch({ executablePath: chromium(), args: FLAGS });
      try {
        const page = await browser.newPage();
        await page.addScriptTag({ type: "module", content: await appOf("globalThis.records = records;") });
        expect((await page.evaluate("globalThis.records")) === here).toBe(true);
      } finally {
        await browser.close();
      }
    },
    SLOW,
  );
});
