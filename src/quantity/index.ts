/**
 * Exact values with units and origins, and the errors that refuse bad input.
 *
 * @packageDocumentation
 */
export { given } from "./given.js";
export { type Domain, domainText } from "./domain.js";
export { InputError, isInputError, type Problem, type ProblemCode } from "./input-error.js";
export { nearestName } from "./nearest-name.js";
export {
  type ConversionOrigin,
  type GivenOrigin,
  isQuantity,
  type Origin,
  type Quantity,
  type ShowOptions,
} from "./quantity.js";
export { restate } from "./restate.js";
export { type Expectation, type Input, type Reading, readInput } from "./reading.js";
export { asciiUnit, unitFromText } from "./unit-text.js";
export { dimensionOf, unitsOf } from "./conversion.js";
export { type Dimension, type DimensionOf, type Unit, type UnitOf, units } from "./units.js";
