import {
  closeSync,
  existsSync,
  fsyncSync,
  lstatSync,
  mkdirSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { EXIT, Failure } from "../exit.js";
import { reasonOf } from "./system-error.js";

/** What writing needs of the system; tests put a failing one in its place. */
export interface FileSystem {
  readonly open: (path: string) => number;
  readonly write: (file: number, bytes: Uint8Array) => number;
  readonly sync: (file: number) => void;
  readonly close: (file: number) => void;
  readonly rename: (from: string, to: string) => void;
  readonly remove: (path: string) => void;
}

const system: FileSystem = {
  // Fails where the name is taken, so that nobody else's file is overwritten on the way.
  open: (path) => openSync(path, "wx"),
  write: (file, bytes) => writeSync(file, bytes),
  sync: fsyncSync,
  close: closeSync,
  rename: renameSync,
  remove: (path) => rmSync(path, { force: true }),
};

/** Writes a whole file beside its place and renames it, so that a reader finds the old one or the new one, never a half. */
export function writeWhole(path: string, text: string, files: FileSystem = system): void {
  const place = targetOf(path);
  if (isSpecial(place)) {
    writeSpecial(place, text);
    return;
  }
  const beside = join(dirname(place), `.${basename(place)}.${process.pid}.part`);
  let file: number | undefined;
  try {
    file = files.open(beside);
    writeAll(files, file, Buffer.from(text, "utf8"));
    files.sync(file);
    files.close(file);
    file = undefined;
    files.rename(beside, place);
  } catch (error) {
    if (file !== undefined) attempt(() => files.close(file!));
    attempt(() => files.remove(beside));
    throw new Failure(`${path}: cannot be written: ${reasonOf(error)}`, EXIT.failedToReadOrWrite);
  }
}

/** The file behind a link, so that the link stays one. */
function targetOf(path: string): string {
  try {
    return existsSync(path) ? realpathSync(path) : path;
  } catch {
    return path;
  }
}

/** A device or pipe cannot be renamed over. */
function isSpecial(path: string): boolean {
  const kind = lstatSync(path, { throwIfNoEntry: false });
  return kind !== undefined && !kind.isFile() && !kind.isDirectory();
}

function writeSpecial(path: string, text: string): void {
  try {
    const file = openSync(path, "w");
    try {
      writeAll(system, file, Buffer.from(text, "utf8"));
    } finally {
      closeSync(file);
    }
  } catch (error) {
    throw new Failure(`${path}: cannot be written: ${reasonOf(error)}`, EXIT.failedToReadOrWrite);
  }
}

function writeAll(files: FileSystem, file: number, bytes: Uint8Array): void {
  for (let at = 0; at < bytes.length;) at += files.write(file, bytes.subarray(at));
}

function attempt(step: () => void): void {
  try {
    step();
  } catch {
    // The first failure is the one to report.
  }
}

/** Makes a folder and those above it. */
export function makeFolder(path: string): void {
  try {
    mkdirSync(path, { recursive: true });
  } catch (error) {
    throw new Failure(`${path}: cannot be made: ${reasonOf(error)}`, EXIT.failedToReadOrWrite);
  }
}
