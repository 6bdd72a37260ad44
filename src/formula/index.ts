/**
 * Rules as plain data: formulas, tables, series and conditions; choices and checks; and the working of every number.
 *
 * @packageDocumentation
 */
export { assumed, type AssumedOrigin } from "./assumed.js";
export { type Choice, type ChoiceOrigin, choose, chooseAmong, type Rejected } from "./choose.js";
export { type Check, type Comparison, type Condition, condition, type Verdict } from "./condition.js";
export type * from "./declaration.js";
export { equationOf, exactText, inputsOf, type Step, stepOf, steps, type Uses, usesOf } from "./derivation.js";
export { equationText } from "./equation-text.js";
export { childrenOf, type Expression, namesIn, readExpression } from "./expression.js";
export { type Formula, formula, type FormulaOrigin } from "./formula.js";
export { gradeOf } from "./grade-of.js";
export { type Arguments, type InputsOf, unknownKey } from "./inputs.js";
export { isMissing, type Known, type Missing, missing, whenKnown } from "./missing.js";
export { type Model, model, type ModelOrigin } from "./model.js";
export { isNamed, type Named } from "./named.js";
export { type Series, series, type SizeOrigin } from "./series.js";
export { type LookupOrigin, type Table, table } from "./table.js";
export type { Cell } from "./table-grid.js";
