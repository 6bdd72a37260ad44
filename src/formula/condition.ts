import { type Decimal, ROUNDED_KEEPS } from "../quantity/decimal.js";
import { InputError, type Problem, received } from "../quantity/input-error.js";
import { keptOf, type Quantity } from "../quantity/quantity.js";
import { type Input, readInput } from "../quantity/reading.js";
import type { DimensionOf, Unit } from "../quantity/units.js";
import { bestGrade, type Grade, weaker } from "../source/grade.js";
import type { ConditionDeclaration, NamedSide, Relation, Side } from "./declaration.js";
import { gradeOf } from "./grade-of.js";
import { isMissing, type Missing } from "./missing.js";
import { isNamed, type Named } from "./named.js";

/** What a check comes to; open where the inputs cannot decide. */
export type Verdict = "met" | "not met" | "open";

/** The outcome of a condition at one place of the plant. */
export interface Check {
  /** Rule and place. */
  readonly id: string;
  readonly rule: ConditionDeclaration;
  readonly at: string;
  readonly verdict: Verdict;
  readonly value: Quantity | Named | string | null;
  readonly limit: Quantity | readonly string[] | string | null;
  /** Share of the limit that is used, four decimals, where that has a meaning. */
  readonly utilisation: string | null;
  /** The weakest grade among the rule, the value and the limit. */
  readonly grade: Grade | null;
  /** The inputs that would decide an open check. */
  readonly missing: readonly string[];
  /** Why an open check is open or an unmet one is not met, where more can be said than the numbers do. */
  readonly because: string | null;
  readonly remedy: string | null;
}

/** What a caller of a condition meets of its declaration. */
type Compared = Pick<ConditionDeclaration, "value" | "relation" | "limit">;

type Operand<S> = S extends { readonly unit: infer U extends Unit }
  ? Input<DimensionOf<U>> | Missing
  : string | Named | Missing;
type LimitOperand<D extends Compared> = D["relation"] extends "one of"
  ? readonly string[] | Missing
  : Operand<D["limit"]>;

export interface Words {
  /** The place of the plant; it becomes part of the check's id. */
  readonly at?: string;
  readonly because?: string;
  readonly remedy?: string;
}

/** What a condition compares, or what is missing for it. */
export type Comparison<D extends Compared> = Words &
  (
    | { readonly value: Operand<D["value"]>; readonly limit: LimitOperand<D> }
    | { readonly missing: readonly string[]; readonly value?: Operand<D["value"]>; readonly limit?: LimitOperand<D> }
  );

/** A declared comparison: call it for a check. */
export interface Condition<D extends Compared> {
  (comparison: Comparison<D>): Check;
  readonly kind: "condition";
  readonly id: string;
  readonly declaration: ConditionDeclaration;
}

/** Declares a comparison. Give it literals only. */
export function condition<const D extends ConditionDeclaration>(
  declaration: D,
): Condition<{ value: D["value"]; relation: D["relation"]; limit: D["limit"] }> {
  const check = (comparison: Comparison<D>): Check =>
    weigh(declaration, comparison as Comparison<ConditionDeclaration>);
  return Object.assign(check, { kind: "condition" as const, id: declaration.id, declaration });
}

interface Sides {
  readonly value: Quantity | Named | string | null;
  readonly limit: Quantity | readonly string[] | string | null;
}

function weigh(rule: ConditionDeclaration, comparison: Comparison<ConditionDeclaration>): Check {
  const missing = new Set<string>("missing" in comparison ? comparison.missing : []);
  for (const side of [comparison.value, comparison.limit]) {
    if (isMissing(side)) for (const path of side.missing) missing.add(path);
  }
  const sides = readSides(rule, comparison);
  const absent = sides.value === null || sides.limit === null;
  if (absent && missing.size === 0) {
    throw new InputError(rule.id, [
      {
        path: "value",
        code: "missing",
        message: "value and limit are due, or what is missing",
        expected: "value and limit",
        received: "undefined",
      },
    ]);
  }
  const { verdict, utilisation } = missing.size > 0 || absent ? OPEN : compare(rule.relation, sides);
  const { at = "", because = null, remedy = null } = comparison;
  const grade = [sides.value, sides.limit].reduce<Grade | null>(
    (weakest, side) => weaker(weakest, gradeOf(side)),
    bestGrade(rule.source),
  );
  const near =
    verdict === "open" && missing.size === 0 ? "the value is too near the limit for the digits that were kept" : null;
  return Object.freeze({
    id: at === "" ? rule.id : `${rule.id}/${at}`,
    rule,
    at,
    verdict,
    ...sides,
    utilisation,
    grade,
    missing: Object.freeze([...missing]),
    because: because ?? near,
    remedy,
  });
}

