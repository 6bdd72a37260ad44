import { given, type Quantity } from "../../quantity/index.js";
import { unreadable } from "./hourly-extremes.js";

/** The site of a weather file, as its header states it. */
export interface EpwLocation {
  readonly name: string;
  readonly region: string;
  readonly country: string;
  readonly source: string;
  /** Number of the station. */
  readonly station: string;
  readonly latitude: string;
  readonly longitude: string;
  readonly elevation: string;
}

/** The design conditions of a weather file's header. */
export interface DesignConditions {
  /** What the header names as their source, edition included. */
  readonly statedIn: string;
  readonly meanAnnualMinimum: Quantity<"temperature">;
  readonly meanAnnualMaximum: Quantity<"temperature">;
  readonly deviationOfMinimum: Quantity<"temperatureDifference">;
  readonly deviationOfMaximum: Quantity<"temperatureDifference">;
}

const FILE = "climate/read-epw";

function fieldsOf(line: string): readonly string[] {
  return line.split(",").map((field) => field.trim());
}

/** Reads the first line of the header. @internal */
export function readLocation(line: string): EpwLocation {
  const fields = fieldsOf(line);
  if (fields.length < 10) throw unreadable(FILE, 1, "the line is cut short", "10 fields", `${fields.length} fields`);
  const [, name, region, country, source, station, latitude, longitude, , elevation] = fields as [string, ...string[]];
  return Object.freeze({
    name: name!,
    region: region!,
    country: country!,
    source: source!,
    station: station!,
    latitude: latitude!,
    longitude: longitude!,
    elevation: elevation!,
  });
}

/**
 * Reads the design conditions in the second line: after the word Extremes come three wind speeds, a wet-bulb
 * temperature, then the mean annual minimum and maximum and their standard deviations (recalled, not read).
 *
 * @internal
 */
export function readDesignConditions(line: string): DesignConditions | null {
  const fields = fieldsOf(line);
  const at = fields.findIndex((field) => field.toLowerCase() === "extremes");
  if (fields[1] === "0" || at < 0) return null;
  const texts = fields.slice(at + SKIPPED + 1, at + SKIPPED + 5);
  if (texts.length < 4 || texts.some((text) => text === "" || !Number.isFinite(Number(text)))) {
    const expected = "four numbers: mean annual minimum and maximum, and their standard deviations";
    throw unreadable(FILE, 2, "the extremes of the design conditions cannot be read", expected, texts.join(", "));
  }
  const [low, high, lowDeviation, highDeviation] = texts as [string, string, string, string];
  if (Number(low) >= Number(high)) {
    throw unreadable(
      FILE,
      2,
      "the mean annual minimum is not below the maximum",
      "minimum, then maximum",
      `${low}, ${high}`,
    );
  }
  const statedIn = fields[2] === undefined || fields[2] === "" ? "design conditions of the weather file" : fields[2];
  return Object.freeze({
    statedIn,
    meanAnnualMinimum: given(`${low} °C`, "°C", statedIn),
    meanAnnualMaximum: given(`${high} °C`, "°C", statedIn),
    deviationOfMinimum: given(`${lowDeviation} K`, "K", statedIn),
    deviationOfMaximum: given(`${highDeviation} K`, "K", statedIn),
  });
}

/** Three wind speeds and a wet-bulb temperature stand before the dry-bulb extremes. */
const SKIPPED = 4;
