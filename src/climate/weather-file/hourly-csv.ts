import { InputError } from "../../quantity/index.js";
import { ExtremeGatherer, type HourlyExtremes, unreadable } from "./hourly-extremes.js";
import { linesOf, type TextChunks } from "./lines.js";

/** How a plain hourly file is laid out; nothing is guessed. */
export interface CsvLayout {
  /** Name of the column with the dry-bulb temperature, as the first line has it. */
  readonly column: string;
  readonly unit: "°C" | "°F";
  readonly separator: "," | ";" | "\t";
}

const FILE = "climate/read-hourly-csv";

/**
 * Reads a plain hourly file: one line of names, then one line an hour over whole years.
 *
 * @param chunks - the text of the file, whole or in pieces as a stream yields them
 * @throws InputError with the number of the line that is cut short or not a number, or where the file ends inside a year
 * @example
 * ```ts
 * import { readHourlyCsv } from "pv-to-grid/climate";
 * const text = ["hour;t_air", ...Array.from({ length: 8760 }, (_, hour) => `${hour};${hour === 300 ? "-14.2" : "8.1"}`)].join("\n");
 * const { lowest } = await readHourlyCsv(text, { column: "t_air", unit: "°C", separator: ";" });
 * lowest.line; // 302
 * ```
 */
export async function readHourlyCsv(
  chunks: TextChunks,
  { column, unit, separator }: CsvLayout,
): Promise<HourlyExtremes> {
  const extremes = new ExtremeGatherer(FILE, unit);
  let names: readonly string[] | undefined;
  let at = -1;
  for await (const lines of linesOf(chunks)) {
    for (const { text, number } of lines) {
      if (text.trim() === "") continue;
      const fields = text.split(separator).map(unquoted);
      if (!names) {
        names = [fields[0]!.replace(/^\ufeff/, ""), ...fields.slice(1)];
        at = names.indexOf(column);
        if (at < 0) throw noColumn(column, names);
      } else if (fields.length !== names.length) {
        throw unreadable(
          FILE,
          number,
          "the row does not have the fields of the first line",
          `${names.length} fields`,
          `${fields.length} fields`,
        );
      } else extremes.add(fields[at]!, number);
    }
  }
  return extremes.finish();
}

function unquoted(field: string): string {
  return field.trim().replace(/^"(.*)"$/, "$1");
}

function noColumn(column: string, names: readonly string[]): InputError {
  const expected = `one of ${names.join(", ")}`;
  return new InputError(FILE, [
    { path: "column", code: "not-in-list", message: "the first line has no such name", expected, received: column },
  ]);
}
