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

/** Identity of the record's format. */
export const RECORD_FORMAT = "pv-to-grid/record@1";

/** A number of the record: every digit, its unit, the step that made it, and the weakest grade behind it. */
export interface RecordedNumber {
  readonly value: string;
  readonly unit: string;
  /** Key into `steps`, which a record made without working leaves out. */
  readonly step: string;
  /** `null` where only inputs of the user stand behind it. */
  readonly grade: Grade | null;
}

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

/** Voltages of one string at one cell temperature. */
export interface RecordedVoltages {
  readonly at: "coldest" | "standard test conditions" | "hottest";
  readonly cellTemperature: RecordedNumber;
  readonly openCircuit: RecordedNumber;
  readonly mpp: RecordedNumber | null;
}

/** A limit of a string's voltage, for the ladder. */
export interface RecordedLimit {
  readonly key: string;
  readonly name: string;
  readonly end: "longest" | "shortest";
  readonly force: Force;
  readonly voltage: RecordedNumber;
}

/** A limit of the voltage at the connection point or at the inverter terminals, for the profile. */
export interface RecordedVoltageLimit {
  readonly inverter: string;
  /** The check that it is from. */
  readonly check: string;
  readonly name: string;
  readonly voltage: RecordedNumber;
}

/** Equal strings on one tracker. */
export interface RecordedString {
  /** Its place in the description; `null` where the library chose it. */
  readonly path: string | null;
  readonly inverter: string;
  readonly tracker: string;
  readonly roof: string;
  readonly modules: number;
  readonly count: number;
  readonly shortest: RecordedNumber | null;
  readonly longest: RecordedNumber | null;
  /** Ids of the checks that the next shorter and the next longer string would fail. */
  readonly limitedBy: { readonly shortest: string | null; readonly longest: string | null };
  /** U_OC at the coldest cell temperature. */
  readonly coldVoltage: RecordedNumber | null;
  /** U_MPP at the hottest cell temperature. */
  readonly hotVoltage: RecordedNumber | null;
  readonly maximumCurrent: RecordedNumber | null;
  readonly voltages: readonly RecordedVoltages[];
  readonly limits: readonly RecordedLimit[];
}

/** One tracker and what it carries. */
export interface RecordedTracker {
  readonly inverter: string;
  readonly tracker: string;
  readonly inputs: number;
  readonly inputsUsed: number;
  readonly inputsToSeal: number;
  readonly mppCurrent: RecordedNumber | null;
  readonly maximumCurrent: RecordedNumber | null;
}

/** A point of the way from the grid's source to an inverter, with the voltage that the plant makes there. */
export interface RecordedVoltagePoint {
  readonly inverter: string;
  readonly name: string;
  readonly part: "network" | "installation";
  /** Rise over the stretch that ends here, and over all stretches up to here. */
  readonly change: RecordedNumber | null;
  /** Length of the cables of that stretch; `null` for the network. */
  readonly length: RecordedNumber | null;
  readonly total: RecordedNumber | null;
  readonly totalShare: RecordedNumber | null;
  readonly voltage: RecordedNumber | null;
}

/** A setting that the installer selects or enters at the inverter. */
export interface RecordedSetting {
  readonly key: string;
  readonly label: string;
  readonly kind: string;
  readonly value: RecordedNumber | null;
  readonly lineToNeutral: RecordedNumber | null;
  readonly lineToLine: RecordedNumber | null;
  /** Ends of the range that the rules allow. */
  readonly lowest: RecordedNumber | null;
  readonly highest: RecordedNumber | null;
  readonly delay: RecordedNumber | null;
  /** Longest time until the plant is disconnected. */
  readonly clearing: RecordedNumber | null;
  readonly averaging: string | null;
  readonly source: Citation | null;
  readonly grade: Grade | null;
  /** What must be done before it is entered. */
  readonly confirm: string | null;
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

/** One stretch of a route. */
export interface RecordedStretch {
  readonly place: string;
  readonly length: RecordedNumber;
  readonly ampacity: RecordedNumber | null;
  readonly change: RecordedNumber | null;
}

/** One route and what was found for it. */
export interface RecordedRoute {
  readonly path: string;
  readonly from: string;
  readonly to: string;
  readonly kind: "d.c." | "a.c.";
  readonly cable: string;
  readonly size: RecordedNumber | null;
  readonly sizeName: string | null;
  readonly protectiveConductor: RecordedNumber | null;
  /** The checks that fixed the size, or nothing where it was stated or is the smallest of the series. */
  readonly fixedBy: readonly string[];
  readonly length: RecordedNumber;
  readonly circuits: number;
  readonly current: RecordedNumber | null;
  readonly ampacity: RecordedNumber | null;
  readonly voltageChange: RecordedNumber | null;
  readonly voltageChangeShare: RecordedNumber | null;
  readonly loss: RecordedNumber | null;
  readonly breaker: RecordedNumber | null;
  readonly breakerCharacteristic: string | null;
  readonly stretches: readonly RecordedStretch[];
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

export const recordedVerdict = (verdict: Verdict): RecordedVerdict => (verdict === "not met" ? "not-met" : verdict);
