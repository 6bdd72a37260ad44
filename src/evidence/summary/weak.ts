import { type Catalogue, catalogue, type Rule } from "../../catalogue/catalogue.js";
import { constants } from "../../catalogue/lists.js";
import { ownGrade } from "../../formula/grade-of.js";
import { bestGrade, type Grade } from "../../source/grade.js";
import type { Proof } from "../cases/proof.js";
import type { CellState } from "../cells/cells.js";
import type { Weak } from "../formats/index.js";
import type { Uses } from "./uses.js";

const STRONG: readonly (Grade | null)[] = ["original", "reproduced"];

/** The grade of a rule: its best source, weakened by its constants. */
export function gradeOfRule({ declaration }: Rule): Grade | null {
  return "expression" in declaration ? ownGrade(declaration) : bestGrade(declaration.source);
}

/** What nobody has checked: held on less than an edited publication, unproven, or unguarded; safety checks first. */
export function weakList(
  proofs: readonly Proof[],
  cells: readonly CellState[],
  uses: Uses,
  from: Catalogue = catalogue(),
): readonly Weak[] {
  const proofOf = new Map(proofs.map((proof) => [proof.id, proof]));
  const list: Weak[] = [];
  const add = (id: string, kind: Weak["kind"], reasons: readonly string[], rules: readonly string[]): void => {
    if (reasons.length === 0) return;
    const checks = new Map(rules.flatMap((rule) => [...(uses.get(rule) ?? [])]));
    const own = from.rules.get(id);
    if (own?.kind === "condition") checks.set(id, own.declaration.force);
    const safety = [...checks.values()].includes("requirement");
    list.push({ id, kind, why: reasons.join("; "), usedByChecks: [...checks.keys()].sort(), safety });
  };
  for (const rule of from.rules.values()) {
    const grade = gradeOfRule(rule);
    const reasons = STRONG.includes(grade) ? [] : [grade ?? "no source"];
    reasons.push(...unproven(proofOf.get(rule.id)), ...unguarded(rule.id, cells));
    add(rule.id, rule.kind, reasons, [rule.id]);
  }
  for (const { key, source, usedBy } of constants(from)) {
    const grade = bestGrade(source);
    add(key, "constant", STRONG.includes(grade) ? [] : [grade ?? "no source"], usedBy);
  }
  return list.sort((a, b) => Number(b.safety) - Number(a.safety) || (a.id < b.id ? -1 : 1));
}

// A definition has nothing to be proven by, and a composition is as good as its parts.
const HARMLESS: readonly (string | null)[] = ["definition", "composition only"];

function unproven(proof: Proof | undefined): readonly string[] {
  if (!proof || proof.state === "proven" || (proof.state === "unproven" && HARMLESS.includes(proof.because))) return [];
  const because = proof.because ?? "no reason given";
  return [proof.state === "partly" ? `not noticed: ${proof.unnoticed.join(", ")}` : `unproven: ${because}`];
}

function unguarded(table: string, cells: readonly CellState[]): readonly string[] {
  const own = cells.filter((cell) => cell.table === table);
  const bare = own.filter(({ guardedBy }) => guardedBy === "none").length;
  return bare === 0 ? [] : [`${bare} of ${own.length} cells unguarded`];
}
