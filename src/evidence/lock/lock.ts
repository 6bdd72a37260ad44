import { type Catalogue, catalogue, type Rule } from "../../catalogue/catalogue.js";
import { series, tables } from "../../catalogue/lists.js";
import type { Case, Change, Erratum, Guard, Lock } from "../formats/index.js";
import { cellsOf } from "../guards/grid.js";
import { canonical, fieldAt, hashOf, withField } from "./canonical.js";

const KINDS = ["cases", "tables", "guards", "errata"] as const;
type Kind = (typeof KINDS)[number];

/** Everything that the lock holds a hash of, by kind and id. */
export type LockedItems = Readonly<Record<Kind, ReadonlyMap<string, unknown>>>;

/** What a table or series states: its headings, unit and cells, whatever is said about them. */
function statementOf(rule: Rule): unknown {
  const { declaration } = rule;
  const cells = Object.fromEntries(cellsOf(rule).map(({ place, text }) => [place, text]));
  if (!("rowRule" in declaration)) return { unit: "unit" in declaration ? declaration.unit : null, cells };
  const { rows, rowRule, columns, gives, base } = declaration;
  return { rows: { name: rows.name, unit: "unit" in rows ? rows.unit : null }, rowRule, columns, base, cells, gives };
}

/** The evidence as the lock sees it. An erratum's list of cases may grow. */
export function lockedItems(
  {
    cases,
    guards,
    errata,
  }: { readonly cases: readonly Case[]; readonly guards: readonly Guard[]; readonly errata: readonly Erratum[] },
  from: Catalogue = catalogue(),
): LockedItems {
  return {
    cases: new Map(cases.map((one) => [one.id, one])),
    tables: new Map([...tables(from), ...series(from)].map((rule) => [rule.id, statementOf(rule)])),
    guards: new Map(guards.map((guard) => [guard.id, guard])),
    errata: new Map(errata.map((erratum) => [erratum.id, { ...erratum, cases: null }])),
  };
}

/**
 * What differs from the lock without a change that says so. Adding is free. The changes of an item, undone newest first,
 * must each find what they say they left, and give in the end the item that the lock holds.
 */
export function lockFaults(items: LockedItems, lock: Lock, changes: readonly Change[]): readonly string[] {
  const faults: string[] = [];
  for (const kind of KINDS) {
    for (const [id, hash] of Object.entries(lock[kind])) {
      const fault = faultOf(
        items[kind].get(id) ?? null,
        hash,
        changes.filter((change) => change.id === `${kind}/${id}`),
      );
      if (fault !== null) faults.push(`${kind}/${id} ${fault}`);
    }
  }
  for (const { id } of changes) {
    const [kind = "", ...rest] = id.split("/");
    if (!(kind in lock) || !(rest.join("/") in lock[kind as Kind]))
      faults.push(`${id} has a change, but the lock does not hold it`);
  }
  return faults;
}

function faultOf(item: unknown, hash: string, changes: readonly Change[]): string | null {
  let before = item;
  for (const { field, from, to } of changes.toReversed()) {
    if (canonical(fieldAt(before, field)) !== canonical(to)) return `is not what its change of "${field}" left`;
    before = withField(before, field, from);
  }
  if (before !== null && hashOf(before) === hash) return null;
  return item === null ? "was removed, and no change says so" : "was altered, and no change says so";
}

/** The lock with what is new added; what it held stays as it first stood. */
export function extendedLock(items: LockedItems, lock: Lock | null): Lock {
  const hashes = (kind: Kind): Record<string, string> => {
    const all = { ...Object.fromEntries([...items[kind]].map(([id, item]) => [id, hashOf(item)])), ...lock?.[kind] };
    return Object.fromEntries(Object.entries(all).sort(([a], [b]) => (a < b ? -1 : 1)));
  };
  return {
    format: "pv-to-grid/lock@1",
    cases: hashes("cases"),
    tables: hashes("tables"),
    guards: hashes("guards"),
    errata: hashes("errata"),
  };
}

/** One hash of the whole evidence as it stands. */
export function evidenceHash(items: LockedItems): string {
  const { cases, tables: shipped, guards, errata } = extendedLock(items, null);
  return `sha256:${hashOf({ cases, tables: shipped, guards, errata })}`;
}
