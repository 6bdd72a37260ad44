import type { Quantity } from "../../quantity/index.js";
import type { ReadingKey } from "../evaluation/reading-kinds.js";

/** Identity of the sheet's format. */
export const READINGS_FORMAT = "pv-to-grid/readings@1";

/** One reading of a filled-in sheet. */
export interface SheetReading {
  /** What it was taken on: a string, a roof, a route, the supply, or the plant (empty). */
  readonly at: string;
  readonly reading: ReadingKey;
  /** `null` where the place was left empty. */
  readonly value: Quantity | null;
  readonly note: string | null;
}

/** A measurement sheet as it was filled in. */
export interface MeasurementSheet {
  readonly format: typeof READINGS_FORMAT;
  readonly plant: string | null;
  readonly date: string | null;
  readonly by: string | null;
  readonly readings: readonly SheetReading[];
}
