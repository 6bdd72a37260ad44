import type { Constant } from "../formula/declaration.js";
import { bibliography, type SourceKey } from "../source/bibliography.js";
import type { Citation } from "../source/citation.js";
import type { Source } from "../source/source.js";
import { type Catalogue, catalogue, type Rule } from "./catalogue.js";

type Of<K extends Rule["kind"]> = Extract<Rule, { readonly kind: K }>;

function listed<K extends Rule["kind"]>(kind: K, from: Catalogue): readonly Of<K>[] {
  return [...from.rules.values()].filter((rule): rule is Of<K> => rule.kind === kind);
}

/** Every formula, by id. */
export const formulas = (from = catalogue()): readonly Of<"formula">[] => listed("formula", from);

/** Every table, by id. */
export const tables = (from = catalogue()): readonly Of<"table">[] => listed("table", from);

/** Every series of sizes, by id. */
export const series = (from = catalogue()): readonly Of<"series">[] => listed("series", from);

/** Every condition, by id. */
export const conditions = (from = catalogue()): readonly Of<"condition">[] => listed("condition", from);

/** Every double-precision method, by id. */
export const models = (from = catalogue()): readonly Of<"model">[] => listed("model", from);

/** The rule of an id, or `undefined`. */
export const ruleById = (id: string, from = catalogue()): Rule | undefined => from.rules.get(id);

/** The folder of a rule. */
export const subjectOf = (id: string): string => id.slice(0, id.indexOf("/"));

/** A named constant and the formulas that use it; a key is one constant wherever it stands. */
export interface ConstantEntry extends Constant {
  readonly key: string;
  readonly usedBy: readonly string[];
}

/** Every named constant once, by key. */
export function constants(from = catalogue()): readonly ConstantEntry[] {
  const found = new Map<string, ConstantEntry>();
  for (const { id, declaration } of formulas(from)) {
    for (const [key, constant] of Object.entries(declaration.constants ?? {})) {
      const known = found.get(key);
      found.set(key, known ? { ...known, usedBy: [...known.usedBy, id] } : { key, ...constant, usedBy: [id] });
    }
  }
  return [...found.values()].sort((a, b) => (a.key < b.key ? -1 : 1));
}

/** Every citation of a rule, its constants' included. */
export function citationsOf({ declaration }: Rule): readonly Citation[] {
  const own = declaration.source;
  if (!("constants" in declaration)) return own;
  return [...own, ...Object.values(declaration.constants ?? {}).flatMap(({ source }) => source)];
}

/** Every publication that some rule cites, with the rules that do. */
export function sources(
  from = catalogue(),
): readonly (Source & { readonly key: SourceKey; readonly citedBy: readonly string[] })[] {
  const citedBy = new Map<SourceKey, Set<string>>();
  for (const rule of from.rules.values()) {
    for (const { in: key } of citationsOf(rule)) citedBy.set(key, (citedBy.get(key) ?? new Set()).add(rule.id));
  }
  return [...citedBy]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, ids]) => ({ ...bibliography[key], key, citedBy: [...ids] }));
}
