import type { Problem } from "../../quantity/index.js";
import { READINGS_FORMAT } from "./measurement-sheet.js";
import { finishSheet, problem, type RawReading, readReadings, type ReadSheet, shown } from "./read-sheet.js";

const KEYS = ["format", "plant", "date", "by", "readings", "$schema"];
const KEYS_OF_READING = ["at", "reading", "value", "note"];

/**
 * Reads a filled-in measurement sheet from JSON text or from an object, without throwing. A value that is absent, null or
 * empty text is a reading that was not taken.
 *
 * @param source - JSON text, or what `JSON.parse` returned
 * @example
 * ```ts
 * import { readSheetJson } from "pv-to-grid/commissioning";
 * const read = readSheetJson('{ "format": "pv-to-grid/readings@1", "readings": [{ "at": "INV1/A", "reading": "openCircuitVoltage", "value": "521.4 V" }] }');
 * read.ok && read.sheet.readings[0]!.value!.text; // "521.4"
 * ```
 */
export function readSheetJson(source: unknown): ReadSheet {
  const problems: Problem[] = [];
  let input = source;
  if (typeof source === "string") {
    try {
      input = JSON.parse(source.replace(/^\uFEFF/, "")) as unknown;
    } catch (error) {
      const message = `this is not JSON: ${(error as Error).message}`;
      return finishSheet(EMPTY, [problem("", "not-readable", message, "JSON text", source)]);
    }
  }
  if (!isObject(input))
    return finishSheet(EMPTY, [problem("", "wrong-type", "a measurement sheet is one object", "an object", input)]);
  if (input["format"] !== READINGS_FORMAT)
    problems.push(problem("format", "not-in-list", `must be ${READINGS_FORMAT}`, READINGS_FORMAT, input["format"]));
  refuseUnknown(input, KEYS, "", problems);
  const heading = (key: "plant" | "date" | "by"): string | null => {
    const value = input[key];
    if (value === undefined || value === null) return null;
    if (typeof value === "string") return value;
    problems.push(problem(key, "wrong-type", "is text", "text", value));
    return null;
  };
  const sheet = { plant: heading("plant"), date: heading("date"), by: heading("by") };
  return finishSheet({ ...sheet, readings: readReadings(linesOf(input["readings"], problems), problems) }, problems);
}

const EMPTY = { plant: null, date: null, by: null, readings: [] };

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function refuseUnknown(object: object, known: readonly string[], path: string, problems: Problem[]): void {
  for (const [key, value] of Object.entries(object)) {
    if (known.includes(key)) continue;
    problems.push(
      problem(
        path === "" ? key : `${path}.${key}`,
        "unknown-key",
        `${shown(key)} is not known here`,
        known.join(", "),
        value,
      ),
    );
  }
}

function linesOf(readings: unknown, problems: Problem[]): readonly RawReading[] {
  if (!Array.isArray(readings)) {
    problems.push(
      problem(
        "readings",
        readings === undefined ? "missing" : "wrong-type",
        "the readings are a list",
        "a list",
        readings,
      ),
    );
    return [];
  }
  return readings.flatMap((line: unknown, index) => {
    const path = `readings[${index}]`;
    if (!isObject(line)) {
      problems.push(problem(path, "wrong-type", "a reading is one object", "an object", line));
      return [];
    }
    refuseUnknown(line, KEYS_OF_READING, path, problems);
    return [{ path, at: line["at"], reading: line["reading"], value: line["value"], note: line["note"] }];
  });
}
