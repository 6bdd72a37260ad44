import { convert } from "./conversion.js";
import { type Decimal, Exact } from "./decimal.js";
import type { Problem } from "./input-error.js";
import { type Unit, units } from "./units.js";

/** Where a symbol's value may lie, in its unit. Limits are short decimals. */
export interface Domain {
  /** The value must be greater than this. */
  readonly above?: number;
  /** The value must be this or more. */
  readonly from?: number;
  /** The value must be less than this. */
  readonly below?: number;
  /** The value must be this or less. */
  readonly to?: number;
  /** Where the value of a real plant lies; a bare number outside it is refused as a likely slip of unit. */
  readonly usual?: readonly [number, number];
}

/** The domain in words, for messages and docs. */
export function domainText(domain: Domain, unit: Unit): string {
  const name = unit === "1" ? "" : ` ${unit}`;
  const parts: string[] = [];
  if (domain.above !== undefined) parts.push(`more than ${domain.above}${name}`);
  if (domain.from !== undefined) parts.push(`${domain.from}${name} or more`);
  if (domain.below !== undefined) parts.push(`less than ${domain.below}${name}`);
  if (domain.to !== undefined) parts.push(`${domain.to}${name} or less`);
  return parts.join(" and ") || (unit === "1" ? "a number" : `a value in ${unit}`);
}

/** The limits of a domain as decimals, made once. */
interface Bounds {
  readonly above: Decimal | undefined;
  readonly from: Decimal | undefined;
  readonly below: Decimal | undefined;
  readonly to: Decimal | undefined;
}

const remembered = /* @__PURE__ */ new WeakMap<Domain, Bounds>();

function boundsOf(domain: Domain): Bounds {
  let bounds = remembered.get(domain);
  if (!bounds) {
    const { above, from, below, to } = domain;
    const decimal = (limit: number | undefined): Decimal | undefined =>
      limit === undefined ? undefined : new Exact(limit);
    bounds = { above: decimal(above), from: decimal(from), below: decimal(below), to: decimal(to) };
    remembered.set(domain, bounds);
  }
  return bounds;
}

/** Whether a value in the symbol's unit lies in its domain. */
export function inDomain(value: Decimal, domain: Domain): boolean {
  const { above, from, below, to } = boundsOf(domain);
  return (
    (above === undefined || value.cmp(above) > 0) &&
    (from === undefined || value.cmp(from) >= 0) &&
    (below === undefined || value.cmp(below) < 0) &&
    (to === undefined || value.cmp(to) <= 0)
  );
}

function isUsual(value: Decimal, [low, high]: readonly [number, number]): boolean {
  return value.gte(low) && value.lte(high);
}

/** The problem of a bare number outside the usual range, with a guess at the unit that was meant; `undefined` where it is plausible. */
export function implausible(value: Decimal, domain: Domain, unit: Unit, path: string): Problem | undefined {
  if (!domain.usual || isUsual(value, domain.usual)) return undefined;
  const usual = domain.usual;
  const guess = (Object.keys(units) as Unit[]).find(
    (other) =>
      other !== unit &&
      units[other][0] === units[unit][0] &&
      isUsual(convert(other, unit, { value, keeps: Infinity }).value, usual),
  );
  const name = unit === "1" ? "" : ` ${unit}`;
  const meant = guess ? `did you mean ${guess}?` : "is the unit right?";
  return {
    path,
    code: "implausible",
    message: `${value.toFixed()}${name}: ${meant} A value outside the usual range must be written with its unit`,
    expected: `${new Exact(usual[0]).toFixed()} to ${new Exact(usual[1]).toFixed()}${name}, or text with a unit`,
    received: value.toFixed(),
  };
}
