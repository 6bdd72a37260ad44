import type { JudgedReading, JudgedSheet, RecordedNumber } from "../../plant/index.js";
import { judgedSentence, READING_VERDICTS } from "../view/judged.js";
import { shown, shownText } from "../view/number-text.js";
import { plainText } from "../view/plain-text.js";
import { sentence } from "../view/words.js";
import { hung } from "./lines.js";

const WIDTH = 80;

/**
 * A judged measurement sheet for a terminal: the outcome, each reading that is outside, missing or open, and hints.
 *
 * @param judged - a sheet that `judgeSheet` has judged
 * @param options - letters a line; left out, 80
 */
export function judgedSheetText(judged: JudgedSheet, { width = WIDTH }: { readonly width?: number } = {}): string {
  const { plant, readings, hints, unplaced, cautions } = judged;
  const attention = readings.filter(({ verdict }) => verdict !== "within");
  const ordered = (["outside", "open", "missing"] as const).flatMap((verdict) =>
    attention.filter((reading) => reading.verdict === verdict),
  );
  const lines = [
    ...hung("", `${plant}: readings at first switch-on`, width),
    "",
    ...hung("", judgedSentence(judged), width),
    ...ordered.flatMap((reading) => readingLines(reading, width)),
    ...unplaced.flatMap(({ at, reading }) => hung("  ? ", `${reading} at ${at}: this place is not known`, width)),
    ...(hints.length === 0 ? [] : ["", "Where to look; hints, not verdicts"]),
    ...hints.flatMap(({ at, text }) => hung("  - ", `${at.join(", ")}: ${sentence(text)}`, width)),
    "",
    "Cautions",
    ...cautions.flatMap((caution) => hung("  ! ", sentence(caution), width)),
  ];
  return `${lines.join("\n")}\n`;
}

const text = (number: RecordedNumber): string => shownText(shown(number));

function readingLines(
  { verdict, at, what, value, low, high, missing }: JudgedReading,
  width: number,
): readonly string[] {
  const { shape, word } = READING_VERDICTS[verdict];
  const band =
    low && high ? `${text(low)} to ${text(high)}` : low ? `at least ${text(low)}` : high ? `at most ${text(high)}` : "";
  const read = value ? ` ${text(value)}` : "";
  const due = band === "" ? "" : ` (${band})`;
  const needs = missing.length === 0 || verdict === "missing" ? "" : `; needs ${missing.join(", ")}`;
  return hung(`  ${shape} ${word}: `, `${plainText(at === "" ? "plant" : at)}, ${what}${read}${due}${needs}`, width, 6);
}
