import { dimensionOf } from "./conversion.js";
import { InputError } from "./input-error.js";
import type { GivenOrigin, Quantity } from "./quantity.js";
import { type Input, readInput } from "./reading.js";
import type { DimensionOf, Unit } from "./units.js";

/**
 * An input as a quantity in a unit, with where the user says that it is from.
 *
 * @param input - number in `unit`, text with or without a unit, or a quantity of the same kind
 * @param unit - unit of the result
 * @param statedIn - where the value is from: a datasheet and its revision, a survey, an assumption
 * @throws InputError where the input is not a finite number in a unit of the same kind
 * @example
 * ```ts
 * import { given } from "pv-to-grid/quantity";
 * given("39.2 V", "V", "datasheet rev. 2").text; // "39.2"
 * ```
 */
export function given<U extends Unit>(
  input: Input<DimensionOf<U>>,
  unit: U,
  statedIn?: string,
): Quantity<DimensionOf<U>> {
  const origin: GivenOrigin = Object.freeze(statedIn === undefined ? { kind: "given" } : { kind: "given", statedIn });
  const reading = readInput(input, { unit }, dimensionOf(unit), origin);
  if (!reading.ok) throw new InputError("given", [reading.problem]);
  return reading.quantity;
}
