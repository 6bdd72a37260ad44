/** What is in the tarball, and what the linters of packages say of it. */
import { execFileSync, spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { homedir, tmpdir } from "node:os";
import { join } from "node:path";
import { publint } from "publint";
import { formatMessage } from "publint/utils";
import { expect, inject, it } from "vitest";
import { root } from "../harness/built.js";

const AT_THE_TOP = ["CHANGELOG.md", "CITATION.cff", "LICENSE", "README.md", "package.json"];
const BELOW = /^(?:dist\/.+\.(?:js|cjs|d\.ts|d\.cts)|(?:reference-data|shared)\/.+\.(?:json|md))$/;

/** Paths of the packed files. */
function packed(): string[] {
  return execFileSync("tar", ["tzf", inject("installed").tarball], { encoding: "utf8" })
    .trim()
    .split("\n")
    .map((path) => path.replace(/^package\//, ""));
}

it("holds the build, the reference data, the schemas and the papers, and nothing else", () => {
  expect(packed().filter((path) => !AT_THE_TOP.includes(path) && !BELOW.test(path))).toEqual([]);
});

it("names no place of the machine that built it", () => {
  const installed = join(inject("installed").module, "node_modules/pv-to-grid");
  const places = [root, homedir(), tmpdir()].map((place) => place.replace(/\/$/, "")).filter((place) => place !== "");
  // Whole folders from the top: `./one-diode/root.js` does not name the home of a user called root.
  const telling = new RegExp(`(?<![\\w.])(?:${places.join("|")})/|sourceMappingURL`);
  expect(packed().filter((path) => telling.test(readFileSync(join(installed, path), "utf8")))).toEqual([]);
});

it("asks nothing of the schema library from a user's compiler", () => {
  const installed = join(inject("installed").module, "node_modules/pv-to-grid");
  const declarations = packed().filter((path) => /\.d\.c?ts$/.test(path));
  expect(declarations.filter((path) => readFileSync(join(installed, path), "utf8").includes("zod"))).toEqual([]);
});

it("satisfies publint", async () => {
  const pkgDir = join(inject("installed").module, "node_modules/pv-to-grid");
  const { messages, pkg } = await publint({ pkgDir, strict: true, pack: false });
  expect(messages.map((message) => formatMessage(message, pkg))).toEqual([]);
});

// One function writes the map of every subpath alike, so that a few stand for all.
const SOME_SUBPATHS = [".", "quantity", "formula"];

it("has the right types for each way of importing", () => {
  const lint = join(root, "node_modules/.bin/attw");
  const options = ["--no-definitely-typed", "--format", "ascii", "--entrypoints", ...SOME_SUBPATHS, "--"];
  const { status, stdout } = spawnSync(lint, [...options, inject("installed").tarball], { encoding: "utf8" });
  expect(status, stdout).toBe(0);
});
