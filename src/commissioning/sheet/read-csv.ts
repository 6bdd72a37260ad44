import { nearestName, type Problem } from "../../quantity/index.js";
import { csvLines } from "./csv.js";
import { finishSheet, problem, readReadings, type ReadSheet } from "./read-sheet.js";
import { SHEET_COLUMNS } from "./write-csv.js";

const DUE = ["at", "reading", "value"] as const;

/**
 * Reads a filled-in measurement sheet from comma- or semicolon-separated text, without throwing. The first line names the
 * columns: `at`, `reading` and `value` are due, `unit` and `note` may be there, what the blank sheet prints beside them is
 * passed over. An empty value is a reading that was not taken; a decimal comma is refused, never guessed at.
 *
 * @param text - the text of the file
 * @example
 * ```ts
 * import { readSheetCsv } from "pv-to-grid/commissioning";
 * const read = readSheetCsv("at,reading,unit,value\nINV1/A,openCircuitVoltage,V,521.4\n");
 * read.ok && read.sheet.readings[0]!.value!.text; // "521.4"
 * ```
 */
export function readSheetCsv(text: string): ReadSheet {
  const problems: Problem[] = [];
  const content = text.replace(/^\uFEFF/, "");
  const first = content.split(/\r?\n/, 1)[0]!;
  const separator = first.split(";").length > first.split(",").length ? ";" : ",";
  const [head, ...lines] = csvLines(content, separator, problems);
  const columns = head?.cells ?? [];
  for (const name of DUE) {
    if (!columns.includes(name))
      problems.push(problem("line 1", "missing", `the column ${name} is missing`, DUE.join(", "), columns.join(" ")));
  }
  for (const [index, name] of columns.entries()) {
    if (columns.indexOf(name) !== index)
      problems.push(problem("line 1", "contradiction", `the column ${name} stands twice`, "each column once", name));
    if ((SHEET_COLUMNS as readonly string[]).includes(name)) continue;
    const near = nearestName(name, SHEET_COLUMNS);
    const message = `${name || "an empty name"} is not a column of the sheet${near ? `; did you mean ${near}?` : ""}`;
    problems.push(problem("line 1", "unknown-key", message, SHEET_COLUMNS.join(", "), name));
  }
  if (problems.length > 0) return finishSheet(EMPTY, problems);
  const readings = lines.flatMap(({ number, cells }) => {
    const path = `line ${number}`;
    if (cells.length > columns.length) {
      problems.push(
        problem(
          path,
          "not-readable",
          "more cells than columns; a decimal comma?",
          `${columns.length} cells`,
          cells.join(" "),
        ),
      );
      return [];
    }
    const cell = (name: string): string => cells[columns.indexOf(name)] ?? "";
    return [
      { path, at: cell("at"), reading: cell("reading"), value: cell("value"), unit: cell("unit"), note: cell("note") },
    ];
  });
  return finishSheet({ ...EMPTY, readings: readReadings(readings, problems) }, problems);
}

const EMPTY = { plant: null, date: null, by: null, readings: [] };
