import { type Decimal, Exact, type Kept, ROUNDED_KEEPS, Wide } from "./decimal.js";
import { type Dimension, type Unit, type UnitOf, units, zeroPoints } from "./units.js";

interface Scale {
  readonly numerator: Decimal;
  readonly denominator: Decimal;
  /** 1 where the ratio carries π above, -1 below, 0 where it is rational. */
  readonly pi: number;
  readonly zero: Decimal | undefined;
}

const scales = /* @__PURE__ */ new Map<Unit, Scale>();

function scaleOf(unit: Unit): Scale {
  const known = scales.get(unit);
  if (known) return known;
  const row: readonly string[] = units[unit];
  const [numerator = "1", denominator = "1"] = row[1]!.split("/");
  const zero = zeroPoints[unit];
  const scale = {
    numerator: new Wide(numerator),
    denominator: new Wide(denominator),
    pi: row.includes("pi") ? 1 : row.includes("pi-below") ? -1 : 0,
    zero: zero === undefined ? undefined : new Wide(zero),
  };
  scales.set(unit, scale);
  return scale;
}

/** The kind of quantity that a unit measures. */
export function dimensionOf(unit: Unit): Dimension {
  return units[unit][0];
}

/** The units of one kind, its first unit first. */
export function unitsOf<D extends Dimension>(dimension: D): UnitOf<D>[] {
  return (Object.keys(units) as Unit[]).filter((unit) => units[unit][0] === dimension) as UnitOf<D>[];
}

/** Converts between two units of one kind; exact while the ratio is rational and the digits fit. */
export function convert(from: Unit, to: Unit, kept: Kept): Kept {
  if (from === to) return kept;
  const a = scaleOf(from);
  const b = scaleOf(to);
  let wide = new Wide(kept.value);
  if (a.zero) wide = wide.minus(a.zero);
  wide = wide.times(a.numerator).times(b.denominator);
  const divisor = a.denominator.times(b.numerator);
  const turns = a.pi - b.pi;
  const pi = turns === 0 ? undefined : Wide.acos(-1);
  if (pi) wide = turns > 0 ? wide.times(pi) : wide.div(pi);
  const quotient = wide.div(divisor);
  let exact = pi === undefined && quotient.times(divisor).eq(wide);
  const shifted = b.zero ? quotient.plus(b.zero) : quotient;
  const value = new Exact(shifted).plus(0);
  exact &&= shifted.eq(new Wide(value));
  return { value, keeps: exact ? kept.keeps : Math.min(kept.keeps, ROUNDED_KEEPS) };
}
