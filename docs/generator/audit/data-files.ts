import { constants, subjectOf } from "../../../src/catalogue/index.js";
import { bestGrade } from "../../../src/source/index.js";
import { aboutOf, citationsOf, type Findings, grouped } from "./findings.js";

const CELL_BREAKS = /[",\n]/;
const quoted = (text: string): string => (CELL_BREAKS.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** One line a rule, constant and case: the audit for a spreadsheet. */
export function auditCsv({ audit, catalogue }: Findings): string {
  const heads = [
    "kind",
    "subject",
    "id",
    "about",
    "state",
    "grade",
    "source",
    "place",
    "printed",
    "unit",
    "computed",
    "share",
    "why",
  ];
  const stateOf = new Map(audit.proofs.map((proof) => [proof.id, proof]));
  const weak = new Map(audit.summary.weak.map((entry) => [entry.id, entry.why]));
  const rules = [...catalogue.rules.values()].map((rule) => {
    const citation = citationsOf(rule)[0];
    const state = stateOf.get(rule.id)?.state ?? "";
    return [
      rule.kind,
      subjectOf(rule.id),
      rule.id,
      aboutOf(rule),
      state,
      bestGrade(rule.declaration.source) ?? "",
      citation?.in ?? "",
      citation?.clause ?? "",
      "",
      "",
      "",
      "",
      weak.get(rule.id) ?? "",
    ];
  });
  const fixed = constants(catalogue).map(({ key, about, value, unit, source, usedBy }) => {
    const citation = source[0];
    return [
      "constant",
      subjectOf(usedBy[0] ?? ""),
      key,
      about,
      "",
      bestGrade(source) ?? "",
      citation?.in ?? "",
      citation?.clause ?? "",
      value,
      unit,
      "",
      "",
      weak.get(key) ?? "",
    ];
  });
  const cases = audit.cases.map(({ case: one, status, computed, share, notCounting }) => [
    "case",
    subjectOf(one.checks),
    one.id,
    one.checks,
    status,
    one.seen.grade,
    one.seen.in,
    one.seen.place,
    one.expected.printed,
    one.expected.unit,
    computed ?? "",
    share ?? "",
    notCounting ?? "counts",
  ]);
  return `${[heads, ...rules, ...fixed, ...cases].map((row) => row.map(quoted).join(",")).join("\n")}\n`;
}

/** The audit for a program: the summary, then each formula, case and table. */
export function auditJson({ audit }: Findings): string {
  const tables = grouped(audit.cells, ({ table }) => table).map(([id, cells]) => ({
    id,
    cells: cells.length,
    unguarded: cells.filter(({ guardedBy }) => guardedBy === "none").map(({ place }) => place),
    unnoticed: cells.filter(({ shiftNoticed }) => !shiftNoticed).map(({ place }) => place),
  }));
  const cases = audit.cases.map(({ case: { id, checks }, status, computed, share, notices, notCounting }) => ({
    id,
    checks,
    status,
    computed,
    share,
    notices,
    notCounting,
  }));
  const entries = (name: string, list: readonly object[]): string =>
    `  ${JSON.stringify(name)}: [\n${list.map((entry) => `    ${JSON.stringify(entry)}`).join(",\n")}\n  ]`;
  const { weak, errata, changes, ...figures } = audit.summary;
  const head = Object.entries(figures).map(([key, value]) => `  ${JSON.stringify(key)}: ${JSON.stringify(value)}`);
  return `{\n${[...head, entries("weak", weak), entries("errata", errata), entries("changes", changes), entries("formulas", audit.proofs), entries("cases", cases), entries("tables", tables)].join(",\n")}\n}\n`;
}
