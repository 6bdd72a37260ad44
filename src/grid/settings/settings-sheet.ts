import type { Quantity } from "../../quantity/index.js";
import type { Grade } from "../../source/index.js";
import type { Connection } from "../supply/supply-systems.js";
import type { CurveSetting } from "./curve-settings.js";
import type { InterfaceSettings } from "./interface-settings.js";
import type { SettingRow } from "./setting-row.js";

/** What the installer selects once, such as the country. */
export interface Selection {
  readonly what: string;
  readonly value: string;
}

/** One line of a settings sheet. */
export interface SheetLine {
  readonly key: SettingRow["key"];
  readonly label: string;
  /** In volts at the inverter terminals, in hertz, or as printed; `null` where the network operator sets it. */
  readonly value: Quantity | null;
  readonly delay: Quantity<"time"> | null;
  readonly clearing: Quantity<"time"> | null;
  readonly averaging: string | null;
  readonly grade: Grade | null;
  readonly why: string | null;
}

/** What the installer selects, enters and confirms. */
export interface SettingsSheet {
  readonly select: readonly Selection[];
  /** To enter as they stand, once the network operator has agreed to the plant. */
  readonly enter: readonly SheetLine[];
  /** Not to be entered before the network operator has confirmed or given the value. */
  readonly confirm: readonly SheetLine[];
  readonly curves: { readonly enter: readonly CurveSetting[]; readonly confirm: readonly CurveSetting[] };
  readonly cautions: readonly string[];
}

/** What every settings sheet says. */
export const settingsCautions: readonly string[] = Object.freeze([
  "The plant must not feed before the country settings are active and have been read back from the device.",
  "The network operator's values prevail over this sheet; the maker's instructions say how they are entered.",
  "Only persons whom the network operator and the maker admit may change interface settings; note date, person and every value.",
]);

/**
 * The settings sheet for the installer: what to select, what to enter, what to confirm first.
 *
 * @param connection - how the inverter is connected; it decides between line-to-neutral and line-to-line volts
 */
export function settingsSheet(settings: InterfaceSettings, connection: Connection): SettingsSheet {
  const lines = settings.rows
    .filter(({ kind }) => kind !== "ride-through")
    .map((row) => ({ row, line: lineOf(row, connection) }));
  const { curves, rules, supply, notes } = settings;
  return Object.freeze({
    select: Object.freeze([
      { what: "grid rules", value: rules.label },
      { what: "edition", value: rules.edition },
      { what: "supply", value: supply },
      { what: "connection", value: connection },
    ]),
    enter: Object.freeze(lines.filter(({ row }) => row.confirm === null).map(({ line }) => line)),
    confirm: Object.freeze(lines.filter(({ row }) => row.confirm !== null).map(({ line }) => line)),
    curves: Object.freeze({
      enter: Object.freeze(curves.filter(({ confirm }) => confirm === null)),
      confirm: Object.freeze(curves.filter(({ confirm }) => confirm !== null)),
    }),
    cautions: Object.freeze([...settingsCautions, ...notes]),
  });
}

function lineOf(
  { key, label, setting, times, averaging, grade, confirm }: SettingRow,
  connection: Connection,
): SheetLine {
  const volts = setting?.volts?.[connection === "single-phase" ? "lineToNeutral" : "lineToLine"];
  const value = volts ?? setting?.hertz ?? setting?.printed ?? null;
  return Object.freeze({
    key,
    label,
    value,
    delay: times.delay,
    clearing: times.clearing,
    averaging,
    grade,
    why: confirm,
  });
}
