import { type Rule, subjectOf } from "../../../src/catalogue/index.js";
import type { JudgedCase } from "../../../src/evidence/index.js";
import { equationOf } from "../../../src/formula/index.js";
import { printedText, seenText } from "./audit-page.js";
import { aboutOf, citationText, type Findings, grouped, rulesOf } from "./findings.js";
import { page, table } from "./markdown.js";

/** Every rule of a subject with its sources, and the published values that it reproduces. */
export function subjectPage(subject: string, findings: Findings): string {
  const { audit, catalogue } = findings;
  const rules = rulesOf(subject, catalogue).map((rule) => rulePart(rule, findings));
  const known = new Set(catalogue.rules.keys());
  const calculations = audit.cases.filter(
    ({ case: { checks } }) => subjectOf(checks) === subject && !known.has(checks),
  );
  const others = grouped(calculations, ({ case: { checks } }) => checks).map(
    ([id, cases]) => `## ${id}\n\nA calculation of several rules.\n\n${casesTable(cases)}`,
  );
  return page(`Rules of ${subject} and what they reproduce`, [...rules, ...others]);
}

function rulePart(rule: Rule, { audit }: Findings): string {
  const { id, declaration } = rule;
  const proof = audit.proofs.find((one) => one.id === id);
  const cells = audit.cells.filter(({ table: name }) => name === id);
  const cases = audit.cases.filter(({ case: { checks } }) => checks === id);
  const guards = audit.guards.filter(({ guard }) => guard.table === id);
  const lines = [`${rule.kind}: ${aboutOf(rule)}`];
  if ("expression" in declaration) lines.push(`\`${equationOf(declaration)}\``);
  lines.push(...declaration.source.map((citation) => `- ${citationText(citation)}`));
  if ("constants" in declaration) {
    for (const [key, { value, unit, symbol, source }] of Object.entries(declaration.constants ?? {})) {
      lines.push(`- constant ${key}: ${symbol} = ${value} ${unit} – ${source.map(citationText).join("; ")}`);
    }
  }
  if (proof)
    lines.push(
      `**${proof.state}**${proof.unnoticed.length > 0 && proof.state !== "unproven" ? `, but for ${proof.unnoticed.join(", ")}` : ""}${proof.because === null ? "" : `: ${proof.because}`}`,
    );
  if (cells.length > 0) {
    const by = (name: string): number => cells.filter(({ guardedBy }) => guardedBy === name).length;
    lines.push(
      `${cells.length} cells: ${by("copy")} guarded by a copy, ${by("formula")} by the law, ${by("example")} by an example, ${by("none")} unguarded.`,
    );
  }
  if ("differences" in declaration) {
    for (const { cell, ships, others, why } of declaration.differences ?? []) {
      lines.push(`- copies differ at ${cell}: ships ${ships}, others ${others}; ${why}`);
    }
  }
  lines.push(
    ...guards.map(
      ({ guard, cells: own }) =>
        `- guard ${guard.id}: ${guard.by === "copy" ? "copy" : `law ${guard.rule}`}, ${guard.seen.in}, ${guard.seen.place} (${guard.seen.grade}), ${own.length} cells`,
    ),
  );
  return [`## ${id}`, blocks(lines), ...(cases.length > 0 ? [casesTable(cases)] : [])].join("\n\n");
}

// List lines follow each other; all else stands apart.
function blocks(lines: readonly string[]): string {
  return lines.reduce(
    (text, line, at) =>
      text + (at === 0 ? "" : line.startsWith("- ") && lines[at - 1]!.startsWith("- ") ? "\n" : "\n\n") + line,
    "",
  );
}

function casesTable(cases: readonly JudgedCase[]): string {
  return table(
    ["case", "at", "source", "inputs", "printed", "computed", "share", "counts"],
    cases.map((one) => [
      one.case.id,
      one.case.at || null,
      seenText(one),
      inputsText(one),
      printedText(one),
      short(one.computed),
      one.share,
      verdict(one),
    ]),
  );
}

function inputsText({ case: { inputs } }: JudgedCase): string {
  return Object.entries(inputs)
    .map(
      ([key, input]) =>
        `${key} ${"printed" in input ? String(input.printed) : `${String(input.unprinted)} (not printed)`}`,
    )
    .join(", ");
}

const LONGEST = 14;

function short(text: string | null): string | null {
  return text !== null && text.length > LONGEST && /^-?\d+\.\d+$/.test(text) ? `${text.slice(0, LONGEST)}…` : text;
}

function verdict({ notCounting, case: { erratum }, problem }: JudgedCase): string {
  if (notCounting === null) return "yes";
  return `no: ${notCounting}${erratum === null ? "" : ` (erratum ${erratum})`}${problem === null ? "" : ` (${problem})`}`;
}
