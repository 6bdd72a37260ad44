import { type Decimal, Exact, PRECISION, ROUNDED_KEEPS, Wide } from "../quantity/decimal.js";

/** Keeps track, through one evaluation, of how many digits the result can be trusted to. */
export interface Trust {
  keeps: number;
}

const WORD = 7;
const EXACT_WORDS = 4;

function lose(trust: Trust): void {
  if (trust.keeps > ROUNDED_KEEPS) trust.keeps = ROUNDED_KEEPS;
}

// Position of the last digit that decimal.js stores for a number (it stores words of seven digits).
function lowest(value: Decimal): number {
  return WORD * (Math.floor(value.e / WORD) - value.d.length + 1);
}

function sumFits(a: Decimal, b: Decimal): boolean {
  return Math.max(a.e, b.e) + 2 - Math.min(lowest(a), lowest(b)) <= PRECISION;
}

// Subtracting near equals throws leading digits away; a result that is not exact is trusted to that many fewer.
function cancel(a: Decimal, b: Decimal, result: Decimal, trust: Trust): Decimal {
  if (trust.keeps === Infinity) return result;
  const lost = result.isZero() ? 0 : Math.max(a.e, b.e) - result.e;
  if (lost > 0) trust.keeps = Math.max(0, trust.keeps - lost);
  return result;
}

export function add(a: Decimal, b: Decimal, trust: Trust): Decimal {
  const result = a.plus(b);
  if (!result.isFinite()) return result;
  if (!sumFits(a, b) && !new Wide(a).plus(b).eq(new Wide(result))) lose(trust);
  return cancel(a, b, result, trust);
}

export function subtract(a: Decimal, b: Decimal, trust: Trust): Decimal {
  const result = a.minus(b);
  if (!result.isFinite()) return result;
  if (!sumFits(a, b) && !new Wide(a).minus(b).eq(new Wide(result))) lose(trust);
  return cancel(a, b, result, trust);
}

export function multiply(a: Decimal, b: Decimal, trust: Trust): Decimal {
  const result = a.times(b);
  if (!result.isFinite()) return result;
  if (a.d.length + b.d.length > EXACT_WORDS && !new Wide(a).times(b).eq(new Wide(result))) lose(trust);
  return result;
}

export function divide(a: Decimal, b: Decimal, trust: Trust): Decimal {
  const result = a.div(b);
  if (!result.isFinite()) return result;
  // A quotient that fills the precision is taken as rounded; a shorter one is proved by multiplying back.
  if (result.d.length > EXACT_WORDS || !new Wide(result).times(b).eq(new Wide(a))) lose(trust);
  return result;
}

export function power(a: Decimal, b: Decimal, trust: Trust): Decimal {
  const whole = b.isInteger() && b.gte(0) && b.lte(PRECISION);
  const result = a.pow(b);
  if (!result.isFinite()) return result;
  if (
    !whole ||
    (a.d.length > 1 && !new Wide(a).pow(b).eq(new Wide(result))) ||
    a.precision() * b.toNumber() > PRECISION
  ) {
    lose(trust);
  }
  return result;
}

const PI = /* @__PURE__ */ new Exact("3.141592653589793238462643383279503");

export function pi(trust: Trust): Decimal {
  lose(trust);
  return PI;
}

export type Transcendental = "sqrt" | "exp" | "log" | "sin" | "cos" | "tan" | "acos" | "atan";

// How many times larger the relative error of a function's result is than that of its argument.
function amplification(name: Transcendental, argument: Decimal, result: Decimal): number {
  const [a, f] = [argument.abs().toNumber(), result.abs().toNumber()];
  switch (name) {
    case "exp":
      return a;
    case "log":
      return 1 / f;
    case "sin":
    case "cos":
      return (a * Math.sqrt(Math.max(0, 1 - f * f))) / f;
    case "tan":
      return (a * (1 + f * f)) / f;
    case "acos":
      return a / (Math.sqrt(Math.max(0, 1 - a * a)) * f);
    case "sqrt":
    case "atan":
      return 1;
  }
}

export function transcendental(name: Transcendental, a: Decimal, trust: Trust): Decimal {
  const result = name === "log" ? a.ln() : a[name]();
  if (result.isFinite() && trust.keeps !== Infinity) {
    const times = amplification(name, a, result);
    if (times > 1) trust.keeps = Math.max(0, trust.keeps - Math.ceil(Math.log10(times)));
  }
  lose(trust);
  return result;
}
