import { InputError, type Problem, received } from "../quantity/input-error.js";
import { nearestName } from "../quantity/nearest-name.js";
import type { Decimal } from "../quantity/decimal.js";
import { inDomain } from "../quantity/domain.js";
import { keptOf, ownKeptOf, type Quantity } from "../quantity/quantity.js";
import { type Expectation, type Input, readInput } from "../quantity/reading.js";
import type { DimensionOf, Unit } from "../quantity/units.js";
import type { ListSymbol, ScalarSymbol } from "./declaration.js";

/**
 * What a caller meets of a symbol: its unit (or unit of each item of a list) and its meaning. Makers of rules map it over
 * their symbols in place, without a name, so that the compiler writes these two into the type of a rule and nothing else.
 */
export type Taken<S> = S extends { readonly each: infer U extends Unit; readonly about: infer A }
  ? { each: U; about: A }
  : S extends { readonly unit: infer U extends Unit; readonly about: infer A }
    ? { unit: U; about: A }
    : never;

/** The arguments of a rule, by key. */
export type Arguments<T> = {
  readonly [K in keyof T]: T[K] extends { each: infer U extends Unit }
    ? readonly Input<DimensionOf<U>>[]
    : T[K] extends { unit: infer U extends Unit }
      ? Input<DimensionOf<U>>
      : never;
};

/** The arguments that a rule takes. */
export type InputsOf<F> = F extends (inputs: infer I, ...rest: never[]) => unknown ? I : never;

/** What went into a rule, by key. */
export type Inputs = Readonly<Record<string, Quantity | readonly Quantity[]>>;

/** One key that a rule takes, ready for reading. */
export interface Slot {
  readonly key: string;
  readonly list: boolean;
  readonly expectation: Expectation;
}

/** The slots of a declaration, in its order. */
export function slotsOf(takes: Readonly<Record<string, ScalarSymbol | ListSymbol>>): readonly Slot[] {
  return Object.entries(takes).map(([key, take]) => ({
    key,
    list: "each" in take,
    expectation: "each" in take ? { ...take, unit: take.each } : take,
  }));
}

/** The decimals of the arguments, in the order of the slots, and the digits that each can be trusted to. */
export interface Decimals {
  readonly values: (Decimal | readonly Decimal[])[];
  readonly kept: number[];
}

/** Reads every argument of a rule, and its decimals where they are asked for; throws one `InputError` with all the problems. */
export function readInputs(
  id: string,
  inputs: Readonly<Record<string, unknown>>,
  slots: readonly Slot[],
  decimals?: Decimals,
): Inputs {
  if (typeof inputs !== "object" || (inputs as unknown) === null) throw notNamed(id, inputs);
  const read: Record<string, Quantity | readonly Quantity[]> = {};
  const problems: Problem[] = [];
  for (const slot of slots) {
    const { key, list, expectation } = slot;
    const input = inputs[key];
    if (list) {
      read[key] = readList(input, slot, problems, decimals);
      continue;
    }
    // Most arguments are quantities in the unit of their symbol already; they need no reading.
    const own = ownKeptOf(input);
    if (
      own &&
      (input as Quantity).unit === expectation.unit &&
      inDomain(own.value, expectation) &&
      Object.hasOwn(inputs, key)
    ) {
      read[key] = input as Quantity;
      decimals?.values.push(own.value);
      decimals?.kept.push(own.keeps);
      continue;
    }
    const reading = readInput(Object.hasOwn(inputs, key) ? input : undefined, expectation, key);
    if (!reading.ok) {
      problems.push(reading.problem);
      continue;
    }
    read[key] = reading.quantity;
    if (!decimals) continue;
    const { value, keeps } = keptOf(reading.quantity);
    decimals.values.push(value);
    decimals.kept.push(keeps);
  }
  const names = Object.keys(inputs);
  if (names.length > slots.length || problems.length > 0) {
    const known = slots.map(({ key }) => key);
    for (const name of names) if (!known.includes(name)) problems.push(unknownKey(name, known, inputs[name]));
  }
  if (problems.length > 0) throw new InputError(id, problems);
  return Object.freeze(read);
}

function notNamed(id: string, inputs: unknown): InputError {
  const message = "expected one object of named inputs";
  return new InputError(id, [
    { path: "", code: "wrong-type", message, expected: "an object", received: received(inputs) },
  ]);
}

function readList(
  input: unknown,
  { key, expectation }: Slot,
  problems: Problem[],
  decimals?: Decimals,
): readonly Quantity[] {
  if (!Array.isArray(input) || input.length === 0) {
    const expected = `a list of one or more values in ${expectation.unit}`;
    const code = input === undefined ? "missing" : Array.isArray(input) ? "empty" : "wrong-type";
    problems.push({ path: key, code, message: `expected ${expected}`, expected, received: received(input) });
    return [];
  }
  const items: Quantity[] = [];
  for (const [index, item] of (input as unknown[]).entries()) {
    const reading = readInput(item, expectation, `${key}[${index}]`);
    if (reading.ok) items.push(reading.quantity);
    else problems.push(reading.problem);
  }
  const kept = items.map(keptOf);
  decimals?.values.push(kept.map(({ value }) => value));
  decimals?.kept.push(kept.reduce((least, { keeps }) => Math.min(least, keeps), Infinity));
  return Object.freeze(items);
}

/** The problem of a key that nobody asked for, with the nearest known one. */
export function unknownKey(name: string, known: readonly string[], value: unknown, path = name): Problem {
  const near = nearestName(name, known);
  return {
    path,
    code: "unknown-key",
    message: `${name} is not known here${near ? `; did you mean ${near}?` : ""}`,
    expected: known.join(", "),
    received: received(value),
  };
}
