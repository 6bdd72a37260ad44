import { type Catalogue, catalogue } from "../catalogue/catalogue.js";
import { subjectOf } from "../catalogue/lists.js";
import { judgeCase, type JudgedCase } from "./cases/counting.js";
import { type Proof, proofs } from "./cases/proof.js";
import { type CellState, cellStates } from "./cells/cells.js";
import type { AuditSummary, Case, Change, Erratum, Guard, Lock } from "./formats/index.js";
import { type GuardOutcome, runGuard } from "./guards/run-guard.js";
import { evidenceHash, lockedItems, lockFaults } from "./lock/lock.js";
import { tallyOf } from "./summary/tally.js";
import type { Uses } from "./summary/uses.js";
import { weakList } from "./summary/weak.js";

/** What an audit weighs, as data: the files of `reference-data/`, or an auditor's own. */
export interface Evidence {
  readonly cases: readonly Case[];
  readonly guards: readonly Guard[];
  readonly errata: readonly Erratum[];
  readonly changes: readonly Change[];
  readonly lock: Lock | null;
}

/** How an audit is run. */
export interface AuditOptions {
  /** Version of the library, as the summary prints it. */
  readonly library: string;
  readonly from?: Catalogue;
  /** Which checks lean on which rules, found in whole sizings; nothing where it is left out. */
  readonly uses?: Uses;
}

/** Everything weighed one by one, the figures, and the faults that an audit must not pass. */
export interface Audit {
  readonly cases: readonly JudgedCase[];
  readonly guards: readonly GuardOutcome[];
  readonly proofs: readonly Proof[];
  readonly cells: readonly CellState[];
  readonly summary: AuditSummary;
  readonly faults: readonly string[];
}

/**
 * Runs every case and guard, decides what counts, and sums up. Pure: it reads no file.
 *
 * @param evidence - cases, guards, errata, lock and changes as data in the published formats
 */
export function audit(evidence: Evidence, { library, from = catalogue(), uses = new Map() }: AuditOptions): Audit {
  const cases = evidence.cases.map((one) => judgeCase(one, from));
  const guards = evidence.guards.map((guard) => runGuard(guard, from));
  const weighed = { cases, proofs: proofs(cases, from), cells: cellStates(cases, guards, from) };
  const items = lockedItems(evidence, from);
  const subjects = [
    ...new Set([...from.rules.keys(), ...evidence.cases.map(({ checks }) => checks)].map(subjectOf)),
  ].sort();
  const summary: AuditSummary = {
    format: "pv-to-grid/audit@1",
    library,
    lock: evidenceHash(items),
    total: tallyOf(weighed, null, from),
    subjects: Object.fromEntries(subjects.map((subject) => [subject, tallyOf(weighed, subject, from)])),
    weak: [...weakList(weighed.proofs, weighed.cells, uses, from)],
    changes: [...evidence.changes],
    errata: [...evidence.errata],
  };
  const faults = [
    ...cases.flatMap(caseFault),
    ...guards.flatMap(guardFaults),
    ...(evidence.lock ? lockFaults(items, evidence.lock, evidence.changes) : []),
  ];
  return { ...weighed, guards, summary, faults };
}

function caseFault({ case: one, status, agrees, computed, problem }: JudgedCase): readonly string[] {
  const { printed, unit, rounding } = one.expected;
  const print = `printed ${printed}${unit === "" ? "" : ` ${unit}`} (${rounding}), computed ${computed}`;
  if (status === "fails") return [`${one.id}: ${problem}`];
  if (status === "deviates") return [`${one.id}: ${print}, and no erratum says why`];
  return status === "disputed" && agrees
    ? [`${one.id}: ${print}: it agrees, and yet erratum ${one.erratum} disputes it`]
    : [];
}

function guardFaults({ guard, cells, problems }: GuardOutcome): readonly string[] {
  const differ = cells.filter(({ agrees }) => !agrees);
  return [
    ...problems.map((problem) => `${guard.id}: ${problem}`),
    ...differ.map(
      ({ place, shipped, due }) => `${guard.id}: ${guard.table} ships ${shipped} at ${place}, the guard has ${due}`,
    ),
  ];
}
