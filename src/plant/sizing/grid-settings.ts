import { interfaceSettings, settingsSheet } from "../../grid/index.js";
import type { RecordedSetting } from "../record/record.js";
import type { Recorder } from "../record/recorder.js";
import { connectionOf } from "./ac-path.js";
import { gridRulesOf } from "./grid-connection.js";
import { caution, remind, type Sizing } from "./sizing.js";

/** The settings that the installer selects, enters or has confirmed before the plant may feed. */
export function sizeGridSettings(sizing: Sizing, recorder: Recorder): readonly RecordedSetting[] {
  const { plant, rules } = sizing;
  const settings = interfaceSettings(gridRulesOf(sizing), rules.supply);
  const sheet = settingsSheet(settings, connectionOf(plant.inverters[0]!));
  for (const text of sheet.cautions) caution(sizing, text);
  remind(sizing, {
    kind: "set",
    text: `Select the connection rules at every inverter: ${sheet.select.map(({ what, value }) => `${what} ${value}`).join("; ")}.`,
    about: "grid",
  });
  if (sheet.confirm.length > 0) {
    const labels = sheet.confirm.map(({ label }) => label).join("; ");
    const text = `Have the network operator give or confirm these settings before they are entered: ${labels}.`;
    remind(sizing, { kind: "confirm", text, about: "grid" });
  }
  return settings.rows.map(
    ({ key, label, kind, setting, lowest, highest, times, averaging, source, grade, confirm }) => ({
      key,
      label,
      kind,
      value: recorder.perhaps(setting?.printed),
      lineToNeutral: recorder.perhaps(setting?.volts?.lineToNeutral),
      lineToLine: recorder.perhaps(setting?.volts?.lineToLine),
      lowest: recorder.perhaps(lowest?.printed),
      highest: recorder.perhaps(highest?.printed),
      delay: recorder.perhaps(times.delay),
      clearing: recorder.perhaps(times.clearing),
      averaging,
      source: source[0] ?? null,
      grade,
      confirm,
    }),
  );
}
