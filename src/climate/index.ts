/**
 * The temperatures that a site is designed for, and the weather files that they are read from.
 *
 * @packageDocumentation
 */
export { coldestNoWarmerThanMean } from "./design-temperature/coldest-no-warmer-than-mean.js";
export {
  designTemperatures,
  type DesignTemperaturesOfSite,
  type SiteExtremes,
} from "./design-temperature/design-temperatures.js";
export { type DesignTemperaturePractice, designTemperaturePractices } from "./design-temperature/practices.js";
export { regionalDesignTemperature } from "./design-temperature/regional-design-temperature.js";
export { returnPeriodFactor } from "./return-period/return-period-factor.js";
export { returnPeriodMaximum } from "./return-period/return-period-maximum.js";
export { returnPeriodMinimum } from "./return-period/return-period-minimum.js";
export type { DesignConditions, EpwLocation } from "./weather-file/epw-header.js";
export { type EpwTemperatures, readEpw } from "./weather-file/epw.js";
export { type CsvLayout, readHourlyCsv } from "./weather-file/hourly-csv.js";
export type { HourlyExtreme, HourlyExtremes } from "./weather-file/hourly-extremes.js";
export type { TextChunks } from "./weather-file/lines.js";
