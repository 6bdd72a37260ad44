import type { JudgedReading, JudgedSheet } from "../../plant/index.js";
import { countWord } from "./words.js";

/** Verdicts on readings as words and shapes; `mark` is the verdict of checks that looks the same. */
export const READING_VERDICTS: Readonly<
  Record<JudgedReading["verdict"], { readonly word: string; readonly shape: string; readonly mark: string }>
> = {
  within: { word: "within", shape: "●", mark: "met" },
  outside: { word: "outside", shape: "▲", mark: "not-met" },
  missing: { word: "missing", shape: "○", mark: "open" },
  open: { word: "open", shape: "○", mark: "open" },
};

/** The outcome of a judged sheet as a sentence. */
export function judgedSentence({ outcome, hints }: JudgedSheet): string {
  const { within, outside, missing, open } = outcome;
  const readings = within + outside + missing + open;
  const parts = [
    `${within} of ${readings} readings within their bands`,
    `${countWord(outside)} outside`,
    `${countWord(missing)} missing`,
    `${countWord(open)} open`,
  ];
  const look =
    hints.length === 0 ? "" : `; ${countWord(hints.length)} ${hints.length === 1 ? "hint" : "hints"} where to look`;
  return `${parts.join(", ")}${look}.`;
}
