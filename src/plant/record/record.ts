import type {
  ConditionDeclaration,
  Force,
  FormulaDeclaration,
  ModelDeclaration,
  Relation,
  SeriesDeclaration,
  TableDeclaration,
  Verdict,
} from "../../formula/index.js";
import type { Citation, Grade, Source } from "../../source/index.js";
import type { PlantDescription } from "../description/plant-description.js";
import type { Rules } from "../description/rules.js";

import type { RecordedSetting, RecordedVoltageLimit, RecordedVoltagePoint } from "./recorded-grid.js";
import type { RecordedNumber } from "./recorded-number.js";
import type { RecordedRoute } from "./recorded-routes.js";
import type { RecordedString, RecordedTracker } from "./recorded-strings.js";

export type * from "./recorded-grid.js";
export type { RecordedNumber } from "./recorded-number.js";
export type * from "./recorded-routes.js";
export type * from "./recorded-strings.js";

/** Identity of the record's format. */
export const RECORD_FORMAT = "pv-to-grid/record@1";

/** A verdict in the record's spelling. */
export type RecordedVerdict = "met" | "not-met" | "open";

/** One check of the record. */
export interface RecordedCheck {
  /** Subject, rule and place; stays the same when an unrelated part of the plant changes. */
  readonly id: string;
  /** The declaration that it applies. */
  readonly rule: string;
  readonly at: string;
  readonly asks: string;
  readonly force: Force;
  readonly verdict: RecordedVerdict;
  readonly value: RecordedNumber | string | null;
  readonly relation: Relation;
  readonly limit: RecordedNumber | string | readonly string[] | null;
  readonly utilisation: string | null;
  readonly source: Citation | null;
  readonly grade: Grade | null;
  /** Paths of the description that would decide it. */
  readonly missing: readonly string[];
  readonly because: string | null;
  readonly remedy: string | null;
}

/** One step of the working. */
export interface RecordedStep {
  readonly kind: "given" | "assumed" | "conversion" | "formula" | "lookup" | "choice" | "model";
  /** The rule, table or series; absent for inputs and conversions. */
  readonly id?: string;
  readonly symbol?: string;
  readonly about: string;
  readonly equation?: string;
  readonly substituted?: string;
  /** Value and unit, every digit. */
  readonly result: string;
  readonly value: string;
  readonly unit: string;
  /** Whether digits were lost on the way. */
  readonly rounded?: true;
  /** Steps that went in, by key of the rule. */
  readonly uses?: Readonly<Record<string, string | readonly string[]>>;
  /** Row, column or reason. */
  readonly detail?: string;
  /** Headings of a lookup. */
  readonly rows?: readonly string[];
  readonly column?: Readonly<Record<string, string>>;
  readonly source?: readonly Citation[];
  readonly grade: Grade | null;
}

/** Something that a person must still do. */
export interface ToDo {
  readonly kind: "seal" | "set" | "measure" | "confirm" | "supply";
  readonly text: string;
  /** The check or key that it belongs to. */
  readonly about: string;
}

/** A named result of earthing, bonding or surge protection at a place. */
export interface RecordedFinding {
  readonly subject: "earthing" | "surge" | "protection";
  readonly what: string;
  readonly at: string;
  readonly value: RecordedNumber | string | null;
  readonly checks: readonly string[];
}

/** What an instrument should read on a string at first switch-on. */
export interface RecordedReading {
  readonly inverter: string;
  readonly tracker: string;
  readonly roof: string;
  readonly what: string;
  readonly at: string;
  readonly expected: RecordedNumber | null;
  readonly low: RecordedNumber | null;
  readonly high: RecordedNumber | null;
}

/** How many checks ended how. */
export interface Outcome {
  readonly verdict: RecordedVerdict;
  readonly met: number;
  readonly notMet: number;
  readonly open: number;
  readonly recommendationsNotMet: number;
  readonly yieldNotMet: number;
  /** Ids of the checks that rest on recalled values. */
  readonly restsOnMemory: readonly string[];
}

/** A declaration as the record carries it, so that a reader can re-evaluate the record without the library. */
export type RecordedDeclaration =
  | ({ readonly kind: "formula" } & FormulaDeclaration)
  | ({ readonly kind: "model" } & ModelDeclaration)
  | ({ readonly kind: "condition" } & ConditionDeclaration)
  | ({ readonly kind: "series" } & SeriesDeclaration)
  | ({ readonly kind: "table" } & TableDeclaration);

/** The sizing record: what was chosen, every check with its working, what is to do, and the cautions. Plain JSON. */
export interface PlantRecord {
  readonly format: typeof RECORD_FORMAT;
  readonly library: string;
  readonly plant: PlantDescription;
  readonly rules: Rules;
  readonly outcome: Outcome;
  readonly toDo: readonly ToDo[];
  readonly chosen: readonly string[];
  readonly verified: readonly string[];
  readonly strings: readonly RecordedString[];
  readonly trackers: readonly RecordedTracker[];
  readonly routes: readonly RecordedRoute[];
  readonly findings: readonly RecordedFinding[];
  readonly grid: {
    readonly nominalVoltage: RecordedNumber | null;
    readonly voltageProfile: readonly RecordedVoltagePoint[];
    readonly limits: readonly RecordedVoltageLimit[];
    readonly settings: readonly RecordedSetting[];
  };
  readonly readings: readonly RecordedReading[];
  readonly checks: readonly RecordedCheck[];
  readonly assumptions: readonly {
    readonly about: string;
    readonly value: RecordedNumber;
    readonly source: readonly Citation[];
  }[];
  readonly cautions: readonly string[];
  readonly sources: readonly ({ readonly key: string; readonly grades: readonly Grade[] } & Source)[];
  readonly declarations: Readonly<Record<string, RecordedDeclaration>>;
  readonly steps?: Readonly<Record<string, RecordedStep>>;
}

/** A verdict as the record writes it. */
export const recordedVerdict = (verdict: Verdict): RecordedVerdict => (verdict === "not met" ? "not-met" : verdict);
