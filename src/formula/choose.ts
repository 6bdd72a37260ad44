import { keptOf, makeQuantity, type Origin, type Quantity } from "../quantity/quantity.js";
import type { DimensionOf, Unit } from "../quantity/units.js";
import type { Check } from "./condition.js";
import type { SeriesDeclaration } from "./declaration.js";
import type { Series } from "./series.js";

/** Why a size was not taken. */
export interface Rejected {
  readonly size: Quantity;
  readonly failed: readonly Check[];
}

/** Chosen from a standard series: the checks that it passed and why each smaller size fails. */
export interface ChoiceOrigin extends Origin {
  readonly kind: "choice";
  readonly rule: SeriesDeclaration;
  readonly checks?: readonly Check[];
  readonly rejected?: readonly Rejected[];
}

/** The outcome of a choice from a series. */
export interface Choice<U extends Unit = Unit> {
  /** The smallest size that no requirement refuses, nor any recommendation that some size can meet; `null` where none passes. */
  readonly chosen: Quantity<DimensionOf<U>> | null;
  /** The checks of the chosen size, or of the largest where none passes. */
  readonly checks: readonly Check[];
  readonly rejected: readonly Rejected[];
  /** The checks that the next smaller size fails: what fixed the size. */
  readonly fixedBy: readonly Check[];
}

/**
 * Chooses the smallest size of a series for which every requirement holds, and every recommendation that some size of
 * the series can meet. A size whose check is open is taken and its open check stays visible. Yield checks do not choose.
 */
export function choose<U extends Unit>(
  from: Series<U>,
  checksFor: (size: Quantity<DimensionOf<U>>) => readonly Check[],
): Choice<U> {
  return chooseAmong(from.declaration, from.sizes() as readonly Quantity[], checksFor) as unknown as Choice<U>;
}

/** Chooses among some sizes of a series, such as those that a terminal takes. */
export function chooseAmong<Q extends Quantity>(
  rule: SeriesDeclaration,
  sizes: readonly Q[],
  checksFor: (size: Q) => readonly Check[],
): Choice {
  const tried = sizes.map((size) => ({ size, checks: checksFor(size) }));
  const admitted = tried.filter(({ checks }) => !checks.some(isRefused));
  // A recommendation counts only where a size that meets the requirements can also meet it.
  const reachable = new Set(
    admitted
      .flatMap(({ checks }) =>
        checks.filter((check) => check.rule.force === "recommendation" && check.verdict === "met"),
      )
      .map(({ id }) => id),
  );
  const fails = (check: Check): boolean =>
    isRefused(check) ||
    (check.rule.force === "recommendation" && check.verdict === "not met" && reachable.has(check.id));
  const at = tried.findIndex(({ checks }) => !checks.some(fails));
  const end = at < 0 ? tried.length : at;
  const rejected = Object.freeze(
    tried.slice(0, end).map(({ size, checks }) => Object.freeze({ size, failed: Object.freeze(checks.filter(fails)) })),
  );
  const fixedBy = rejected.at(-1)?.failed ?? [];
  const taken = tried[at];
  if (!taken) return Object.freeze({ chosen: null, checks: tried.at(-1)?.checks ?? [], rejected, fixedBy });
  const origin: ChoiceOrigin = { kind: "choice", rule, checks: taken.checks, rejected };
  const chosen = makeQuantity(keptOf(taken.size), taken.size.unit, origin);
  return Object.freeze({ chosen, checks: taken.checks, rejected, fixedBy });
}

function isRefused(check: Check): boolean {
  return check.rule.force === "requirement" && check.verdict === "not met";
}
