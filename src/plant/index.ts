/**
 * The plant: its description, the sizing that composes every subject, and the record that comes out.
 *
 * @packageDocumentation
 */
export { standingCautions } from "./cautions.js";
export {
  type Commissioning,
  commissioningOf,
  type InsulationTest,
  measurementSheetCsv,
  type PlaceToRead,
} from "./commissioning/commissioning-of.js";
export { judgeSheet } from "./commissioning/judge-sheet.js";
export {
  JUDGED_FORMAT,
  type JudgedComparison,
  type JudgedHint,
  type JudgedReading,
  type JudgedSheet,
  type TellingLengths,
} from "./commissioning/judged-sheet.js";
export { plantJsonSchema } from "./description/json-schema.js";
export { PLANT_FORMAT, type Plant, type PlantDescription } from "./description/plant-description.js";
export { readPlant, type ReadPlant } from "./description/read-plant.js";
export {
  practices,
  type PvRules,
  pvRules,
  type Rules,
  type SupplyRules,
  supplyRules,
  type WiringRules,
  wiringRules,
} from "./description/rules.js";
export { coldestBelowHottest, lowerVoltageBelowUpper } from "./description/values.js";
export { explain } from "./explain.js";
export { conductorLength } from "./material/conductor-length.js";
export { lengthToOrder } from "./material/length-to-order.js";
export { type Change, compare, type Flip } from "./record/compare.js";
export type * from "./record/record.js";
export { RECORD_FORMAT } from "./record/record.js";
export { recordJsonSchema } from "./record/record-schema.js";
export { type ExplainedStep, stepsBehind } from "./record/steps-behind.js";
export {
  absorbing,
  combinedApparentPower,
  combinedCurrent,
  impedanceInSeries,
  impedanceOfStretch,
  impedanceThereAndBack,
  reactiveFactorOf,
} from "./sizing/ac-formulas.js";
export { highestVoltage, powerOfArray, powerOfStrings } from "./sizing/array-formulas.js";
export { bifacialCurrentCorrection } from "./sizing/bifacial-correction.js";
export { totalLength } from "./sizing/lengths.js";
export { acRiseWithinOwnersLimit, dcDropWithinOwnersLimit } from "./sizing/owners-limits.js";
export { sizePlant, type SizingOptions } from "./size-plant.js";
export { VERSION } from "./version.js";
