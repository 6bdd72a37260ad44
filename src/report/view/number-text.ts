import type { RecordedNumber } from "../../plant/index.js";

/** Narrow and not to be broken, so that a unit stays with its number. */
export const THIN_SPACE = "\u202f";
const PLAIN = /^(-?)(\d+)(?:\.(\d+))?$/;

/** A decimal text rounded half away from zero to some places after the point; unchanged where it has no more places. */
export function roundedText(text: string, places: number): string {
  const match = PLAIN.exec(text);
  if (!match) return text;
  const [, sign, whole = "", fraction = ""] = match;
  if (fraction.length <= places) return text;
  const cut = fraction.length - places;
  const unit = 10n ** BigInt(cut);
  const digits = BigInt(whole + fraction);
  const kept = (digits + unit / 2n) / unit;
  if (places <= 0) {
    const filled = (kept * 10n ** BigInt(-places)).toString();
    return kept === 0n ? "0" : `${sign}${filled}`;
  }
  const padded = kept.toString().padStart(places + 1, "0");
  const value = `${padded.slice(0, -places)}.${padded.slice(-places)}`;
  return kept === 0n ? value : `${sign}${value}`;
}

/** A decimal text rounded to some significant digits. */
export function significantText(text: string, digits: number): string {
  const match = PLAIN.exec(text);
  if (!match) return text;
  const [, , whole = "", fraction = ""] = match;
  const leading = whole.replace(/^0+/, "");
  const exponent = leading === "" ? -1 - /^0*/.exec(fraction)![0].length : leading.length - 1;
  return roundedText(text, digits - 1 - exponent);
}

/** A decimal text with its point moved to the right; `1.25` by 2 is `125`. */
export function shiftedText(text: string, by: number): string {
  const match = PLAIN.exec(text);
  if (!match) return text;
  const [, sign, whole = "", fraction = ""] = match;
  const filled = fraction.padEnd(by, "0");
  const moved = `${whole}${filled.slice(0, by)}`.replace(/^0+(?=\d)/, "");
  const rest = filled.slice(by).replace(/0+$/, "");
  return `${sign}${moved}${rest === "" ? "" : `.${rest}`}`;
}

/** The difference of two decimal texts, every digit. */
export function difference(a: string, b: string): string {
  const places = Math.max(...[a, b].map((text) => text.split(".")[1]?.length ?? 0));
  const whole = (text: string): bigint => BigInt(shiftedText(text, places));
  const found = whole(a) - whole(b);
  const digits = (found < 0n ? -found : found).toString().padStart(places + 1, "0");
  const text = places === 0 ? digits : `${digits.slice(0, -places)}.${digits.slice(-places)}`;
  return `${found < 0n ? "-" : ""}${text}`;
}

/** A number as it is printed: a true minus sign, and thin spaces between groups of three from five digits on. */
export function grouped(text: string): string {
  const [whole = "", fraction] = text.replace(/^-/, "").split(".");
  const spaced = whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, THIN_SPACE);
  return `${text.startsWith("-") ? "−" : ""}${spaced}${fraction === undefined ? "" : `.${fraction}`}`;
}

/** What a reader sees of a number: rounded digits, its unit, and every digit for who asks. */
export interface Shown {
  readonly digits: string;
  readonly unit: string;
  readonly exact: string;
}

/** Units that read better in another of their kind; the point moves, no digit changes. */
const SHOWN_AS: Readonly<Record<string, readonly [unit: string, places: number]>> = {
  "Ω/m": ["mΩ/m", 3],
  "1/K": ["%/K", 2],
};
const VOLT_PLACES = 1;
const SMALL_VOLT_PLACES = 2;
const SIGNIFICANT = 4;

function roundedFor(value: string, unit: string): string {
  if (unit !== "V") return significantText(value, SIGNIFICANT);
  // A drop of a few volts would lose its meaning at a tenth.
  return roundedText(value, /^-?\d(\.|$)/.test(value) ? SMALL_VOLT_PLACES : VOLT_PLACES);
}

/** A recorded number for people: voltages to 0.1 V, all else to four significant digits. */
export function shown({ value, unit }: Pick<RecordedNumber, "value" | "unit">): Shown {
  const [as, places] = SHOWN_AS[unit] ?? [unit, 0];
  const text = shiftedText(value, places);
  return withUnit(roundedFor(text, as), as, exactText({ value, unit }));
}

/** A share for people, in percent. */
export function shownPercent({ value, unit }: Pick<RecordedNumber, "value" | "unit">): Shown {
  const text = unit === "%" ? value : shiftedText(value, 2);
  return withUnit(significantText(text, 3), "%", exactText({ value, unit }));
}

function withUnit(digits: string, unit: string, exact: string): Shown {
  return { digits: grouped(digits), unit: unit === "1" ? "" : unit, exact };
}

/** Value and unit with every digit. */
export function exactText({ value, unit }: Pick<RecordedNumber, "value" | "unit">): string {
  const text = value.replace(/^-/, "−");
  return unit === "1" || unit === "" ? text : `${text}${THIN_SPACE}${unit}`;
}

/** Digits and unit as one text. */
export function shownText({ digits, unit }: Shown): string {
  return unit === "" ? digits : `${digits}${THIN_SPACE}${unit}`;
}

/** Two numbers side by side; where rounding would make them look alike, both show every digit. */
export function shownPair(a: RecordedNumber, b: RecordedNumber): readonly [Shown, Shown] {
  const pair = [shown(a), shown(b)] as const;
  const [first, second] = pair.map(({ digits }) => digits.replace(/\.0+$/, ""));
  const alike = first === second && a.unit === b.unit && a.value !== b.value;
  return alike ? [inFull(a), inFull(b)] : pair;
}

function inFull(number: RecordedNumber): Shown {
  return withUnit(number.value, number.unit, exactText(number));
}

/** A utilisation to 0.01, or with all its digits where that would hide on which side of the limit it lies. */
export function utilisationText(text: string): string {
  const rounded = roundedText(text, 2);
  const [whole = "", places = ""] = rounded.split(".");
  const filled = `${whole}.${places.padEnd(2, "0")}`;
  const exactlyFull = /^1(\.0*)?$/.test(text);
  return filled === "1.00" && !exactlyFull ? text : filled;
}
