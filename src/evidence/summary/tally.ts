import { type Catalogue, catalogue } from "../../catalogue/catalogue.js";
import { constants, subjectOf } from "../../catalogue/lists.js";
import { bestGrade, type Grade } from "../../source/grade.js";
import type { JudgedCase } from "../cases/counting.js";
import type { Proof } from "../cases/proof.js";
import type { CellState } from "../cells/cells.js";
import { publisherOf } from "../cells/guarding.js";
import { order, readDigits } from "../digits.js";
import type { Tally } from "../formats/index.js";
import { gradeOfRule } from "./weak.js";

/** Everything that the audit weighs one by one. */
export interface Weighed {
  readonly cases: readonly JudgedCase[];
  readonly proofs: readonly Proof[];
  readonly cells: readonly CellState[];
}

function counted<K extends string>(keys: readonly K[]): Record<K, number> {
  const counts = new Map<K, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return Object.fromEntries(counts) as Record<K, number>;
}

function byGrade(grades: readonly (Grade | null)[]): Partial<Record<Grade, number>> {
  return counted(grades.filter((grade) => grade !== null));
}

/** The figures of one subject, or of all where none is named. A constant that two subjects use counts once in the total. */
export function tallyOf(
  { cases, proofs, cells }: Weighed,
  subject: string | null,
  from: Catalogue = catalogue(),
): Tally {
  const isOwn = (id: string): boolean => subject === null || subjectOf(id) === subject;
  const ownCases = cases.filter((one) => isOwn(one.case.checks));
  const ownProofs = proofs.filter(({ id }) => isOwn(id));
  const ownCells = cells.filter(({ table }) => isOwn(table));
  const ownConstants = constants(from).filter(({ usedBy }) => usedBy.some(isOwn));
  const counting = ownCases.filter(({ notCounting }) => notCounting === null);
  const state = (name: Proof["state"]): number => ownProofs.filter((proof) => proof.state === name).length;
  const guarded = (by: CellState["guardedBy"]): number => ownCells.filter(({ guardedBy }) => guardedBy === by).length;
  return {
    formulas: {
      all: ownProofs.length,
      proven: state("proven"),
      partly: state("partly"),
      unproven: state("unproven"),
      byGrade: byGrade(ownProofs.map(({ id }) => gradeOfRule(from.rules.get(id)!))),
    },
    cells: {
      all: ownCells.length,
      guarded: {
        copy: guarded("copy"),
        formula: guarded("formula"),
        example: guarded("example"),
        none: guarded("none"),
      },
      shiftNoticed: ownCells.filter(({ shiftNoticed }) => shiftNoticed).length,
      byGrade: byGrade(ownCells.map(({ grade }) => grade)),
    },
    constants: { all: ownConstants.length, byGrade: byGrade(ownConstants.map(({ source }) => bestGrade(source))) },
    examples: {
      counting: new Set(counting.map((one) => one.case.example)).size,
      publishers: new Set(counting.map((one) => publisherOf(one.case.seen.in))).size,
    },
    cases: {
      all: ownCases.length,
      agree: ownCases.filter(({ status }) => status === "agrees").length,
      deviate: ownCases.filter(({ status }) => status === "deviates" || status === "fails").length,
      disputed: ownCases.filter(({ status }) => status === "disputed").length,
      counting: counting.length,
      notCounting: counted(ownCases.flatMap(({ notCounting }) => (notCounting === null ? [] : [notCounting])).sort()),
    },
    largestShareOfTolerance: largestShare(ownCases),
  };
}

/** Agreeing cases that use most of what their last printed digit allows, nearest the limit first. */
export function nearestLimit(cases: readonly JudgedCase[]): readonly JudgedCase[] {
  return cases
    .filter(({ status, share, case: one }) => status === "agrees" && share !== null && !one.inputsRounded)
    .sort((a, b) => order(readDigits(b.share!)!, readDigits(a.share!)!) || (a.case.id < b.case.id ? -1 : 1));
}

function largestShare(cases: readonly JudgedCase[]): Tally["largestShareOfTolerance"] {
  const nearest = nearestLimit(cases)[0];
  return nearest ? { share: nearest.share!, case: nearest.case.id } : null;
}
