import { dimensionOf } from "../quantity/conversion.js";
import { InputError } from "../quantity/input-error.js";
import { keptOf, makeQuantity, type Origin, type Quantity } from "../quantity/quantity.js";
import { type Input, readInput } from "../quantity/reading.js";
import type { DimensionOf, Unit } from "../quantity/units.js";
import type { Citation } from "../source/citation.js";

/** Assumed in place of a fact of the plant, with its source. */
export interface AssumedOrigin extends Origin {
  readonly kind: "assumed";
  readonly about: string;
  readonly source: readonly Citation[];
}

/**
 * A value that the caller takes in place of a fact of the plant; readers see it among the assumptions.
 *
 * @param input - number in `unit`, or text with or without a unit
 * @param unit - unit of the result
 * @param about - what is assumed
 * @param source - where the value is from
 * @throws InputError where the input is not a finite number in a unit of the same kind
 */
export function assumed<U extends Unit>(
  input: Input<DimensionOf<U>>,
  unit: U,
  about: string,
  source: readonly Citation[],
): Quantity<DimensionOf<U>> {
  const reading = readInput(input, { unit }, dimensionOf(unit));
  if (!reading.ok) throw new InputError("assumed", [reading.problem]);
  const origin: AssumedOrigin = Object.freeze({ kind: "assumed", about, source: Object.freeze([...source]) });
  return makeQuantity(keptOf(reading.quantity), reading.quantity.unit, origin);
}
