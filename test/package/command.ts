import { spawnSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { inject } from "vitest";

/** A plant that the project ships. */
export const plantFile = (name: string): string =>
  fileURLToPath(new URL(`../../shared/plants/${name}.json`, import.meta.url));

export const BAKERY = plantFile("village-bakery");

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly errors: string;
}

const LARGEST_OUTPUT = 64 * 1024 * 1024;

/** The command as npm has put it into a project. */
const command = (): string => join(inject("installed").module, "node_modules/.bin/pv-to-grid");

/** Runs the installed command, as a person or program would. */
export function run(args: readonly string[], input: string | Uint8Array = ""): Ran {
  const { status, stdout, stderr } = spawnSync(command(), args, { input, encoding: "utf8", maxBuffer: LARGEST_OUTPUT });
  return { code: status, out: stdout, errors: stderr };
}

/** Runs a line of shell with the command as `$PV`. */
export function shell(line: string): Ran {
  const env = { ...process.env, PV: command() };
  const { status, stdout, stderr } = spawnSync("bash", ["-c", line], { encoding: "utf8", env });
  return { code: status, out: stdout, errors: stderr };
}

/** A fresh folder. */
export const freshFolder = (): string => mkdtempSync(join(tmpdir(), "pv-to-grid-cli-"));
