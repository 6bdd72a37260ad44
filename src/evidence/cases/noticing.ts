import { type Catalogue, catalogue } from "../../catalogue/catalogue.js";
import { series, tables } from "../../catalogue/lists.js";
import { unitFromText } from "../../quantity/index.js";
import { add, type Digits, minus, order, readDigits, times } from "../digits.js";
import type { Case } from "../formats/index.js";
import { judgeWith } from "./run-case.js";
import { isCount, numbersOf, type PrintedNumber } from "./printed-inputs.js";

const MORE = readDigits("1.05")!;
const LESS = readDigits("0.95")!;
const ONE = readDigits("1")!;
const TWO_KELVIN: Readonly<Record<string, Digits>> = { "°C": readDigits("2")!, "°F": readDigits("3.6")! };

type Shift = (number: PrintedNumber) => Digits;

function shiftsFor(unit: string): readonly [Shift, Shift] {
  const kelvin = TWO_KELVIN[unit];
  if (kelvin) return [({ digits }) => add(digits, kelvin), ({ digits }) => minus(digits, kelvin)];
  return [({ digits }) => times(digits, MORE), ({ digits }) => times(digits, LESS)];
}

const byOne: readonly [Shift, Shift] = [({ digits }) => add(digits, ONE), ({ digits }) => minus(digits, ONE)];

/** The unit in which a number of an input is meant: as printed, else as the rule declares it. */
function unitOf({ checks }: Case, { key, unit }: PrintedNumber, from: Catalogue): string {
  const printed = unitFromText(unit);
  if (unit !== "" && printed !== undefined) return printed;
  const rule = from.rules.get(checks);
  const take = rule?.kind === "formula" || rule?.kind === "model" ? rule.declaration.takes[key] : undefined;
  return take ? ("each" in take ? take.each : take.unit) : unit;
}

/** The sizes beside a number in the series, and in the row headings, that have it: for rules that take no other. */
function neighbours({ digits }: PrintedNumber, unit: string, from: Catalogue): readonly Shift[] {
  const lists = [
    ...series(from).map(({ declaration }) => ({
      unit: declaration.unit,
      sizes: declaration.sizes.trim().split(/\s+/),
    })),
    ...tables(from).flatMap((rule) => {
      const { rows } = rule.declaration;
      return "unit" in rows ? [{ unit: rows.unit, sizes: rule.rows() }] : [];
    }),
  ];
  const beside = lists
    .filter((list) => list.unit === unit)
    .flatMap(({ sizes }) => {
      const numbers = sizes.map((size) => readDigits(size)!).sort(order);
      const at = numbers.findIndex((size) => order(size, digits) === 0);
      return at < 0 ? [] : [numbers[at - 1], numbers[at + 1]].filter((size) => size !== undefined);
    });
  return beside.map((size) => () => size);
}

/** Whether a case agrees no longer with an input shifted; `null` where the rule refuses both shifts. */
function noticesShifts(
  one: Case,
  numbers: readonly PrintedNumber[],
  shifts: readonly Shift[],
  from: Catalogue,
): boolean | null {
  const judged = shifts.map((shift) =>
    judgeWith(one, new Map(numbers.map((number) => [number.name, shift(number)])), from),
  );
  if (judged.every((judgement) => judgement === null)) return null;
  return judged.some((judgement) => judgement !== null && !judgement.agrees);
}

/**
 * The inputs of a case in which it notices a shift of 5 % (2 K of a temperature; one of a count that takes no fraction; the next
 * standard size where no other is taken;
 * another row or column of a table): with the shift, it agrees no longer.
 */
export function noticedInputs(one: Case, from: Catalogue = catalogue()): readonly string[] {
  const numbers = numbersOf(one);
  return Object.keys(one.inputs).filter((key) => {
    if (from.rules.get(one.checks)?.kind === "table") return noticesHeading(one, key, from);
    const own = numbers.filter((number) => number.key === key);
    if (own.length === 0) return false;
    const unit = unitOf(one, own[0]!, from);
    const shifts = [shiftsFor(unit), own.every(isCount) ? byOne : [], neighbours(own[0]!, unit, from)];
    // The first kind of shift that the rule takes decides.
    return shifts.reduce<boolean | null>((found, kind) => found ?? noticesShifts(one, own, kind, from), null) === true;
  });
}

// A heading takes no shift: every other row or column takes its place.
function noticesHeading(one: Case, key: string, from: Catalogue): boolean {
  const rule = from.rules.get(one.checks);
  if (rule?.kind !== "table") return false;
  const { rows, columns = {} } = rule.declaration;
  const unit = "unit" in rows && rows.unit !== "1" ? ` ${rows.unit}` : "";
  const others = key === rows.name ? rule.rows().map((row) => row + unit) : (columns[key] ?? []);
  return others.some((printed) => {
    const judged = judgeWith({ ...one, inputs: { ...one.inputs, [key]: { printed } } }, new Map(), from);
    return judged !== null && !judged.agrees;
  });
}
