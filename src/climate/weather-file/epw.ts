import { type DesignConditions, type EpwLocation, readDesignConditions, readLocation } from "./epw-header.js";
import { ExtremeGatherer, type HourlyExtremes, unreadable } from "./hourly-extremes.js";
import { type Line, linesOf, type TextChunks } from "./lines.js";

/** What an hourly weather file of building simulation (EPW) says of a site's temperatures. */
export interface EpwTemperatures extends HourlyExtremes {
  readonly location: EpwLocation;
  /** The design conditions of its header; `null` where the header has none. */
  readonly designConditions: DesignConditions | null;
}

const FILE = "climate/read-epw";
const HEADER_LINES = 8;
const FIELDS = 35;
const DRY_BULB = 6;
const DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Reads an hourly weather file of building simulation (EPW): the extremes of its hours and the design conditions of its
 * header. A typical year smooths the extremes out: its lowest hour is no design temperature, the header's mean is.
 *
 * @param chunks - the text of the file, whole or in pieces as a stream yields them
 * @throws InputError with the number of the line that is cut short, not a number, out of order or missing
 * @example
 * ```ts
 * import { readEpw } from "pv-to-grid/climate";
 * const read = async (stream: AsyncIterable<string>) => (await readEpw(stream)).designConditions?.meanAnnualMinimum;
 * ```
 */
export async function readEpw(chunks: TextChunks): Promise<EpwTemperatures> {
  const header: string[] = [];
  const hours = new HourlyRows();
  for await (const lines of linesOf(chunks)) {
    for (const line of lines) {
      if (header.length < HEADER_LINES) header.push(headerLine(line, header.length));
      else if (line.text !== "") hours.add(line);
    }
  }
  if (header.length < HEADER_LINES) {
    throw unreadable(
      FILE,
      0,
      "the file ends inside its header",
      `${HEADER_LINES} lines of header`,
      `${header.length} lines`,
    );
  }
  const extremes = hours.finish();
  return Object.freeze({
    ...extremes,
    location: readLocation(header[0]!),
    designConditions: readDesignConditions(header[1]!),
  });
}

const NAMES = [
  "LOCATION",
  "DESIGN CONDITIONS",
  "TYPICAL/EXTREME PERIODS",
  "GROUND TEMPERATURES",
  "HOLIDAYS/DAYLIGHT SAVINGS",
  "COMMENTS 1",
  "COMMENTS 2",
  "DATA PERIODS",
];

function headerLine({ text, number }: Line, at: number): string {
  const due = NAMES[at]!;
  const named = text.replace(/^\ufeff/, "").toUpperCase();
  if (named.startsWith(due) || named.startsWith(due.replace("SAVINGS", "SAVING"))) return text;
  throw unreadable(FILE, number, `the header must have ${due} here`, due, text);
}

/** The hours of the file, one after another. */
class HourlyRows {
  readonly #extremes = new ExtremeGatherer(FILE, "°C");
  #before: { readonly month: number; readonly day: number; readonly hour: number } | undefined;

  add({ text, number }: Line): void {
    const fields = text.split(",");
    if (fields.length < FIELDS) {
      throw unreadable(FILE, number, "the row is cut short", `${FIELDS} fields`, `${fields.length} fields`);
    }
    const [month, day, hour] = [Number(fields[1]), Number(fields[2]), Number(fields[3])];
    if (!this.#follows(month, day, hour)) {
      throw unreadable(
        FILE,
        number,
        "the hour does not follow that of the row before",
        this.#due(),
        `month ${fields[1]}, day ${fields[2]}, hour ${fields[3]}`,
      );
    }
    this.#extremes.add(fields[DRY_BULB]!, number);
    this.#before = { month, day, hour };
  }

  #follows(month: number, day: number, hour: number): boolean {
    const { month: m, day: d, hour: h } = this.#before ?? { month: 12, day: 31, hour: 24 };
    if (h < 24) return month === m && day === d && hour === h + 1;
    if (hour !== 1) return false;
    const last = d === DAYS[m - 1] || (m === 2 && d === 28);
    if (last && day === 1 && month === (m % 12) + 1) return true;
    return month === m && day === d + 1 && d < DAYS[m - 1]!;
  }

  #due(): string {
    const { month, day, hour } = this.#before ?? { month: 12, day: 31, hour: 24 };
    return `the hour after month ${month}, day ${day}, hour ${hour}`;
  }

  finish(): HourlyExtremes {
    return this.#extremes.finish();
  }
}
