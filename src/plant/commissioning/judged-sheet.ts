import type { HintKey, ReadingKey, ReadingVerdict } from "../../commissioning/index.js";
import type { PlantRecord, RecordedCheck, RecordedNumber, RecordedStep } from "../record/record.js";

/** Identity of the format of judged sheets. */
export const JUDGED_FORMAT = "pv-to-grid/judged-readings@1";

/** One reading of the sheet and how it lies. */
export interface JudgedReading {
  readonly at: string;
  readonly reading: ReadingKey;
  readonly what: string;
  readonly verdict: ReadingVerdict;
  readonly value: RecordedNumber | null;
  readonly expected: RecordedNumber | null;
  readonly low: RecordedNumber | null;
  readonly high: RecordedNumber | null;
  /** Ids of its checks. */
  readonly checks: readonly string[];
  /** What a verdict still needs. */
  readonly missing: readonly string[];
  readonly note: string | null;
}

/** How identical strings agree with each other. */
export interface JudgedComparison {
  readonly reading: ReadingKey;
  readonly at: readonly string[];
  readonly spread: RecordedNumber | null;
  /** Share by which each string differs from the mean of the others, in the order of `at`. */
  readonly deviations: readonly (RecordedNumber | null)[];
  readonly checks: readonly string[];
}

/** A suggestion where to look; never a verdict. */
export interface JudgedHint {
  readonly key: HintKey;
  readonly at: readonly string[];
  readonly text: string;
  /** How many modules a voltage reads like. */
  readonly modulesRead: RecordedNumber | null;
}

/** Up to which length of string a missing module is noticed. */
export interface TellingLengths {
  /** By the band about the expected value, with an exact reading. */
  readonly againstExpected: number | null;
  /** By comparison with identical strings. */
  readonly amongIdentical: number | null;
  /** Strings that are too long for the band to tell. */
  readonly tooLong: readonly string[];
}

/** A filled-in measurement sheet, judged against the record: plain JSON with its working. */
export interface JudgedSheet {
  readonly format: typeof JUDGED_FORMAT;
  readonly library: string;
  readonly plant: string;
  readonly date: string | null;
  readonly by: string | null;
  readonly outcome: Readonly<Record<ReadingVerdict, number>>;
  readonly readings: readonly JudgedReading[];
  readonly comparisons: readonly JudgedComparison[];
  readonly hints: readonly JudgedHint[];
  readonly tells: TellingLengths;
  /** Energy over rated power, hours of standard irradiance and their ratio; `null` where the day was not read. */
  readonly performance: {
    readonly finalYield: RecordedNumber;
    readonly referenceYield: RecordedNumber;
    readonly performanceRatio: RecordedNumber;
  } | null;
  /** Readings of the sheet that fit no place of the plant. */
  readonly unplaced: readonly { readonly at: string; readonly reading: ReadingKey }[];
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
  readonly checks: readonly RecordedCheck[];
  readonly sources: PlantRecord["sources"];
  readonly declarations: PlantRecord["declarations"];
  readonly steps: Readonly<Record<string, RecordedStep>>;
}
