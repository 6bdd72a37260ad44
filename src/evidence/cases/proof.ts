import { type Catalogue, catalogue } from "../../catalogue/catalogue.js";
import { formulas, models } from "../../catalogue/lists.js";
import type { JudgedCase } from "./counting.js";
import { symbolsNoticedBy } from "./noticed-symbols.js";

/** How far published values prove a formula or a method. */
export interface Proof {
  readonly id: string;
  readonly kind: "formula" | "model";
  readonly state: "proven" | "partly" | "unproven";
  /** Symbols of which no counting case notices a shift. */
  readonly unnoticed: readonly string[];
  /** Counting cases that check it, or that notice it on the way to their result. */
  readonly cases: readonly string[];
  /** Why it is not proven, as its declaration says; `null` where it is proven or says nothing. */
  readonly because: string | null;
}

/**
 * Weighs every formula and method against the counting cases: proven when each symbol is noticed by some of them.
 * A case notices its own inputs, and what goes into the formulas on the way to its result.
 */
export function proofs(judged: readonly JudgedCase[], from: Catalogue = catalogue()): readonly Proof[] {
  const counting = judged.filter((one) => one.notCounting === null && !one.case.at.startsWith("constants."));
  const through = new Map(counting.map((one) => [one, symbolsByFormula(one)]));
  return [...formulas(from), ...models(from)].map(({ id, kind, declaration }) => {
    const own = counting.filter((one) => one.case.checks === id || through.get(one)!.has(id));
    const noticed = new Set(
      own.flatMap((one) => [...(one.case.checks === id ? one.notices : []), ...(through.get(one)!.get(id) ?? [])]),
    );
    const symbols = Object.keys(declaration.takes);
    const unnoticed = symbols.filter((symbol) => !noticed.has(symbol));
    const state =
      own.length > 0 && unnoticed.length === 0 ? "proven" : unnoticed.length < symbols.length ? "partly" : "unproven";
    const because = state === "proven" || !("unproven" in declaration) ? null : reason(declaration.unproven);
    return { id, kind, state, unnoticed, cases: own.map((one) => one.case.id), because };
  });
}

/** The symbols that a case notices, by formula: those of the formulas on the way to its result. */
function symbolsByFormula(one: JudgedCase): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const { formula, symbol } of symbolsNoticedBy(one)) found.set(formula, [...(found.get(formula) ?? []), symbol]);
  return found;
}

function reason(unproven: { readonly because: string; readonly sought?: string } | undefined): string | null {
  if (!unproven) return null;
  return unproven.sought === undefined ? unproven.because : `${unproven.because}; sought: ${unproven.sought}`;
}
