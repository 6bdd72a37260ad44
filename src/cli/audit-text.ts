import { type Audit, nearestLimit, type Tally } from "../evidence/index.js";

const WEAK_SHOWN = 10;
const NEAREST_SHOWN = 10;

function gradesText(byGrade: Readonly<Record<string, number | undefined>>): string {
  return Object.entries(byGrade)
    .map(([grade, count]) => `${grade} ${count}`)
    .join(", ");
}

function tallyLines({ formulas, cells, constants, examples, cases }: Tally): readonly string[] {
  const { copy, formula, example, none } = cells.guarded;
  const not = Object.entries(cases.notCounting).map(([why, count]) => `${why} ${count}`);
  return [
    `examples   ${examples.counting} counting, of ${examples.publishers} publishers`,
    `cases      ${cases.all}: ${cases.agree} agree, ${cases.deviate} deviate, ${cases.disputed} disputed; ${cases.counting} count${not.length > 0 ? ` (not: ${not.join(", ")})` : ""}`,
    `formulas   ${formulas.all}: ${formulas.proven} proven, ${formulas.partly} partly, ${formulas.unproven} unproven (${gradesText(formulas.byGrade)})`,
    `cells      ${cells.all}: guarded by copy ${copy}, formula ${formula}, example ${example}; unguarded ${none}; a last digit is noticed in ${cells.shiftNoticed} (${gradesText(cells.byGrade)})`,
    `constants  ${constants.all} (${gradesText(constants.byGrade)})`,
  ];
}

/** The audit for a terminal: what is weak first, figures last. */
export function summaryText({ summary, cases }: Audit): string {
  const { weak, errata, changes, subjects, total } = summary;
  const list = (title: string, lines: readonly string[], shown: number): string[] => {
    const rest = lines.length > shown ? [`  … and ${lines.length - shown} more (--json lists all)`] : [];
    return [`${title}: ${lines.length}`, ...lines.slice(0, shown).map((line) => `  ${line}`), ...rest, ""];
  };
  const nearest = nearestLimit(cases).map(({ case: { id }, share }) => `${share}  ${id}`);
  return [
    "No value was compared with a purchased standard by the project.",
    "",
    ...list(
      "Checked by nobody, or held on less than an edited publication",
      weak.map(({ id, why, safety }) => `${safety ? "safety  " : ""}${id}: ${why}`),
      WEAK_SHOWN,
    ),
    ...list(
      "Departures from print",
      errata.map(({ id, kind, direction }) => `${id}: ${kind}, following the print would be ${direction}`),
      WEAK_SHOWN,
    ),
    ...list("Nearest to what the printed digits allow", nearest.slice(0, NEAREST_SHOWN), NEAREST_SHOWN),
    ...list(
      "Changes of evidence",
      changes.map(({ id, field, reason }) => `${id} ${field}: ${reason}`),
      WEAK_SHOWN,
    ),
    ...Object.entries(subjects).flatMap(([subject, tally]) => [
      subject,
      ...tallyLines(tally).map((line) => `  ${line}`),
      "",
    ]),
    "total",
    ...tallyLines(total).map((line) => `  ${line}`),
  ].join("\n");
}
