import { type Digits, digitsText, readDigits } from "../digits.js";
import type { Case, CaseInput } from "../formats/index.js";

type Printed = string | readonly string[] | boolean;

/** One number among the inputs of a case. */
export interface PrintedNumber {
  /** Key, with its place where the input is a list: one name a number. */
  readonly name: string;
  readonly key: string;
  /** Place in a list; `null` where the input is no list. */
  readonly item: number | null;
  readonly digits: Digits;
  readonly unit: string;
}

export function printedOf(input: CaseInput): Printed {
  return "printed" in input ? input.printed : input.unprinted;
}

function numberIn(text: Printed, key: string, item: number | null): PrintedNumber[] {
  if (typeof text !== "string") return [];
  const [, number = "", unit = ""] = /^([+\-−–]?[\d.]+(?:[eE][+-]?\d+)?)\s*(.*)$/su.exec(text.trim()) ?? [];
  const digits = readDigits(number);
  return digits ? [{ name: item === null ? key : `${key} ${item}`, key, item, digits, unit }] : [];
}

/** Every number among the inputs of a case; names and verdicts are left out. */
export function numbersOf({ inputs }: Case): readonly PrintedNumber[] {
  return Object.entries(inputs).flatMap(([key, input]) => {
    const printed = printedOf(input);
    if (typeof printed !== "object") return numberIn(printed, key, null);
    return printed.flatMap((text, item) => numberIn(text, key, item));
  });
}

/** Other digits for some numbers of a case, by their names. */
export type Point = ReadonlyMap<string, Digits>;

/** The inputs of a case as they are handed over, with other digits for some of its numbers. */
export function inputsWith(one: Case, point: Point = new Map()): Readonly<Record<string, Printed>> {
  const raw: Record<string, Printed> = {};
  for (const [key, input] of Object.entries(one.inputs)) {
    const printed = printedOf(input);
    raw[key] = typeof printed === "object" ? [...printed] : printed;
  }
  for (const { name, key, item, unit } of numbersOf(one)) {
    const digits = point.get(name);
    if (!digits) continue;
    const text = unit === "" ? digitsText(digits) : `${digitsText(digits)} ${unit}`;
    if (item === null) raw[key] = text;
    else (raw[key] as string[])[item] = text;
  }
  return raw;
}

/** A whole number without a unit counts things: it has no rounding. */
export function isCount({ digits, unit }: PrintedNumber): boolean {
  return digits.exponent >= 0 && (unit === "" || unit === "1");
}
