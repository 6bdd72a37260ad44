import { readFileSync, statSync } from "node:fs";
import { EXIT, Failure } from "../exit.js";
import { reasonOf } from "./system-error.js";

/** Name under which messages speak of standard input. */
export const STANDARD_INPUT = "standard input";

const LARGEST = 64 * 1024 * 1024;

/** Text of a file, or of standard input for `-`. */
export async function readText(path: string): Promise<{ readonly name: string; readonly text: string }> {
  const name = path === "-" ? STANDARD_INPUT : path;
  const bytes = path === "-" ? await readStandardInput() : readFile(path);
  return { name, text: decoded(bytes, name) };
}

function readFile(path: string): Uint8Array {
  try {
    const { size } = statSync(path);
    if (size > LARGEST) throw tooLarge(path);
    return readFileSync(path);
  } catch (error) {
    if (error instanceof Failure) throw error;
    throw new Failure(`${path}: cannot be read: ${reasonOf(error)}`, EXIT.failedToReadOrWrite);
  }
}

async function readStandardInput(): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let size = 0;
  try {
    for await (const chunk of process.stdin as AsyncIterable<Buffer>) {
      size += chunk.length;
      if (size > LARGEST) throw tooLarge(STANDARD_INPUT);
      chunks.push(chunk);
    }
  } catch (error) {
    if (error instanceof Failure) throw error;
    throw new Failure(`${STANDARD_INPUT}: cannot be read: ${reasonOf(error)}`, EXIT.failedToReadOrWrite);
  }
  return Buffer.concat(chunks);
}

function tooLarge(name: string): Failure {
  return new Failure(`${name}: larger than ${LARGEST / 1024 / 1024} MiB; this is no plant description`, EXIT.badInput);
}

const MARKS = [
  { name: "UTF-32", bytes: [0xff, 0xfe, 0x00, 0x00] },
  { name: "UTF-32", bytes: [0x00, 0x00, 0xfe, 0xff] },
  { name: "UTF-16", bytes: [0xff, 0xfe] },
  { name: "UTF-16", bytes: [0xfe, 0xff] },
] as const;

/** Bytes as UTF-8 text, a byte-order mark taken off; another encoding is refused by name, never guessed. */
export function decoded(bytes: Uint8Array, name: string): string {
  const mark = MARKS.find((known) => known.bytes.every((byte, at) => bytes[at] === byte));
  const zero = bytes.subarray(0, 64).includes(0);
  if (mark || zero)
    throw new Failure(`${name}: this is ${mark?.name ?? "UTF-16 or binary"}; save it as UTF-8`, EXIT.badInput);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new Failure(`${name}: this is not UTF-8 (Windows-1252 or Latin-1, perhaps); save it as UTF-8`, EXIT.badInput);
  }
}

/** The JSON of a text; a fault names the line and column, and says where a file ends too early. */
export function parsed(text: string, name: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    if (text.trim() === "") throw new Failure(`${name}: there is nothing in it`, EXIT.badInput);
    const at = /position (\d+)/.exec(message)?.[1];
    const ended = at === undefined ? message.includes("end of JSON") : Number(at) >= text.trimEnd().length;
    const place = at === undefined || ended ? "" : ` at ${lineAndColumn(text, Number(at))}`;
    const why = ended
      ? "it ends too early; was it cut off?"
      : message.replace(/ \(line \d+ column \d+\)$/, "").replace(/ in JSON at position \d+.*$/s, "");
    throw new Failure(`${name}: this is not JSON${place}: ${why}`, EXIT.badInput);
  }
}

function lineAndColumn(text: string, position: number): string {
  const lines = text.slice(0, position).split("\n");
  return `line ${lines.length}, column ${lines.at(-1)!.length + 1}`;
}
