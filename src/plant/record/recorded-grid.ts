import type { Citation, Grade } from "../../source/index.js";
import type { RecordedNumber } from "./recorded-number.js";

/** A limit of the voltage at the connection point or at the inverter terminals, for the profile. */
export interface RecordedVoltageLimit {
  readonly inverter: string;
  /** The check that it is from. */
  readonly check: string;
  readonly name: string;
  readonly voltage: RecordedNumber;
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
