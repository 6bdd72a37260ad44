import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Catalogue, catalogue, type Rule } from "../../../src/catalogue/index.js";
import * as subjects from "../../../src/catalogue/subjects.js";
import { readReferenceFiles } from "../../../src/cli/audit-files.js";
import type { Case, Erratum, Guard, Terms } from "../../../src/evidence/index.js";

/** What the audit found for a case, a formula and a table, as `docs/audit/audit.json` holds it. */
interface AuditFile {
  readonly cases: readonly {
    readonly id: string;
    readonly status: string;
    readonly computed: string | null;
    readonly share: string | null;
    readonly notCounting: string | null;
  }[];
  readonly formulas: readonly {
    readonly id: string;
    readonly state: string;
    readonly unnoticed: readonly string[];
    readonly because: string | null;
  }[];
  readonly tables: readonly { readonly id: string; readonly cells: number; readonly unguarded: readonly string[] }[];
}

/** A published case and what came of it. */
export interface KnownCase {
  readonly case: Case;
  readonly found: AuditFile["cases"][number] | undefined;
}

/** Everything that the pages are made of, apart from the reflections of TypeScript. */
export interface Knowledge {
  readonly catalogue: Catalogue;
  /** The rule that a subject exports by a name. */
  readonly exported: (subject: string, name: string) => Rule | undefined;
  readonly terms: Terms;
  readonly casesOf: (id: string) => readonly KnownCase[];
  readonly errataOf: (id: string) => readonly Erratum[];
  readonly guardsOf: (id: string) => readonly Guard[];
  readonly proofOf: (id: string) => AuditFile["formulas"][number] | undefined;
  readonly unguardedOf: (id: string) => readonly string[];
  /** Rules that take or give a key, or a symbol of that key. */
  readonly usersOf: (key: string) => readonly Rule[];
}

/** Reads the rules, the reference data and the findings of the audit. */
export function readKnowledge(root: string): Knowledge {
  const files = readReferenceFiles(join(root, "reference-data"));
  const audit = JSON.parse(readFileSync(join(root, "docs/audit/audit.json"), "utf8")) as AuditFile;
  const all = catalogue();
  const cases = files.cases.flatMap(({ content }) => content);
  const errata = files.errata.flatMap(({ content }) => content);
  const guards = files.guards.map(({ content }) => content);
  const terms: Terms = Object.assign({}, ...files.terms.map(({ content }) => content)) as Terms;
  const found = new Map(audit.cases.map((one) => [one.id, one]));
  const casesOf = grouped(cases, ({ checks }) => [checks]);
  const guardsOf = grouped(guards, (guard) => [guard.table]);
  const users = grouped([...all.rules.values()], keysOf);
  const checkedBy = new Map(cases.map(({ id, checks }) => [id, checks]));
  const errataOf = grouped(errata, (erratum) => [
    ...new Set([
      ...erratum.cases.map((id) => checkedBy.get(id) ?? ""),
      ...cases.filter((one) => one.erratum === erratum.id).map(({ checks }) => checks),
      ...(`${erratum.problem} ${erratum.evidence} ${erratum.libraryDoes}`.match(/\b[a-z]+\/[a-z0-9-]+\b/g) ?? []),
    ]),
  ]);
  const proofs = new Map(audit.formulas.map((one) => [one.id, one]));
  const tables = new Map(audit.tables.map((one) => [one.id, one]));
  return {
    catalogue: all,
    exported: (subject, name) => {
      const faces: Readonly<Record<string, Readonly<Record<string, unknown>>>> = subjects;
      const value = faces[subject]?.[name];
      const known = typeof value === "function" || typeof value === "object";
      return known && value !== null && "id" in value ? all.rules.get(String(value.id)) : undefined;
    },
    terms,
    casesOf: (id) => (casesOf.get(id) ?? []).map((one) => ({ case: one, found: found.get(one.id) })),
    errataOf: (id) => errataOf.get(id) ?? [],
    guardsOf: (id) => guardsOf.get(id) ?? [],
    proofOf: (id) => proofs.get(id),
    unguardedOf: (id) => tables.get(id)?.unguarded ?? [],
    usersOf: (key) => users.get(key) ?? [],
  };
}

/** The keys that a rule is called with. */
export function keysOf({ declaration }: Rule): readonly string[] {
  if ("takes" in declaration) return Object.keys(declaration.takes);
  if ("rows" in declaration) return [declaration.rows.name, ...Object.keys(declaration.columns ?? {})];
  return [];
}

function grouped<T>(things: readonly T[], namesOf: (thing: T) => readonly string[]): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const thing of things) {
    for (const name of namesOf(thing)) groups.set(name, [...(groups.get(name) ?? []), thing]);
  }
  return groups;
}
