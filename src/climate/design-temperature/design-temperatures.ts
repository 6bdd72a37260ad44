import { type Known, type Missing, missing, whenKnown } from "../../formula/index.js";
import { given, InputError, type Input, type Quantity } from "../../quantity/index.js";
import { returnPeriodMaximum } from "../return-period/return-period-maximum.js";
import { returnPeriodMinimum } from "../return-period/return-period-minimum.js";
import { designTemperaturePractices, type DesignTemperaturePractice } from "./practices.js";
import { regionalDesignTemperature } from "./regional-design-temperature.js";

type Temperature = Known<Input<"temperature">> | undefined;
type Deviation = Known<Input<"temperatureDifference">> | undefined;

/** What is known of a site's extremes; each practice needs its own part of it. */
export interface SiteExtremes {
  readonly recordLow?: Temperature;
  readonly recordHigh?: Temperature;
  readonly meanAnnualMinimum?: Temperature;
  readonly meanAnnualMaximum?: Temperature;
  readonly deviationOfMinimum?: Deviation;
  readonly deviationOfMaximum?: Deviation;
  readonly returnPeriod?: Known<Input<"years">> | undefined;
  /** A row of `regionalDesignTemperature`. */
  readonly guide?: string | undefined;
  /** Where the values are from: the station, its period of record and edition. */
  readonly statedIn?: string | undefined;
}

/** The temperatures that a site is designed for, and the practice that chose them. */
export interface DesignTemperaturesOfSite {
  readonly practice: DesignTemperaturePractice;
  /** What the temperatures are of: a guide states those of the cells. */
  readonly of: "ambient" | "cells";
  readonly coldest: Known<Quantity<"temperature">>;
  readonly hottest: Known<Quantity<"temperature">>;
}

/**
 * The design temperatures of a site by a practice that the caller names; there is no default. What a practice needs and
 * the site does not state is missing.
 *
 * @throws InputError where the practice is not one of `designTemperaturePractices`
 * @example
 * ```ts
 * import { designTemperatures } from "pv-to-grid/climate";
 * const site = { meanAnnualMinimum: "-17.3 °C", meanAnnualMaximum: "32.2 °C", statedIn: "station sheet, 1986 to 2010" };
 * designTemperatures("mean annual extreme", site).coldest; // -17.3 °C
 * designTemperatures("record", site).coldest; // {"missing":["site.recordLow"]}
 * ```
 */
export function designTemperatures(
  practice: DesignTemperaturePractice["key"],
  site: SiteExtremes,
): DesignTemperaturesOfSite {
  const chosen = designTemperaturePractices.find(({ key }) => key === practice);
  if (!chosen) {
    const expected = `one of ${designTemperaturePractices.map(({ key }) => key).join(", ")}`;
    throw new InputError("climate/design-temperatures", [
      { path: "practice", code: "not-in-list", message: `must be ${expected}`, expected, received: practice },
    ]);
  }
  return Object.freeze({
    practice: chosen,
    of: practice === "guide" ? "cells" : "ambient",
    ...extremesBy(practice, site),
  });
}

type Extremes = Pick<DesignTemperaturesOfSite, "coldest" | "hottest">;

function extremesBy(practice: DesignTemperaturePractice["key"], site: SiteExtremes): Extremes {
  const known = <T>(key: keyof SiteExtremes, value: T | undefined): T | Missing => value ?? missing(`site.${key}`);
  const stated = (key: keyof SiteExtremes, value: Temperature): Known<Quantity<"temperature">> =>
    whenKnown({ value: known(key, value) }, (found) => given(found.value, "°C", site.statedIn));
  switch (practice) {
    case "record":
      return { coldest: stated("recordLow", site.recordLow), hottest: stated("recordHigh", site.recordHigh) };
    case "mean annual extreme":
      return {
        coldest: stated("meanAnnualMinimum", site.meanAnnualMinimum),
        hottest: stated("meanAnnualMaximum", site.meanAnnualMaximum),
      };
    case "return period": {
      const returnPeriod = known("returnPeriod", site.returnPeriod);
      const cold = {
        meanAnnualMinimum: stated("meanAnnualMinimum", site.meanAnnualMinimum),
        standardDeviation: known("deviationOfMinimum", site.deviationOfMinimum),
        returnPeriod,
      };
      const hot = {
        meanAnnualMaximum: stated("meanAnnualMaximum", site.meanAnnualMaximum),
        standardDeviation: known("deviationOfMaximum", site.deviationOfMaximum),
        returnPeriod,
      };
      return { coldest: whenKnown(cold, returnPeriodMinimum), hottest: whenKnown(hot, returnPeriodMaximum) };
    }
    case "guide": {
      const guide = known("guide", site.guide);
      return {
        coldest: whenKnown({ guide }, (found) => regionalDesignTemperature({ ...found, extreme: "cold" })),
        hottest: whenKnown({ guide }, (found) => regionalDesignTemperature({ ...found, extreme: "hot" })),
      };
    }
  }
}
