import { type Catalogue, citationsOf, type Rule, subjectOf } from "../../../src/catalogue/index.js";
import type { Audit, ClauseEntry, WrongRelease } from "../../../src/evidence/index.js";
import type { Citation } from "../../../src/source/index.js";

/** What the pages are made of. */
export interface Findings {
  readonly audit: Audit;
  readonly catalogue: Catalogue;
  readonly clauses: readonly ClauseEntry[];
  readonly wrongReleases: readonly WrongRelease[];
}

/** What a rule is about, in one line. */
export function aboutOf({ declaration }: Rule): string {
  return "asks" in declaration ? declaration.asks : declaration.about;
}

/** A citation in one line: what is claimed, where it was seen, and the grade. */
export function citationText({ in: key, clause, grade, seen }: Citation): string {
  const place = seen === undefined ? "" : `, as seen in ${seen}`;
  return `${key}, ${clause}${place} (${grade})`;
}

/** The rules of a subject, by id. */
export function rulesOf(subject: string, { rules }: Catalogue): readonly Rule[] {
  return [...rules.values()].filter(({ id }) => subjectOf(id) === subject);
}

/** Things by a name of theirs, in order of first appearance. */
export function grouped<T>(
  things: readonly T[],
  nameOf: (thing: T) => string,
): readonly (readonly [string, readonly T[]])[] {
  const groups = new Map<string, T[]>();
  for (const thing of things) groups.set(nameOf(thing), [...(groups.get(nameOf(thing)) ?? []), thing]);
  return [...groups];
}

export { citationsOf };
