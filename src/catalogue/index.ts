/**
 * Every rule that the library declares, for the audit, the docs and tests.
 *
 * @packageDocumentation
 */
export { type Calculation, type Catalogue, catalogue, collect, type Rule } from "./catalogue.js";
export {
  type ConstantEntry,
  citationsOf,
  conditions,
  constants,
  formulas,
  models,
  ruleById,
  series,
  sources,
  subjectOf,
  tables,
} from "./lists.js";
