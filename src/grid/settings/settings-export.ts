import type { Quantity } from "../../quantity/index.js";
import type { Citation, Grade } from "../../source/index.js";
import type { InterfaceSettings } from "./interface-settings.js";
import type { SettingRow, SettingValue } from "./setting-row.js";

/** A value and its unit, every digit. */
export interface ExportedValue {
  readonly value: string;
  readonly unit: string;
}

/** One setting of an export: names of the open standards, value as printed, in volts and in hertz. */
export interface ExportedSetting {
  readonly key: string;
  readonly label: string;
  /** Name in IEEE 1547, such as `OV1` or `ES_DELAY`. */
  readonly ieee1547: string | null;
  /** Logical node of IEC 61850-7-4 or 61850-7-420, such as `PTOV`. */
  readonly iec61850: string | null;
  readonly printed: ExportedValue | null;
  readonly lineToNeutral: ExportedValue | null;
  readonly lineToLine: ExportedValue | null;
  readonly frequency: ExportedValue | null;
  readonly lowest: ExportedValue | null;
  readonly highest: ExportedValue | null;
  readonly delay: ExportedValue | null;
  readonly clearing: ExportedValue | null;
  readonly shortest: ExportedValue | null;
  readonly longest: ExportedValue | null;
  readonly averaging: string | null;
  readonly grade: Grade | null;
  readonly confirm: string | null;
  readonly source: readonly Citation[];
}

/** One curve of an export. */
export interface ExportedCurve {
  readonly key: string;
  readonly variant: string;
  readonly ieee1547: string | null;
  readonly iec61850: string | null;
  readonly points: readonly {
    readonly x: ExportedValue;
    readonly lineToNeutral: ExportedValue | null;
    readonly lineToLine: ExportedValue | null;
    readonly y: ExportedValue;
  }[];
  readonly responseTime: ExportedValue | null;
  readonly grade: Grade | null;
  readonly confirm: string | null;
  readonly source: readonly Citation[];
}

/** Settings as plain JSON, for others to map to their own devices. */
export interface ExportedSettings {
  readonly format: "pv-to-grid/interface-settings@1";
  readonly rules: string;
  readonly edition: string;
  readonly supply: string;
  readonly settings: readonly ExportedSetting[];
  readonly curves: readonly ExportedCurve[];
  readonly notes: readonly string[];
}

/**
 * Interface settings as plain JSON, keyed by the terms of IEEE 1547 and IEC 61850-7-420.
 *
 * @example
 * ```ts
 * import { interfaceSettings, settingsExport } from "pv-to-grid/grid";
 * const { settings } = settingsExport(interfaceSettings("IEEE 1547:2018 category B III", "208Y/120 V 60 Hz"));
 * settings.find(({ ieee1547 }) => ieee1547 === "OV1")!.lineToNeutral!.value; // "132"
 * ```
 */
export function settingsExport({ rules, supply, rows, curves, notes }: InterfaceSettings): ExportedSettings {
  return {
    format: "pv-to-grid/interface-settings@1",
    rules: rules.key,
    edition: rules.edition,
    supply,
    settings: rows.map(exportedRow),
    curves: curves.map(({ key, variant, terms, points, responseTime, grade, confirm, source }) => ({
      key,
      variant,
      ...terms,
      points: points.map(({ x, volts, y }) => ({
        x: plain(x),
        lineToNeutral: plainOr(volts?.lineToNeutral),
        lineToLine: plainOr(volts?.lineToLine),
        y: plain(y),
      })),
      responseTime: plainOr(responseTime),
      grade,
      confirm,
      source,
    })),
    notes,
  };
}

function exportedRow({
  key,
  label,
  terms,
  setting,
  lowest,
  highest,
  times,
  averaging,
  grade,
  confirm,
  source,
}: SettingRow): ExportedSetting {
  const printed = (value: SettingValue | null): ExportedValue | null => plainOr(value?.printed);
  return {
    key,
    label,
    ...terms,
    printed: printed(setting),
    lineToNeutral: plainOr(setting?.volts?.lineToNeutral),
    lineToLine: plainOr(setting?.volts?.lineToLine),
    frequency: plainOr(setting?.hertz),
    lowest: printed(lowest),
    highest: printed(highest),
    delay: plainOr(times.delay),
    clearing: plainOr(times.clearing),
    shortest: plainOr(times.shortest),
    longest: plainOr(times.longest),
    averaging,
    grade,
    confirm,
    source,
  };
}

function plain({ text, unit }: Quantity): ExportedValue {
  return { value: text, unit };
}

function plainOr(quantity: Quantity | null | undefined): ExportedValue | null {
  return quantity ? plain(quantity) : null;
}
