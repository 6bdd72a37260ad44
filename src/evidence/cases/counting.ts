import { type Catalogue, catalogue } from "../../catalogue/catalogue.js";
import type { Case } from "../formats/index.js";
import { noticedInputs } from "./noticing.js";
import { type Outcome, runCase } from "./run-case.js";

/** A case, what came of it, and whether it counts. */
export interface JudgedCase extends Outcome {
  /** Inputs of which the case notices a shift; computed only where nothing else keeps it from counting. */
  readonly notices: readonly string[];
  /** Why the case does not count; `null` where it counts. */
  readonly notCounting: string | null;
}

/** What keeps a case from counting apart from noticing nothing, in the order in which it is asked. */
function hindrance({ case: one, status }: Outcome): string | null {
  if (status !== "agrees") return status;
  if (one.kind === "constant" || one.kind === "identity") return one.kind;
  if (one.seen.grade !== "original" && one.seen.grade !== "reproduced") return one.seen.grade;
  if (Object.values(one.inputs).some((input) => "unprinted" in input)) return "unprinted input";
  if (!one.expected.digitsSure) return "digits not sure";
  return null;
}

/** Runs a case and decides whether it counts: by what it is and does, never by what it says of itself. */
export function judgeCase(one: Case, from: Catalogue = catalogue()): JudgedCase {
  const outcome = runCase(one, from);
  const hindered = hindrance(outcome);
  const notices = hindered === null ? noticedInputs(one, from) : [];
  return { ...outcome, notices, notCounting: hindered ?? (notices.length === 0 ? "notices nothing" : null) };
}
