import type { Check } from "../../formula/index.js";
import { type Input, InputError, type Quantity } from "../../quantity/index.js";
import {
  frequencySettingAsInTheRules,
  frequencySettingNotAboveRange,
  frequencySettingNotBelowRange,
  settingTimeAsInTheRules,
  settingTimeNotAboveRange,
  settingTimeNotBelowRange,
  voltageSettingAsInTheRules,
  voltageSettingNotAboveRange,
  voltageSettingNotBelowRange,
} from "./evaluate-conditions.js";
import type { InterfaceSettings } from "./interface-settings.js";
import type { SettingKey } from "./setting-keys.js";
import type { SettingRow, SettingValue } from "./setting-row.js";

/** A setting as it is, or will be, entered in the inverter or the relay. */
export interface EnteredSetting {
  readonly key: SettingKey;
  readonly voltage?: Input<"voltage">;
  /** Where the voltage is measured; due wherever a voltage is given. */
  readonly between?: "line and neutral" | "two lines";
  readonly frequency?: Input<"frequency">;
  /** Delay or clearing time, as the rules print it. */
  readonly time?: Input<"time">;
}

/**
 * Entered settings against a set of connection rules: each within the range that the rules allow, and as the rules print it.
 *
 * @throws InputError where the rules hold no such setting, or a voltage comes without the place where it is measured
 */
export function evaluateSettings(
  settings: InterfaceSettings,
  entered: readonly EnteredSetting[],
  at: string,
): readonly Check[] {
  return Object.freeze(entered.flatMap((each, index) => checksOf(rowOf(settings, each, index), each, index, at)));
}

function rowOf({ rows, rules }: InterfaceSettings, { key }: EnteredSetting, index: number): SettingRow {
  const row = rows.find((each) => each.key === key);
  if (row) return row;
  const known = rows.map((each) => each.key).join(", ");
  const path = `entered[${index}].key`;
  const message = `${rules.key} brings no setting ${key}; it brings ${known === "" ? "none" : known}`;
  throw new InputError("evaluate settings", [{ path, code: "not-in-list", message, expected: known, received: key }]);
}

function checksOf(row: SettingRow, entered: EnteredSetting, index: number, at: string): readonly Check[] {
  const place = { at: `${row.key}/${at}`, ...(row.confirm === null ? {} : { because: row.confirm }) };
  const checks: Check[] = [];
  if (entered.voltage !== undefined) {
    if (entered.between === undefined) throw unmeasured(index);
    const side = entered.between === "line and neutral" ? "lineToNeutral" : "lineToLine";
    const volts = (value: SettingValue | null): Quantity<"voltage"> | null => value?.volts?.[side] ?? null;
    const [lowest, highest, setting] = [volts(row.lowest), volts(row.highest), volts(row.setting)];
    if (lowest) checks.push(voltageSettingNotBelowRange({ value: entered.voltage, limit: lowest, ...place }));
    if (highest) checks.push(voltageSettingNotAboveRange({ value: entered.voltage, limit: highest, ...place }));
    if (setting) checks.push(voltageSettingAsInTheRules({ value: entered.voltage, limit: setting, ...place }));
  }
  if (entered.frequency !== undefined) {
    const [lowest, highest, setting] = [row.lowest?.hertz, row.highest?.hertz, row.setting?.hertz];
    if (lowest) checks.push(frequencySettingNotBelowRange({ value: entered.frequency, limit: lowest, ...place }));
    if (highest) checks.push(frequencySettingNotAboveRange({ value: entered.frequency, limit: highest, ...place }));
    if (setting) checks.push(frequencySettingAsInTheRules({ value: entered.frequency, limit: setting, ...place }));
  }
  if (entered.time !== undefined) {
    const own = timesOf(row);
    if (own.shortest) checks.push(settingTimeNotBelowRange({ value: entered.time, limit: own.shortest, ...place }));
    if (own.longest) checks.push(settingTimeNotAboveRange({ value: entered.time, limit: own.longest, ...place }));
    if (own.due) checks.push(settingTimeAsInTheRules({ value: entered.time, limit: own.due, ...place }));
  }
  return checks;
}

type Time = Quantity<"time"> | null;

/** The times of a row; a row that is itself a time has its range beside its value. */
function timesOf(row: SettingRow): { readonly shortest: Time; readonly longest: Time; readonly due: Time } {
  if (row.quantity === "time") {
    const time = (value: SettingValue | null): Time => (value === null ? null : (value.printed as Quantity<"time">));
    return { shortest: time(row.lowest), longest: time(row.highest), due: time(row.setting) };
  }
  const { shortest, longest, delay, clearing } = row.times;
  return { shortest, longest, due: delay ?? clearing };
}

function unmeasured(index: number): InputError {
  const expected = "line and neutral, two lines";
  const message = "a voltage needs the place where it is measured";
  return new InputError("evaluate settings", [
    { path: `entered[${index}].between`, code: "missing", message, expected, received: "undefined" },
  ]);
}
