import { type JudgedCase, nearestLimit, type Tally, type Weak } from "../../../src/evidence/index.js";
import type { Findings } from "./findings.js";
import { counts, page, table } from "./markdown.js";

const NEAREST = 10;

/** The audit page: what is weak first, totals last, and never one percentage. */
export function auditPage({ audit }: Findings): string {
  const { summary } = audit;
  const safety = summary.weak.filter((entry) => entry.safety);
  const others = summary.weak.filter((entry) => !entry.safety);
  return page("Audit", [
    "**No value was compared with a purchased standard by the project.** Grades say where each value was seen: *original* (the cited publication itself), *reproduced* (another edited publication that names the clause), *copied* (files or uploads without an editor), *common-practice* (a fact of the trade, no publication), *memory* (recalled).",
    `## What nobody has checked\n\nSafety first: rules behind a requirement that a sizing of the example plants weighs, and the requirements themselves. ${safety.length} of them, then ${others.length} others in [weak.md](weak.md).`,
    weakTable(safety),
    "## Where the library departs from print",
    "Each is argued in [errata.md](errata.md). *Unsafe* means that following the print would be unsafe.",
    table(
      ["erratum", "source", "kind", "printed", "computed", "following the print"],
      [...summary.errata]
        .sort(byDirection)
        .map(({ id, source, kind, printed, computed, direction }) => [id, source, kind, printed, computed, direction]),
    ),
    "## The cases nearest to what their printed digits allow",
    "A share of 1 means that the computed value lies exactly half a unit of the last printed digit away.",
    table(
      ["share", "case", "checks", "printed", "computed", "source"],
      nearestLimit(audit.cases)
        .slice(0, NEAREST)
        .map((one) => [one.share, one.case.id, one.case.checks, printedText(one), one.computed, seenText(one)]),
    ),
    "## What changed",
    "Every alteration or removal of a case, shipped table, guard or erratum since it was first locked.",
    table(
      ["item", "field", "from", "to", "reason", "date"],
      summary.changes.map(({ id, field, from, to, reason, date }) => [
        id,
        field,
        JSON.stringify(from),
        JSON.stringify(to),
        reason,
        date,
      ]),
    ),
    "## Totals",
    `Library ${summary.library}, evidence \`${summary.lock}\`. An example counts once, however many numbers it prints. A formula is proven when a shift of each of its symbols would be noticed by some counting case, partly when of some. A cell is guarded by another copy, by the law that the standard gives, or by a counting case that would notice another last digit.`,
    totals(summary.subjects, summary.total),
    "## Why cases do not count",
    table(["reason", "cases"], Object.entries(summary.total.cases.notCounting)),
    "## More",
    "[Clause map](clauses.md) · [errata](errata.md) · [what else is weak](weak.md) · [releases that were wrong](wrong-releases.md) · every rule with its sources and the values that it reproduces, by subject: " +
      Object.keys(summary.subjects)
        .map((subject) => `[${subject}](subjects/${subject}.md)`)
        .join(", ") +
      " · the same as [CSV](audit.csv) and [JSON](audit.json).",
    "`npm run audit` or, from the installed package, `npx pv-to-grid audit` computes all this again; `--cases FOLDER` runs cases of your own in the [same format](../../reference-data/schemas/cases.schema.json).",
  ]);
}

const DIRECTIONS = ["unsafe", "safe", "none"];

function byDirection(a: { readonly direction: string; readonly id: string }, b: typeof a): number {
  return DIRECTIONS.indexOf(a.direction) - DIRECTIONS.indexOf(b.direction) || (a.id < b.id ? -1 : 1);
}

export function weakTable(entries: readonly Weak[]): string {
  return table(
    ["rule", "kind", "why", "behind the checks"],
    entries.map(({ id, kind, why, usedByChecks }) => [id, kind, why, usedByChecks.join(", ")]),
  );
}

export const printedText = ({ case: { expected } }: JudgedCase): string =>
  `${expected.printed} ${expected.unit} (${expected.rounding})`.replace("  ", " ");
export const seenText = ({ case: { seen } }: JudgedCase): string => `${seen.in}, ${seen.place} (${seen.grade})`;

/** Examples and cells side by side. */
function totals(subjects: Readonly<Record<string, Tally>>, total: Tally): string {
  const row = (name: string, { formulas, cells, constants, examples, cases }: Tally): readonly (string | number)[] => [
    name,
    `${examples.counting} of ${examples.publishers} publishers`,
    `${cases.all}: ${cases.agree} agree, ${cases.deviate} deviate, ${cases.disputed} disputed, ${cases.counting} count`,
    `${formulas.all}: ${formulas.proven} proven, ${formulas.partly} partly, ${formulas.unproven} unproven`,
    `${cells.all}: ${cells.guarded.copy} copy, ${cells.guarded.formula} law, ${cells.guarded.example} example, ${cells.guarded.none} unguarded`,
    cells.shiftNoticed,
    `${constants.all}: ${counts(constants.byGrade)}`,
  ];
  const heads = [
    "subject",
    "examples that count",
    "cases",
    "formulas and methods",
    "cells",
    "last digit noticed",
    "constants",
  ];
  return table(heads, [...Object.entries(subjects).map(([name, tally]) => row(name, tally)), row("**all**", total)]);
}
