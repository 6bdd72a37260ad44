/**
 * PV-to-grid sizing: from a plant description to a sized, explained plant.
 *
 * @packageDocumentation
 */
export type { InputsOf } from "./formula/index.js";
export { compare, explain, readPlant, sizePlant } from "./plant/index.js";
export type {
  Change,
  ExplainedStep,
  Flip,
  PlantDescription,
  PlantRecord,
  ReadPlant,
  RecordedCheck,
  RecordedNumber,
  RecordedRoute,
  RecordedStep,
  RecordedString,
  SizingOptions,
} from "./plant/index.js";
export { InputError, isInputError } from "./quantity/index.js";
export type { Dimension, Input, Problem, ProblemCode, Quantity, Unit } from "./quantity/index.js";
