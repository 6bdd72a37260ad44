import { bibliography } from "../../../src/source/index.js";
import { aboutOf, citationsOf, type Findings } from "./findings.js";
import { page, table } from "./markdown.js";

/** A newer edition of the same designation, where the bibliography has one. */
function newerEdition(key: string): string | null {
  const [designation, edition] = split(key);
  const later = Object.keys(bibliography)
    .map((other) => ({ other, parts: split(other) }))
    .filter(({ parts }) => parts[0] === designation && Number(parts[1]) > Number(edition))
    .sort((a, b) => Number(b.parts[1]) - Number(a.parts[1]));
  return later[0]?.other ?? null;
}

function split(key: string): readonly [string, string] {
  const at = key.lastIndexOf(":");
  return [key.slice(0, at), key.slice(at + 1)];
}

/** Clauses and the rules that follow them, by publication. */
export function clausesPage({ catalogue, clauses }: Findings): string {
  const rows = new Map<string, (readonly (string | null)[])[]>();
  const known = new Map(clauses.map((entry) => [`${entry.in} ${entry.clause}`, entry]));
  for (const rule of catalogue.rules.values()) {
    for (const { in: key, clause, grade } of new Map(
      citationsOf(rule).map((one) => [`${one.in} ${one.clause}`, one]),
    ).values()) {
      const entry = known.get(`${key} ${clause}`);
      const row = [
        clause,
        entry?.words ?? aboutOf(rule),
        entry?.applies ?? null,
        entry?.implemented ?? "not assessed",
        rule.id,
        grade,
      ];
      rows.set(key, [...(rows.get(key) ?? []), row]);
    }
  }
  for (const { in: key, clause, words, applies, implemented } of clauses.filter(({ by }) => by.length === 0)) {
    rows.set(key, [...(rows.get(key) ?? []), [clause, words, applies, implemented, null, null]]);
  }
  const parts = [...rows]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([key, own]) => {
      const source = bibliography[key as keyof typeof bibliography];
      const newer = newerEdition(key);
      const sorted = own.sort((a, b) => (a.join() < b.join() ? -1 : 1));
      return [
        `## ${key}\n\n${source.title}, ${source.publisher}.${newer === null ? "" : ` A newer edition is in the bibliography: ${newer}.`}`,
        table(["clause", "rule, in our words", "applies", "implemented", "by", "grade"], sorted),
      ];
    });
  return page("Clause map", [
    "Which clause of which publication each rule follows. *Not assessed* means that nobody has yet compared the whole clause with what the rule does.",
    ...parts,
  ]);
}
