import { given, InputError, type Quantity } from "../../quantity/index.js";

/** One extreme of the hours of a file. */
export interface HourlyExtreme {
  readonly temperature: Quantity<"temperature">;
  /** Line of the file, from 1. */
  readonly line: number;
}

/** The extremes of the hourly dry-bulb temperatures of a file. They are of its hours only, not of the site's record. */
export interface HourlyExtremes {
  readonly hours: number;
  readonly lowest: HourlyExtreme;
  readonly highest: HourlyExtreme;
}

/** What a weather file cannot be read for: a message with the line. @internal */
export function unreadable(
  file: string,
  line: number,
  message: string,
  expected: string,
  received: string,
): InputError {
  const place = line > 0 ? `line ${line}` : "end of file";
  return new InputError(file, [
    { path: place, code: "not-readable", message, expected, received: received.slice(0, 60) },
  ]);
}

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d{1,2})?$/;

/** Gathers the extremes hour by hour. @internal */
export class ExtremeGatherer {
  #hours = 0;
  #low = { value: Infinity, text: "", line: 0 };
  #high = { value: -Infinity, text: "", line: 0 };

  constructor(
    private readonly file: string,
    private readonly unit: "°C" | "°F",
  ) {}

  get hours(): number {
    return this.#hours;
  }

  add(field: string, line: number): void {
    const text = field.trim();
    const value = NUMBER.test(text) ? Number(text) : NaN;
    const [coldest, hottest] = ON_EARTH[this.unit];
    if (!(value >= coldest && value <= hottest)) {
      const expected = `a dry-bulb temperature of ${coldest} to ${hottest} ${this.unit}`;
      throw unreadable(this.file, line, "the dry-bulb temperature is missing or no such number", expected, text);
    }
    this.#hours += 1;
    if (value < this.#low.value) this.#low = { value, text, line };
    if (value > this.#high.value) this.#high = { value, text, line };
  }

  /** The extremes, once whole years have been read. */
  finish(): HourlyExtremes {
    const years = Math.floor(this.#hours / HOURS_OF_YEAR);
    const beyond = this.#hours - years * HOURS_OF_YEAR;
    if (years === 0 || beyond > HOURS_OF_DAY * years || beyond % HOURS_OF_DAY !== 0) {
      const expected = "whole years: 8760 hours each, 8784 in a leap year";
      throw unreadable(
        this.file,
        0,
        `the file ends inside a year, after ${this.#hours} hours`,
        expected,
        `${this.#hours} hours`,
      );
    }
    const extreme = ({ text, line }: { readonly text: string; readonly line: number }): HourlyExtreme =>
      Object.freeze({ temperature: given(`${text} ${this.unit}`, "°C", `hourly weather file, line ${line}`), line });
    return Object.freeze({ hours: this.#hours, lowest: extreme(this.#low), highest: extreme(this.#high) });
  }
}

const HOURS_OF_YEAR = 8760;
const HOURS_OF_DAY = 24;
/** Wider than what has ever been measured on earth; marks of missing values, such as 99.9 °C, lie outside. */
const ON_EARTH = { "°C": [-95, 65], "°F": [-140, 150] } as const;
