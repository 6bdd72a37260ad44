import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import type {
  Case,
  Change,
  ClauseEntry,
  Erratum,
  Guard,
  Lock,
  Terms,
  WrongRelease,
} from "../evidence/formats/index.js";

/** A file of reference data, with the subject that its folder or name says. */
export interface DataFile<T> {
  /** Path within its folder, with forward slashes. */
  readonly path: string;
  readonly subject: string;
  readonly content: T;
}

/** Everything that `reference-data/` holds, as it was read; a schema has not seen it yet. */
export interface ReferenceFiles {
  readonly cases: readonly DataFile<readonly Case[]>[];
  readonly guards: readonly DataFile<Guard>[];
  readonly errata: readonly DataFile<readonly Erratum[]>[];
  readonly terms: readonly DataFile<Terms>[];
  readonly clauses: readonly DataFile<readonly ClauseEntry[]>[];
  readonly wrongReleases: readonly WrongRelease[];
  readonly changes: readonly Change[];
  readonly lock: Lock | null;
}

/** A folder of the package, sought upwards from a file of it: sources and built files lie at different depths. */
export function folderOfPackage(fileUrl: string, name: string): string {
  let folder = dirname(fileURLToPath(fileUrl));
  while (!existsSync(join(folder, name)) && dirname(folder) !== folder) folder = dirname(folder);
  return join(folder, name);
}

/** Every JSON file below a folder, in the order of the alphabet; none where the folder is not there. */
export function readFolder(folder: string): readonly DataFile<unknown>[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((path) => path.split(sep).join("/"))
    .filter((path) => path.endsWith(".json"))
    .sort()
    .map((path) => ({ path, subject: path.split(/[/.]/)[0]!, content: readJson(join(folder, path)) }));
}

/** Reads one JSON file; a syntax error names the file. */
export function readJson(path: string): unknown {
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch (error) {
    throw new Error(`${relative(".", path)}: ${error instanceof Error ? error.message : String(error)}`);
  }
}

/** Reads the reference data of a folder. */
export function readReferenceFiles(folder: string): ReferenceFiles {
  const single = (name: string): unknown => (existsSync(join(folder, name)) ? readJson(join(folder, name)) : null);
  return {
    cases: readFolder(join(folder, "cases")) as ReferenceFiles["cases"],
    guards: readFolder(join(folder, "guards")) as ReferenceFiles["guards"],
    errata: readFolder(join(folder, "errata")) as ReferenceFiles["errata"],
    terms: readFolder(join(folder, "terms")) as ReferenceFiles["terms"],
    clauses: readFolder(join(folder, "clauses")) as ReferenceFiles["clauses"],
    wrongReleases: (single("wrong-releases.json") ?? []) as ReferenceFiles["wrongReleases"],
    changes: (single("changes.json") ?? []) as ReferenceFiles["changes"],
    lock: single("lock.json") as Lock | null,
  };
}
