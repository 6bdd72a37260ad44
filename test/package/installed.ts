/** Packs the package once and installs the tarball in two empty projects, one of each format, as a user would; and beside them the compilers of users. */
import { execFile } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import type { TestProject } from "vitest/node";
import { root } from "../harness/built.js";
import { COMPILERS } from "./compilers.js";

const run = promisify(execFile);

const QUIETLY = ["--prefer-offline", "--no-audit", "--no-fund", "--ignore-scripts"];

declare module "vitest" {
  interface ProvidedContext {
    /** Paths of the tarball, of the two projects that it is installed in, and of the project with the compilers. */
    installed: {
      readonly tarball: string;
      readonly module: string;
      readonly commonjs: string;
      readonly compilers: string;
    };
  }
}

export default async function installPackage({ provide }: TestProject): Promise<() => void> {
  const place = mkdtempSync(join(tmpdir(), "pv-to-grid-"));
  const packed = await run("npm", ["pack", "--ignore-scripts", "--silent", "--pack-destination", place], { cwd: root });
  const tarball = join(place, packed.stdout.trim().split("\n").at(-1)!);
  const project = async (name: string, fields: object, ...packages: string[]): Promise<string> => {
    const path = join(place, name);
    mkdirSync(path);
    writeFileSync(join(path, "package.json"), JSON.stringify({ name: `an-app-of-${name}`, private: true, ...fields }));
    await run("npm", ["install", ...QUIETLY, ...packages], { cwd: path });
    return path;
  };
  const [module, commonjs, compilers] = await Promise.all([
    project("module", { type: "module" }, tarball),
    project("commonjs", { type: "commonjs" }, tarball),
    // Not among the development dependencies, where their commands would stand in for the project's own compiler.
    project("compilers", {}, ...COMPILERS.map((version) => `typescript-${version}@npm:typescript@${version}`)),
  ]);
  provide("installed", { tarball, module, commonjs, compilers });
  return () => rmSync(place, { recursive: true });
}
