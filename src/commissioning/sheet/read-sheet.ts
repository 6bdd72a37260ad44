import { InputError, nearestName, type Problem, type ProblemCode, readInput } from "../../quantity/index.js";
import { type ReadingKind, readingKind, readingKinds } from "../evaluation/reading-kinds.js";
import { type MeasurementSheet, READINGS_FORMAT, type SheetReading } from "./measurement-sheet.js";

/** A sheet that was read, or everything that is wrong with it. */
export type ReadSheet =
  | { readonly ok: true; readonly sheet: MeasurementSheet }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** One line of a sheet before its value is read. */
export interface RawReading {
  readonly path: string;
  readonly at: unknown;
  readonly reading: unknown;
  readonly value: unknown;
  /** Stands beside the value where the value has no unit of its own. */
  readonly unit?: string;
  readonly note: unknown;
}

/** Text about a value for a message. */
export function shown(value: unknown): string {
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object") return value === null ? "null" : "an object";
  const text =
    typeof value === "string"
      ? value
      : typeof value === "number" || typeof value === "boolean"
        ? `${value}`
        : "nothing";
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

/** A problem of a sheet. */
export function problem(path: string, code: ProblemCode, message: string, expected: string, value: unknown): Problem {
  return { path, code, message, expected, received: shown(value) };
}

/** Reads the lines of a sheet, and gathers every problem. */
export function readReadings(lines: readonly RawReading[], problems: Problem[]): readonly SheetReading[] {
  const seen = new Map<string, string>();
  return lines.flatMap((line) => {
    const { path } = line;
    const kind = kindOf(line, problems);
    if (typeof line.at !== "string") {
      problems.push(problem(`${path}.at`, "wrong-type", "names what the reading was taken on", "text", line.at));
      return [];
    }
    if (line.note !== undefined && line.note !== null && typeof line.note !== "string")
      problems.push(problem(`${path}.note`, "wrong-type", "a note is text", "text", line.note));
    if (!kind) return [];
    const identity = `${line.at}\n${kind.key}`;
    const before = seen.get(identity);
    if (before !== undefined) {
      const message = `${kind.key} of ${line.at || "the plant"} stands at ${before} already`;
      problems.push(problem(path, "contradiction", message, "one reading of a kind at a place", line.value));
      return [];
    }
    seen.set(identity, path);
    const value = valueOf(line, kind, problems);
    if (value === undefined) return [];
    const note = typeof line.note === "string" && line.note !== "" ? line.note : null;
    return [Object.freeze({ at: line.at, reading: kind.key, value, note })];
  });
}

function kindOf({ path, reading }: RawReading, problems: Problem[]): ReadingKind | undefined {
  const kind = typeof reading === "string" ? readingKind(reading) : undefined;
  if (kind) return kind;
  const known = readingKinds.map(({ key }) => key);
  const near = typeof reading === "string" ? nearestName(reading, known) : undefined;
  const message = `is not a reading of the sheet${near ? `; did you mean ${near}?` : ""}`;
  problems.push(
    problem(`${path}.reading`, reading === undefined ? "missing" : "not-in-list", message, known.join(", "), reading),
  );
  return undefined;
}

/** The value, `null` where it was left empty, `undefined` where it is a problem. */
function valueOf(
  { path, value, unit }: RawReading,
  kind: ReadingKind,
  problems: Problem[],
): SheetReading["value"] | undefined {
  if (value === null || value === undefined || (typeof value === "string" && value.trim() === "")) return null;
  const isBare = typeof value === "string" && /^[+\-\u2212\u2013]?[\d.,]+(?:[eE][+-]?\d+)?$/u.test(value.trim());
  const text = isBare && unit !== undefined && unit !== "" ? `${value.trim()} ${unit}` : value;
  const domain = kind.signed ? {} : { from: 0 };
  const reading = readInput(text, { unit: kind.unit, ...domain }, `${path}.value`, {
    kind: "given",
    statedIn: "measurement sheet",
  });
  if (reading.ok) return reading.quantity;
  problems.push(reading.problem);
  return undefined;
}

/** A frozen sheet, or its problems. */
export function finishSheet(sheet: Omit<MeasurementSheet, "format">, problems: readonly Problem[]): ReadSheet {
  if (problems.length > 0) return Object.freeze({ ok: false, problems: Object.freeze([...problems]) });
  const readings = Object.freeze([...sheet.readings]);
  return Object.freeze({ ok: true, sheet: Object.freeze({ format: READINGS_FORMAT, ...sheet, readings }) });
}

/** The sheet of what was read; throws one `InputError` with every problem. */
export function sheetOf(read: ReadSheet): MeasurementSheet {
  if (!read.ok) throw new InputError("measurement sheet", read.problems);
  return read.sheet;
}
