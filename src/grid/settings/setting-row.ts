import type { Quantity } from "../../quantity/index.js";
import type { Citation, Grade } from "../../source/index.js";
import type { SettingKey, SettingKind, SettingQuantity } from "./setting-keys.js";

/** A voltage in both kinds. */
export interface BothVoltages {
  readonly lineToNeutral: Quantity<"voltage">;
  readonly lineToLine: Quantity<"voltage">;
}

/** One value of a setting: as printed, and in volts or hertz for the site. */
export interface SettingValue {
  readonly printed: Quantity;
  /** For voltages. */
  readonly volts: BothVoltages | null;
  /** For frequencies. */
  readonly hertz: Quantity<"frequency"> | null;
  readonly grade: Grade | null;
}

/** Times of a setting. */
export interface SettingTimes {
  /** Time that the relay waits. */
  readonly delay: Quantity<"time"> | null;
  /** Longest time until the plant is disconnected. */
  readonly clearing: Quantity<"time"> | null;
  /** Ends of the range that the rules allow. */
  readonly shortest: Quantity<"time"> | null;
  readonly longest: Quantity<"time"> | null;
}

/** One row of a settings sheet. */
export interface SettingRow {
  readonly key: SettingKey;
  readonly label: string;
  readonly kind: SettingKind;
  readonly quantity: SettingQuantity;
  /** `null` where the rules leave the value to the network operator. */
  readonly setting: SettingValue | null;
  /** Ends of the range that the rules allow; `null` where they print none. */
  readonly lowest: SettingValue | null;
  readonly highest: SettingValue | null;
  readonly times: SettingTimes;
  readonly averaging: string | null;
  readonly source: readonly Citation[];
  /** The weakest grade of the row. */
  readonly grade: Grade | null;
  /** What is to be done before the value is entered; `null` where nothing but the usual agreement is. */
  readonly confirm: string | null;
  readonly terms: { readonly ieee1547: string | null; readonly iec61850: string | null };
}

/** What a value from memory says beside it. */
export const NOT_BEFORE_CONFIRMED = "from memory: not to be entered before the network operator confirms it";

/** What a row without a value says. */
export const THE_OPERATOR_SETS_IT = "the network operator sets it";
