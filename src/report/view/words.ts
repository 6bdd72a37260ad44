import type { Force } from "../../formula/index.js";
import type { PlantRecord, RecordedCheck, RecordedVerdict } from "../../plant/index.js";
import { pathWords } from "./path-words.js";
import type { Citation, Grade } from "../../source/index.js";

/** A verdict as a word and a shape; each is enough without the other, and neither needs colour. */
export const VERDICTS: Readonly<Record<RecordedVerdict, { readonly word: string; readonly shape: string }>> = {
  met: { word: "met", shape: "●" },
  "not-met": { word: "not met", shape: "▲" },
  open: { word: "open", shape: "○" },
};

export const FORCES: Readonly<Record<Force, string>> = {
  requirement: "requirement",
  recommendation: "recommendation",
  yield: "for the yield",
};

/** A grade as one word, and as the sentence that says what it is worth. */
export const GRADES: Readonly<Record<Grade, { readonly word: string; readonly meaning: string }>> = {
  original: { word: "original", meaning: "seen in the cited publication itself" },
  reproduced: { word: "reproduced", meaning: "seen in another edited publication that names the clause" },
  copied: { word: "copied", meaning: "seen only in copies without an editor; compare it with the publication" },
  "common-practice": { word: "common practice", meaning: "a fact of the trade, no publication stands behind it" },
  memory: { word: "memory", meaning: "recalled, not looked up; to be confirmed before it is relied on" },
};

/** The grade of what only the user's own inputs stand behind. */
export const YOUR_INPUT = "your input";

export function gradeWord(grade: Grade | null): string {
  return grade === null ? YOUR_INPUT : GRADES[grade].word;
}

/** A citation as a reader looks it up: publication, clause. */
export function citationText({ in: key, clause }: Citation): string {
  return clause === "" ? key : `${key}, ${clause}`;
}

/** Where the value was seen, if not in the publication itself. */
export function seenText({ seen }: Citation): string | null {
  return seen === undefined ? null : `as in ${seen}`;
}

/** Whether the wiring rules are American, so that the NEC word stands beside the IEC one. */
export function isAmerican({ rules }: PlantRecord): boolean {
  return rules.wiring.startsWith("NFPA 70");
}

const NEC_WORDS: Readonly<Record<string, string>> = {
  "protective conductor": "equipment grounding conductor",
  earth: "grounding",
  earthing: "grounding system",
  section: "size",
  "connection point": "point of interconnection",
  board: "panelboard",
  "residual-current device": "GFCI or GFPE device",
  "d.c. route": "PV source circuit",
  "a.c. route": "inverter output circuit",
};

/** A term of IEC 60050, with the NEC word in brackets where the rules are American. */
export function term(word: string, record: PlantRecord): string {
  const other = isAmerican(record) ? NEC_WORDS[word.toLowerCase()] : undefined;
  return other === undefined ? word : `${word} (${other})`;
}

const NUMBER_WORDS = [
  "none",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

/** A small count as a word, a larger one in figures. */
export function countWord(count: number): string {
  return NUMBER_WORDS[count] ?? String(count);
}

/** A count with its noun. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

export function capitalised(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** A text as a sentence: a capital at its start, a stop at its end. */
export function sentence(text: string): string {
  const plain = capitalised(text.trim());
  return /[.!?]$/.test(plain) ? plain : `${plain}.`;
}

const MOST_PATHS = 4;

/** What paths of the description are about, and the paths; those that are about the same share their words. */
export function pathsText(paths: readonly string[]): string {
  const byWords = new Map<string, string[]>();
  for (const path of paths) {
    const about = pathWords(path) ?? "";
    byWords.set(about, [...(byWords.get(about) ?? []), path]);
  }
  const cut = (same: readonly string[]): string =>
    same.length > MOST_PATHS
      ? `${same.slice(0, MOST_PATHS).join(", ")} and ${same.length - MOST_PATHS} more`
      : same.join(", ");
  return [...byWords].map(([about, same]) => (about === "" ? cut(same) : `${about} (${cut(same)})`)).join("; ");
}

/** Why a check is open or not met, where more can be said than its numbers and its remedy do. */
export function reasonOf({ because, missing, verdict }: RecordedCheck): string | null {
  if (because !== null && because !== "") return because;
  return verdict === "open" && missing.length === 0 ? "nothing in the description decides it" : null;
}

/** What to do about a check that is not met or open. */
export function remedyOf({ remedy, missing, verdict }: RecordedCheck): string | null {
  if (verdict === "open" && missing.length > 0) return `Find out and state: ${pathsText(missing)}.`;
  return remedy === "" ? null : remedy;
}
