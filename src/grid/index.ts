/**
 * Grid connection: voltage at the connection point, balance, reactive power, interface settings and interconnection rules.
 *
 * Signs: active and reactive power are positive where they are fed into the grid; reactive power is *injected* where
 * positive and *absorbed* where negative. "Leading" and "lagging" are not used.
 *
 * @packageDocumentation
 */
export { type GridRules, type GridRuleSet, gridRuleSet, gridRuleSets } from "./rules/grid-rule-sets.js";
export { ansiC84_1_2020_serviceVoltage } from "./supply/bands/ansi-c84-1.js";
export * from "./supply/bands/as60038.js";
export * from "./supply/bands/en50160.js";
export * from "./supply/bands/esqcr.js";
export * from "./supply/bands/new-zealand.js";
export * from "./supply/bands/new-zealand-before-2025.js";
export * from "./supply/bands/spain.js";
export { type SupplyBand, supplyBands } from "./supply/supply-bands.js";
export * from "./supply/nominal-voltage.js";
export { nominalVoltageOf, type SupplyFacts, supplyFacts } from "./supply/supply-facts.js";
export {
  type Connection,
  connections,
  type SupplySystem,
  supplySystem,
  supplySystems,
} from "./supply/supply-systems.js";
export * from "./power/active-power-limit.js";
export * from "./power/output-current.js";
export * from "./power/german-power-factor.js";
export * from "./power/power-triangle.js";
export * from "./power/reactive-capability.js";
export * from "./voltage/limits/as-nzs-4777-1.js";
export * from "./voltage/limits/mcs.js";
export * from "./voltage/limits/penn-state.js";
export * from "./voltage/limits/rd-1699.js";
export * from "./voltage/limits/rebt-itc-bt-40.js";
export * from "./voltage/limits/tor.js";
export * from "./voltage/limits/vde-ar-n-4105-2011.js";
export * from "./voltage/limits/vde-ar-n-4105-2018.js";
export * from "./voltage/limits/vdew-2001.js";
export * from "./voltage/limits/voltage-change-limits.js";
export * from "./voltage/limits/western-power.js";
export * from "./voltage/limits/within-the-limit.js";
export {
  type PowerFactorWithinLimit,
  powerFactorWithinVoltageLimit,
  type VoltageLimitToKeep,
} from "./voltage/power-factor-within-limit.js";
export * from "./voltage/short-circuit-power.js";
export * from "./voltage/voltage-at-infeed.js";
export * from "./voltage/voltage-change.js";
export { gridVoltageChecks, type VoltageChecksFor } from "./voltage/voltage-checks.js";
export * from "./voltage/voltage-profile.js";
export * from "./voltage/within-the-limit.js";
export * from "./curves/frequency.js";
export * from "./curves/priority.js";
export * from "./curves/volt-var.js";
export * from "./curves/volt-watt.js";
export * from "./curves/watt-var.js";
export { type CurveKind, curveKinds, type CurvePoint, type CurveSetting } from "./settings/curve-settings.js";
export * from "./settings/in-volts.js";
export { type InterfaceSettings, interfaceSettings } from "./settings/interface-settings.js";
export * from "./settings/reactive-share.js";
export { type SettingKey, settingKeys, type SettingKind, type SettingQuantity } from "./settings/setting-keys.js";
export * from "./settings/setting-row.js";
export { sustainedOvervoltageOf } from "./settings/sustained-overvoltage.js";
export * from "./settings/tables/as-nzs-4777-2-2020-curves.js";
export * from "./settings/tables/as-nzs-4777-2-2020.js";
export * from "./settings/tables/california-rule-21-curves.js";
export * from "./settings/tables/california-rule-21.js";
export * from "./settings/tables/cei-0-21-2012.js";
export * from "./settings/tables/cei-0-21-2016.js";
export * from "./settings/tables/din-vde-0126-1-1.js";
export * from "./settings/tables/en-50549-1-2019.js";
export * from "./settings/tables/erec-g98-2022.js";
export * from "./settings/tables/erec-g99-2019.js";
export * from "./settings/tables/eu-2016-1388.js";
export * from "./settings/tables/iec-61727-2004.js";
export * from "./settings/tables/ieee-1547-1-2020-curves.js";
export * from "./settings/tables/ieee-1547-1-2020-ride-through.js";
export * from "./settings/tables/ieee-1547-2003.js";
export * from "./settings/tables/ieee-1547-2018-droop.js";
export * from "./settings/tables/ieee-1547-2018.js";
export * from "./settings/tables/iso-ne.js";
export * from "./settings/tables/netcode.js";
export * from "./settings/tables/rd-1699-2011.js";
export * from "./settings/tables/rd-1699-2014.js";
export * from "./settings/tables/rd-1699-2020.js";
export * from "./settings/tables/rebt-itc-bt-40.js";
export * from "./settings/tables/synergrid-c10-11.js";
export * from "./settings/tables/vde-ar-n-4105-2011.js";
export * from "./settings/tables/vde-ar-n-4105-2018-curves.js";
export * from "./settings/tables/vde-ar-n-4105-2018.js";
export * from "./settings/enter-service.js";
export * from "./settings/evaluate-conditions.js";
export { evaluateCurve } from "./settings/evaluate-curve.js";
export { type EnteredSetting, evaluateSettings } from "./settings/evaluate-settings.js";
export { stayConnectedChecks } from "./settings/own-settings.js";
export * from "./settings/settings-export.js";
export * from "./settings/settings-sheet.js";
export * from "./settings/stay-connected-conditions.js";
export {
  frequencyStayConnectedChecks,
  type FrequencyTrip,
  type SynchronousArea,
  synchronousAreaOf,
  synchronousAreas,
  voltageRideThroughChecks,
  type VoltageTrip,
} from "./settings/stay-connected.js";
export * from "./flicker/flicker.js";
export * from "./flicker/flicker-checks.js";
export * from "./flicker/harmonics.js";
export * from "./flicker/limits.js";
export * from "./interconnection/busbar.js";
export * from "./interconnection/busbar-ways.js";
export * from "./interconnection/busbar-conditions.js";
export * from "./interconnection/feeder.js";
export * from "./interconnection/feeder-and-service.js";
export * from "./interconnection/feeder-and-service-conditions.js";
export * from "./interconnection/nec-editions.js";
export * from "./interconnection/source-currents.js";
export {
  allocatedPhases,
  allocatePhases,
  type PhaseAllocation,
  type PhaseName,
  phaseNames,
  type SinglePhaseInverter,
} from "./phases/allocate-phases.js";
export * from "./phases/conditions.js";
export * from "./phases/connection-thresholds.js";
export { phaseChecks, type PhasesFor } from "./phases/phase-checks.js";
export * from "./phases/phase-load.js";
export * from "./phases/unbalance-limits.js";
export { voltageUnbalanceChecks } from "./phases/voltage-unbalance-checks.js";
export * from "./site/export.js";
export * from "./site/generator-cable.js";
export * from "./site/export-checks.js";
export * from "./site/export-limiter.js";
export * from "./site/interface-relay.js";
