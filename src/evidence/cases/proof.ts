import { type Catalogue, catalogue } from "../../catalogue/catalogue.js";
import { formulas, models } from "../../catalogue/lists.js";
import type { JudgedCase } from "./counting.js";

/** How far published values prove a formula or a method. */
export interface Proof {
  readonly id: string;
  readonly kind: "formula" | "model";
  readonly state: "proven" | "partly" | "unproven";
  /** Symbols of which no counting case notices a shift. */
  readonly unnoticed: readonly string[];
  /** Counting cases that check it. */
  readonly cases: readonly string[];
  /** Why it is not proven, as its declaration says; `null` where it is proven or says nothing. */
  readonly because: string | null;
}

/** Weighs every formula and method against the counting cases: proven when each symbol is noticed by some of them. */
export function proofs(judged: readonly JudgedCase[], from: Catalogue = catalogue()): readonly Proof[] {
  return [...formulas(from), ...models(from)].map(({ id, kind, declaration }) => {
    const own = judged.filter(
      (one) => one.case.checks === id && one.notCounting === null && !one.case.at.startsWith("constants."),
    );
    const noticed = new Set(own.flatMap(({ notices }) => notices));
    const symbols = Object.keys(declaration.takes);
    const unnoticed = symbols.filter((symbol) => !noticed.has(symbol));
    const state =
      own.length > 0 && unnoticed.length === 0 ? "proven" : unnoticed.length < symbols.length ? "partly" : "unproven";
    const because = state === "proven" || !("unproven" in declaration) ? null : reason(declaration.unproven);
    return { id, kind, state, unnoticed, cases: own.map((one) => one.case.id), because };
  });
}

function reason(unproven: { readonly because: string; readonly sought?: string } | undefined): string | null {
  if (!unproven) return null;
  return unproven.sought === undefined ? unproven.because : `${unproven.because}; sought: ${unproven.sought}`;
}
