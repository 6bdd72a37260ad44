/**
 * The d.c. side: how long strings may be, what currents flow, and what protects them, by the rules of both practices.
 *
 * @packageDocumentation
 */
export { isNec, type NecRules, type PvRules, pvRuleSets } from "./rules.js";
export { maximumVoltageByFactor, stringVoltage } from "./voltage/string-voltage.js";
export {
  endOfLifeMppVoltage,
  lowerLimitWithMargin,
  mppVoltageAtInverter,
  voltageAboveLimit,
  voltageBelowLimit,
} from "./voltage/mpp-voltage.js";
export { longestString, shortestString } from "./voltage/module-counts.js";
export { type ArrayPlace, arrayPlaces, legalCeiling, voltageCeilings } from "./voltage/voltage-ceilings.js";
export * from "./voltage/ceiling-conditions.js";
export * from "./voltage/window-conditions.js";
export type { Ceiling, CeilingKey, ModuleVoltages, StringInput } from "./voltage/string-limits.js";
export { type LengthLimit, type StringRange, stringRange } from "./voltage/string-range.js";
export { type CheckedString, stringChecks, type StringMargin } from "./voltage/string-checks.js";
