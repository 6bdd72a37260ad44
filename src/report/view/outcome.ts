import type { PlantRecord, RecordedCheck } from "../../plant/index.js";
import { counted, countWord, reasonOf } from "./words.js";

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
  const { met, notMet, open } = record.outcome;
  const head = [
    `${counted(met, "requirement")} met`,
    notMet === 0 ? "none not met" : `${countWord(notMet)} not met`,
    open === 0 ? "none open" : `${countWord(open)} open`,
  ];
  const { notMet: failed, open: undecided } = attentionOf(record);
  const why = reasons(failed.length > 0 ? failed : undecided);
  return `${head.join(", ")}${why === "" ? "." : `: ${why}.`}`;
}

const MOST_REASONS = 3;

// Several checks often wait for one and the same answer: each reason is named once.
function reasons(checks: readonly RecordedCheck[]): string {
  const all = [...new Set(checks.map((check) => reasonOf(check) ?? lowered(check.asks)))];
  const named = all.slice(0, MOST_REASONS).map((reason) => reason.replace(/[.\s]+$/, ""));
  const rest = all.length - named.length;
  return [...named, ...(rest > 0 ? [`and ${counted(rest, "more reason")}`] : [])].join("; ");
}

function lowered(question: string): string {
  return question.slice(0, 1).toLowerCase() + question.slice(1).replace(/\?$/, "");
}

/** What else the outcome says: recommendations, yield, and what rests on recalled values. */
export function outcomeNotes({ outcome }: PlantRecord): readonly string[] {
  const { recommendationsNotMet, yieldNotMet, restsOnMemory } = outcome;
  const notes: string[] = [];
  if (recommendationsNotMet > 0) notes.push(`${counted(recommendationsNotMet, "recommendation")} not met.`);
  if (yieldNotMet > 0) notes.push(`${counted(yieldNotMet, "check")} for the yield not met.`);
  if (restsOnMemory.length > 0) {
    const verb = restsOnMemory.length === 1 ? "rests" : "rest";
    notes.push(`${counted(restsOnMemory.length, "check")} ${verb} on recalled values; compare them with the publication before you rely on them.`);
  }
  return notes;
}
