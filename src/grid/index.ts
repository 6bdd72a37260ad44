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
export { type Connection, connections, type SupplySystem, supplySystem, supplySystems } from "./supply/supply-systems.js";
export * from "./power/active-power-limit.js";
export * from "./power/output-current.js";
export * from "./power/power-triangle.js";
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
export * from "./voltage/short-circuit-power.js";
export * from "./voltage/voltage-at-infeed.js";
export * from "./voltage/voltage-change.js";
export { gridVoltageChecks, type VoltageChecksFor } from "./voltage/voltage-checks.js";
export * from "./voltage/voltage-profile.js";
export * from "./voltage/within-the-limit.js";
