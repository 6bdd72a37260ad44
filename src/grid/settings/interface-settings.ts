import { gradeOf } from "../../formula/index.js";
import { InputError, type Quantity } from "../../quantity/index.js";
import { type Grade, weaker } from "../../source/index.js";
import { type GridRules, type GridRuleSet, gridRuleSet } from "../rules/grid-rule-sets.js";
import { type SupplyFacts, supplyFacts } from "../supply/supply-facts.js";
import type { SupplySystem } from "../supply/supply-systems.js";
import { type CurveSetting, curveSettings } from "./curve-settings.js";
import { frequencyOfDeviation, lineVoltageOfSetting, settingInVolts } from "./in-volts.js";
import { type Printed, readTables } from "./read-tables.js";
import { tablesOf } from "./rule-set-tables.js";
import { settingKeys, type SettingQuantity } from "./setting-keys.js";
import {
  NOT_BEFORE_CONFIRMED,
  type SettingRow,
  type SettingTimes,
  type SettingValue,
  THE_OPERATOR_SETS_IT,
} from "./setting-row.js";

/** The settings that a set of connection rules brings to a supply. */
export interface InterfaceSettings {
  readonly rules: GridRuleSet & { readonly key: GridRules };
  readonly supply: SupplySystem;
  readonly rows: readonly SettingRow[];
  readonly curves: readonly CurveSetting[];
  readonly notes: readonly string[];
}

const NO_TIMES: SettingTimes = { delay: null, clearing: null, shortest: null, longest: null };

/**
 * The interface settings of a set of connection rules, in volts and hertz for a supply.
 *
 * @throws InputError where the rules or the supply are not known, or the rules are not made for the supply
 * @example
 * ```ts
 * import { interfaceSettings } from "pv-to-grid/grid";
 * const { rows } = interfaceSettings("EREC G98:2022", "230/400 V 50 Hz");
 * rows.find(({ key }) => key === "overvoltage1")!.setting!.volts!.lineToNeutral.text; // "262.2"
 * ```
 */
export function interfaceSettings(rules: GridRules, supply: SupplySystem): InterfaceSettings {
  const set = gridRuleSet(rules);
  const facts = supplyFacts(supply);
  if (!set.supplies.includes(facts.key)) {
    const expected = set.supplies.join("; ");
    throw new InputError("interface settings", [
      {
        path: "supply",
        code: "contradiction",
        message: `${set.key} is not made for a supply of ${facts.key}`,
        expected,
        received: facts.key,
      },
    ]);
  }
  const rows = rowsOf(set.key, facts);
  const notes = set.note === null ? [] : [set.note];
  if (rows.length === 0)
    notes.push("no setting of these rules was seen: every one is to come from the network operator");
  return Object.freeze({
    rules: set,
    supply: facts.key,
    rows: Object.freeze(rows),
    curves: curveSettings(set.key, facts),
    notes: Object.freeze(notes),
  });
}

function rowsOf(rules: GridRules, facts: SupplyFacts): readonly SettingRow[] {
  const tables = tablesOf(rules);
  if (tables === null) return [];
  const { headings, averaging = {} } = tables;
  const values = readTables(tables.values, "value", headings);
  const deviations = readTables(tables.deviations ?? [], "value", headings);
  const times = readTables(tables.times, "time", headings);
  return settingKeys.flatMap(({ key, label, kind, quantity, ieee1547, iec61850 }) => {
    const own = values.get(key) ?? deviations.get(key);
    const timed = times.get(key);
    if (own === undefined && timed === undefined) return [];
    const printed: Printed = own === undefined ? {} : own.printed;
    const value = (name: string): SettingValue | null => {
      const found = printed[name];
      if (found === undefined) return null;
      const nominalFrequency = facts.frequency;
      return settingValue(
        deviations.has(key)
          ? frequencyOfDeviation({ nominalFrequency, deviation: found as Quantity<"frequency"> })
          : found,
        quantity,
        facts,
      );
    };
    const rowTimes = timed === undefined ? NO_TIMES : timesOf(timed.printed);
    const [setting, lowest, highest] = [value("setting"), value("lowest"), value("highest")];
    const grade = weakestOf(setting, rowTimes);
    const source = [...(own?.table.declaration.source ?? []), ...(timed?.table.declaration.source ?? [])];
    return [
      Object.freeze({
        key,
        label,
        kind,
        quantity,
        setting,
        lowest,
        highest,
        times: rowTimes,
        averaging: averaging[key] ?? null,
        source: Object.freeze(source),
        grade,
        confirm: setting === null ? THE_OPERATOR_SETS_IT : grade === "memory" ? NOT_BEFORE_CONFIRMED : null,
        terms: Object.freeze({ ieee1547, iec61850 }),
      }),
    ];
  });
}

/** A printed value in volts or hertz for the site. */
export function settingValue(
  printed: Quantity,
  quantity: SettingQuantity,
  facts: Pick<SupplyFacts, "lineToNeutral" | "lineToLine">,
): SettingValue {
  const { lineToNeutral, lineToLine } = facts;
  const base = { printed, volts: null, hertz: null, grade: gradeOf(printed) };
  if (quantity === "frequency") return Object.freeze({ ...base, hertz: printed as Quantity<"frequency"> });
  if (quantity !== "voltage") return Object.freeze(base);
  if (printed.dimension === "voltage") {
    const phaseVoltage = printed as Quantity<"voltage">;
    const volts = {
      lineToNeutral: phaseVoltage,
      lineToLine: lineVoltageOfSetting({ phaseVoltage, lineToNeutral, lineToLine }),
    };
    return Object.freeze({ ...base, volts: Object.freeze(volts) });
  }
  const settingShare = printed as Quantity<"ratio">;
  const inVolts = (nominalVoltage: Quantity<"voltage">): Quantity<"voltage"> =>
    settingInVolts({ settingShare, nominalVoltage });
  return Object.freeze({
    ...base,
    volts: Object.freeze({ lineToNeutral: inVolts(lineToNeutral), lineToLine: inVolts(lineToLine) }),
  });
}

function timesOf(printed: Printed): SettingTimes {
  const time = (name: string): Quantity<"time"> | null => (printed[name] as Quantity<"time"> | undefined) ?? null;
  return Object.freeze({
    delay: time("delay"),
    clearing: time("clearing"),
    shortest: time("shortest"),
    longest: time("longest"),
  });
}

function weakestOf(setting: SettingValue | null, times: SettingTimes): Grade | null {
  return [times.delay, times.clearing].reduce<Grade | null>(
    (weakest, time) => weaker(weakest, gradeOf(time)),
    setting?.grade ?? null,
  );
}
