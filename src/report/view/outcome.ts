import type { PlantRecord, RecordedCheck } from "../../plant/index.js";
import { pathWords } from "./path-words.js";
import { counted, countWord } from "./words.js";

/** The checks that need a person, gravest first: what is not met, what is open, then what is only recommended or for the yield. */
export interface Attention {
  readonly notMet: readonly RecordedCheck[];
  readonly open: readonly RecordedCheck[];
  /** Recommendations and yield checks that are not met or open. */
  readonly lesser: readonly RecordedCheck[];
}

export function attentionOf({ checks }: PlantRecord): Attention {
  const required = checks.filter(({ force }) => force === "requirement");
  return {
    notMet: required.filter(({ verdict }) => verdict === "not-met"),
    open: required.filter(({ verdict }) => verdict === "open"),
    lesser: checks.filter(({ force, verdict }) => force !== "requirement" && verdict !== "met"),
  };
}

/** The outcome as one sentence. */
export function outcomeSentence(record: PlantRecord): string {
  const { met } = record.outcome;
  const { notMet, open } = attentionOf(record);
  return `${counted(met, "requirement")} met, ${part("not met", notMet)}${notMet.length > 0 ? ";" : ","} ${part("open", open)}.`;
}

function part(word: string, checks: readonly RecordedCheck[]): string {
  return checks.length === 0 ? `none ${word}` : `${countWord(checks.length)} ${word}: ${reasons(checks)}`;
}

const MOST_REASONS = 3;

// Several checks often wait for one and the same answer: each reason is named once.
function reasons(checks: readonly RecordedCheck[]): string {
  const places = new Map<string, Set<string>>();
  for (const check of checks) {
    const reason = shortReason(check);
    places.set(reason, (places.get(reason) ?? new Set()).add(check.at));
  }
  const all = [...places].map(([reason, at]) => `${reason}${where([...at])}`);
  const rest = all.length - MOST_REASONS;
  return [...all.slice(0, MOST_REASONS), ...(rest > 0 ? [`and ${counted(rest, "more reason")}`] : [])].join("; ");
}

function where(places: readonly string[]): string {
  const [first = ""] = places;
  if (places.length > 1) return ` at ${places.length} places`;
  return first === "" ? "" : ` at ${first}`;
}

function shortReason({ missing, verdict, asks }: RecordedCheck): string {
  const lacking = new Set(missing.map((path) => pathWords(path) ?? path));
  return verdict === "open" && lacking.size > 0 ? `${[...lacking].join(", ")} not known` : `“${asks}”`;
}

/** What else the outcome says: recommendations, yield, and what rests on recalled values. */
export function outcomeNotes({ outcome }: PlantRecord): readonly string[] {
  const { recommendationsNotMet, yieldNotMet, restsOnMemory } = outcome;
  const notes: string[] = [];
  if (recommendationsNotMet > 0) notes.push(`${counted(recommendationsNotMet, "recommendation")} not met.`);
  if (yieldNotMet > 0) notes.push(`${counted(yieldNotMet, "check")} for the yield not met.`);
  if (restsOnMemory.length > 0) {
    const verb = restsOnMemory.length === 1 ? "rests" : "rest";
    notes.push(
      `${counted(restsOnMemory.length, "check")} ${verb} on recalled values; compare them with the publication before you rely on them.`,
    );
  }
  return notes;
}
