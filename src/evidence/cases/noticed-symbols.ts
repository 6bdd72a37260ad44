import { type FormulaOrigin, isNamed, type Named, steps } from "../../formula/index.js";
import { dimensionOf, given, isQuantity, type Quantity } from "../../quantity/index.js";
import { add, type Digits, digitsText, minus, readDigits, times, toLength } from "../digits.js";
import { agreesAgain } from "./agrees-again.js";
import { type Holder, isCheck } from "./call.js";
import type { JudgedCase } from "./counting.js";

const SHARE = [readDigits("1.05")!, readDigits("0.95")!] as const;
const KELVIN: Readonly<Record<string, Digits>> = { "°C": readDigits("2")!, "°F": readDigits("3.6")! };
// Quantities keep 34 digits.
const LONGEST = 30;

/** A quantity with 5 % more and 5 % less; a temperature with 2 K more and less. */
function shiftsOf(quantity: Quantity): readonly [Quantity, Quantity] {
  const value = readDigits(quantity.text)!;
  const kelvin = dimensionOf(quantity.unit) === "temperature" ? KELVIN[quantity.unit] : undefined;
  const [more, less] = kelvin ? [add(value, kelvin), minus(value, kelvin)] : SHARE.map((share) => times(value, share));
  const made = (digits: Digits): Quantity => given(digitsText(toLength(digits, LONGEST)), quantity.unit);
  return [made(more!), made(less!)];
}

/** The values and checks whose working leads to what a case judges. */
export function valuesOf(holder: Holder): readonly (Quantity | Named)[] {
  if (!isCheck(holder)) return [holder];
  return [holder.value, holder.limit].filter((side): side is Quantity | Named => isQuantity(side) || isNamed(side));
}

/**
 * The symbols of the formulas on the way to a case's result of which the case would notice a shift of 5 % (2 K of a
 * temperature), as `formula id` and symbol.
 */
export function symbolsNoticedBy(one: JudgedCase): readonly { readonly formula: string; readonly symbol: string }[] {
  const holder = one.found?.holder;
  if (!holder) return [];
  const symbols = new Map<string, { readonly formula: string; readonly symbol: string }>();
  for (const { of: value } of valuesOf(holder).flatMap(steps)) {
    if (value.origin.kind !== "formula") continue;
    const { rule, inputs } = value.origin as FormulaOrigin;
    for (const symbol of Object.keys(inputs)) symbols.set(`${rule.id} ${symbol}`, { formula: rule.id, symbol });
  }
  return [...symbols.values()].filter(({ formula, symbol }) =>
    [0, 1].some((side) => {
      const shift = (rule: { readonly id: string }, key: string, input: Quantity): Quantity =>
        rule.id === formula && key === symbol ? shiftsOf(input)[side]! : input;
      return agreesAgain(one, holder, { shift }) === false;
    }),
  );
}
