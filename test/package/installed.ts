/** Packs the package once and installs the tarball in two empty projects, one of each format, as a user would. */
import { execFile } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import type { TestProject } from "vitest/node";
import { root } from "../harness/built.js";

const run = promisify(execFile);

declare module "vitest" {
  interface ProvidedContext {
    /** Paths of the tarball and of the two projects that it is installed in. */
    installed: { readonly tarball: string; readonly module: string; readonly commonjs: string };
  }
}

export default async function installPackage({ provide }: TestProject): Promise<() => void> {
  const place = mkdtempSync(join(tmpdir(), "pv-to-grid-"));
  const packed = await run("npm", ["pack", "--ignore-scripts", "--silent", "--pack-destination", place], { cwd: root });
  const tarball = join(place, packed.stdout.trim().split("\n").at(-1)!);
  const project = async (type: "module" | "commonjs"): Promise<string> => {
    const path = join(place, type);
    mkdirSync(path);
    writeFileSync(join(path, "package.json"), JSON.stringify({ name: `an-app-in-${type}`, private: true, type }));
    await run("npm", ["install", "--prefer-offline", "--no-audit", "--no-fund", "--ignore-scripts", tarball], {
      cwd: path,
    });
    return path;
  };
  const [module, commonjs] = await Promise.all([project("module"), project("commonjs")]);
  provide("installed", { tarball, module, commonjs });
  return () => rmSync(place, { recursive: true });
}
