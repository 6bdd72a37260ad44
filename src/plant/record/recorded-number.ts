import type { Grade } from "../../source/index.js";

/** A number of the record: every digit, its unit, the step that made it, and the weakest grade behind it. */
export interface RecordedNumber {
  readonly value: string;
  readonly unit: string;
  /** Key into `steps`, which a record made without working leaves out. */
  readonly step: string;
  /** `null` where only inputs of the user stand behind it. */
  readonly grade: Grade | null;
}