const OPEN = { verdict: "open", utilisation: null } as const;

function readSides(rule: ConditionDeclaration, comparison: Comparison<ConditionDeclaration>): Sides {
  const problems: Problem[] = [];
  const quantity = (side: Side, input: unknown, path: string): Quantity | null => {
    const reading = readInput(input, { unit: side.unit }, path);
    if (reading.ok) return reading.quantity;
    problems.push(reading.problem);
    return null;
  };
  const side = (declared: Side | NamedSide, input: unknown, path: string): Sides["limit"] | Named => {
    if (input === undefined || isMissing(input)) return null;
    if ("unit" in declared) return quantity(declared, input, path);
    if (typeof input === "string" || isNamed(input)) return input;
    if (path === "limit" && Array.isArray(input) && input.every((item) => typeof item === "string"))
      return Object.freeze([...input]);
    problems.push({
      path,
      code: "wrong-type",
      message: "expected a name from a closed list",
      expected: "text",
      received: received(input),
    });
    return null;
  };
  const sides = {
    value: side(rule.value, comparison.value, "value") as Sides["value"],
    limit: side(rule.limit, comparison.limit, "limit") as Sides["limit"],
  };
  if (problems.length > 0) throw new InputError(rule.id, problems);
  return sides;
}

function nameOf(side: Named | string): string {
  return typeof side === "string" ? side : side.name;
}

function compare(relation: Relation, { value, limit }: Sides): { verdict: Verdict; utilisation: string | null } {
  if (relation === "one of") {
    const met = Array.isArray(limit) && limit.includes(nameOf(value as Named | string));
    return { verdict: met ? "met" : "not met", utilisation: null };
  }
  if (typeof value === "string" || isNamed(value)) {
    return { verdict: nameOf(value) === nameOf(limit as Named | string) ? "met" : "not met", utilisation: null };
  }
  const [a, b] = [keptOf(value!), keptOf(limit as Quantity)];
  if (isUndecided(a.value, b.value, Math.min(a.keeps, b.keeps))) return OPEN;
  return {
    verdict: holds(relation, a.value, b.value) ? "met" : "not met",
    utilisation: share(relation, a.value, b.value),
  };
}

// A value that lost digits on the way is not judged within the reach of what it lost.
function isUndecided(value: Decimal, limit: Decimal, keeps: number): boolean {
  if (keeps === Infinity) return false;
  const digits = Math.min(keeps, ROUNDED_KEEPS);
  const size = limit.isZero() ? value.abs() : limit.abs();
  return value
    .minus(limit)
    .abs()
    .lte(size.times(`1e-${digits}`));
}

function holds(relation: Exclude<Relation, "one of">, value: Decimal, limit: Decimal): boolean {
  switch (relation) {
    case "<":
      return value.lt(limit);
    case "≤":
      return value.lte(limit);
    case "≥":
      return value.gte(limit);
    case ">":
      return value.gt(limit);
    case "=":
      return value.eq(limit);
  }
}

const SHARE_DECIMALS = 4;

function share(relation: Relation, value: Decimal, limit: Decimal): string | null {
  const [part, whole] = relation === "≥" || relation === ">" ? [limit, value] : [value, limit];
  if (relation === "=" || whole.lte(0) || part.lt(0)) return null;
  return part.div(whole).toDecimalPlaces(SHARE_DECIMALS).toFixed();
}
