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
export { parallelCurrent, summedCurrent } from "./current/parallel-current.js";
export { currentFactor, maximumCurrent, maximumCurrentByFactor } from "./current/maximum-current.js";
export { maximumStringCurrent, type StringCurrent } from "./current/maximum-string-current.js";
export * from "./tracker/tracker-conditions.js";
export * from "./tracker/alike.js";
export type { TrackerStrings } from "./tracker/tracker-strings.js";
export {
  type CheckedTracker,
  type StringsPerTracker,
  stringsPerTracker,
  trackerChecks,
  type TrackerInput,
  type TrackerLimits,
} from "./tracker/tracker-checks.js";
export { type JoinedRatings, joinedTrackers, type JoinedTrackersInput, type Joint } from "./tracker/joined-trackers.js";
export * from "./protection/reverse-current.js";
export * from "./protection/fuse-bounds.js";
export * from "./protection/fuse-heat.js";
export * from "./protection/shared-device.js";
export { continuousCurrent } from "./current/continuous-current.js";
export * from "./protection/fuse-conditions.js";
export { type FusedStrings, type FuseRules, type FuseWindow, fuseWindow } from "./protection/fuse-window.js";
export { type StringFuse, stringFuse, type StringFuseInput, type UnfusedPart } from "./protection/string-fuse.js";
export {
  type DcSwitch,
  dcSwitchChecks,
  type DcSwitchInput,
  dcSwitchPresent,
  polesOfCircuits,
  switchBreaksReverseCurrent,
  switchCarriesCurrent,
  switchCategoryFits,
  switchOpensAllPoles,
} from "./protection/dc-switch.js";
export { type GroupFuse, groupFuse, type GroupFuseInput } from "./protection/group-fuse.js";
export * from "./current/circuit-currents.js";
export { type DcCircuit, minimumCircuitCurrent } from "./current/minimum-circuit-current.js";
export {
  ampacityWithinStandardRating,
  correctedAmpacitySuffices,
  deviceProtectsConductor,
  deviceWithinSmallConductorLimit,
  largestDeviceFor,
  type NecConductor,
  necConductorChecks,
  terminalAmpacitySuffices,
} from "./current/nec-conductor.js";
export * from "./engineered/engineered.js";
export {
  type Engineered,
  type EngineeredDesign,
  engineeredMaximumCurrent,
  engineeredVoltage,
} from "./engineered/engineered-design.js";
export {
  type RapidShutdown,
  rapidShutdown,
  type RapidShutdownInput,
  rapidShutdownPresent,
  rapidShutdownVoltages,
  shutdownVoltageWithinLimit,
  type ShutdownWay,
  shutdownWays,
} from "./shutdown/rapid-shutdown.js";
export {
  type ArcFault,
  arcFault,
  type ArcFaultInput,
  type ArcFaultProtection,
  arcFaultProtectionPresent,
  arcFaultVoltage,
  belowArcFaultVoltage,
} from "./shutdown/arc-fault.js";
export {
  altitudeWithinRating,
  isolatedForFunctionalEarth,
  moduleOfClassTwo,
  type ModuleWithInverter,
  moduleWithInverter,
  referenceAltitude,
} from "./inverter/module-with-inverter.js";
export * from "./junction/junction-conditions.js";
export { type CheckedJunction, junctionChecks, type JunctionInput } from "./junction/junction-checks.js";
export * from "./electronics/unit-conditions.js";
export { type PassThroughUnit, passThroughUnitChecks } from "./electronics/pass-through-units.js";
export { type RegulatedRange, type RegulatedString, regulatedString } from "./electronics/regulated-string.js";
export * from "./yield/dc-ac-ratio.js";
export {
  clipping,
  type ClippingInput,
  clippingOfSeries,
  clippingShareOfSums,
  type IrradianceClass,
} from "./yield/clipping.js";
export * from "./insulation/array-insulation.js";
export * from "./insulation/ground-fault.js";
export { type EarthFaultInput, type EarthFaultLimits, earthFaultLimits } from "./insulation/earth-fault-limits.js";
export {
  largestModuleCurrent,
  shortCircuitCurrentServed,
  type SourceConductor,
} from "./current/largest-module-current.js";
