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
  const tried = tryInOrder(sizes, checksFor);
  // A recommendation counts only where a size that meets the requirements can also meet it.
  const reachable = new Set(
    tried
      .filter(({ checks }) => !checks.some(isRefused))
      .flatMap(({ checks }) => checks.filter(isFollowed))
      .map(({ id }) => id),
  );
  const fails = (check: Check): boolean => isRefused(check) || (isUnfollowed(check) && reachable.has(check.id));
  const best = tried.findIndex(({ checks }) => !checks.some(fails));
  // Where no size follows all of them at once, the requirements alone decide.
  const at = best >= 0 ? best : tried.findIndex(({ checks }) => !checks.some(isRefused));
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

interface Tried<Q> {
  readonly size: Q;
  readonly checks: readonly Check[];
}

/** Tries sizes, smallest first, and stops at the first that meets everything while all before it are refused. */
function tryInOrder<Q extends Quantity>(
  sizes: readonly Q[],
  checksFor: (size: Q) => readonly Check[],
): readonly Tried<Q>[] {
  const tried: Tried<Q>[] = [];
  let refusedSoFar = true;
  for (const size of sizes) {
    const checks = checksFor(size);
    tried.push({ size, checks });
    const refused = checks.some(isRefused);
    if (refusedSoFar && !refused && !checks.some(isUnfollowed)) return tried;
    refusedSoFar &&= refused;
  }
  return tried;
}

function isRefused({ rule, verdict }: Check): boolean {
  return rule.force === "requirement" && verdict === "not met";
}

function isFollowed({ rule, verdict }: Check): boolean {
  return rule.force === "recommendation" && verdict === "met";
}

function isUnfollowed({ rule, verdict }: Check): boolean {
  return rule.force === "recommendation" && verdict === "not met";
}
