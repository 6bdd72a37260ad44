/** A decimal number held as whole digits and a power of ten, so that printed digits are compared without any rounding. */
export interface Digits {
  readonly whole: bigint;
  /** The number is `whole` × 10^`exponent`; the last printed digit has this place. */
  readonly exponent: number;
}

/** Reads a printed number; `undefined` for anything else. A sign may be the typographic one. */
export function readDigits(text: string): Digits | undefined {
  const match = /^([+-]?)(\d*)(?:\.(\d*))?(?:[eE]([+-]?\d+))?$/.exec(text.trim().replace(/^[−–]/, "-"));
  if (!match) return undefined;
  const [, sign, before = "", after = "", power = "0"] = match;
  if (before + after === "") return undefined;
  const whole = BigInt(before + after);
  return { whole: sign === "-" ? -whole : whole, exponent: Number(power) - after.length };
}

const TEN = 10n;

function wholeAt({ whole, exponent }: Digits, place: number): bigint {
  return whole * TEN ** BigInt(exponent - place);
}

function together<T>(a: Digits, b: Digits, combine: (a: bigint, b: bigint, exponent: number) => T): T {
  const exponent = Math.min(a.exponent, b.exponent);
  return combine(wholeAt(a, exponent), wholeAt(b, exponent), exponent);
}

export const add = (a: Digits, b: Digits): Digits => together(a, b, (x, y, exponent) => ({ whole: x + y, exponent }));

export const minus = (a: Digits, b: Digits): Digits => together(a, b, (x, y, exponent) => ({ whole: x - y, exponent }));

export const times = (a: Digits, b: Digits): Digits => ({
  whole: a.whole * b.whole,
  exponent: a.exponent + b.exponent,
});

export const absolute = ({ whole, exponent }: Digits): Digits => ({ whole: whole < 0n ? -whole : whole, exponent });

/** −1, 0 or 1 as `a` is less than, equal to or greater than `b`. */
export function order(a: Digits, b: Digits): -1 | 0 | 1 {
  return together(a, b, (x, y) => (x < y ? -1 : x > y ? 1 : 0));
}

/** Half of a number, exactly. */
export const half = (a: Digits): Digits => ({ whole: a.whole * 5n, exponent: a.exponent - 1 });

/** One unit of the last printed digit. */
export const lastDigit = ({ exponent }: Digits): Digits => ({ whole: 1n, exponent });

/** A share of two numbers, cut to a number of decimals. */
export function ratio(part: Digits, of: Digits, decimals: number): string {
  return together(part, of, (x, y) => digitsText({ whole: (x * TEN ** BigInt(decimals)) / y, exponent: -decimals }));
}

/** Cuts a number to a number of decimals, toward zero. */
export function cutTo(a: Digits, decimals: number): Digits {
  if (-a.exponent <= decimals) return a;
  return { whole: a.whole / TEN ** BigInt(-a.exponent - decimals), exponent: -decimals };
}

/** Cuts a number to a number of significant digits. */
export function toLength(a: Digits, length: number): Digits {
  const size = (a.whole < 0n ? -a.whole : a.whole).toString().length;
  return size <= length ? a : cutTo(a, -a.exponent - (size - length));
}

/** The number as plain text, with the digits that it holds. */
export function digitsText({ whole, exponent }: Digits): string {
  if (exponent >= 0) return (whole * TEN ** BigInt(exponent)).toString();
  const size = (whole < 0n ? -whole : whole).toString().padStart(1 - exponent, "0");
  return `${whole < 0n ? "-" : ""}${size.slice(0, exponent)}.${size.slice(exponent)}`;
}
