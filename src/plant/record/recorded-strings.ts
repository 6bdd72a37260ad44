import type { Force } from "../../formula/index.js";
import type { RecordedNumber } from "./recorded-number.js";

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
