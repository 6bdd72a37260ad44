import { formula } from "../../formula/index.js";

/**
 * Apparent power that the inverters of one phase give together.
 *
 * @function
 * @example
 * ```ts
 * import { phaseLoad } from "pv-to-grid/grid";
 * phaseLoad({ apparentPowers: ["3 kVA", "2 kVA"] }).text; // "5000"
 * ```
 */
export const phaseLoad = /* @__PURE__ */ formula({
  id: "grid/phase-load",
  about: "apparent power that the inverters of one phase give together",
  takes: { apparentPowers: { each: "VA", symbol: "S_i", about: "apparent power of each inverter on the phase", from: 0, usual: [0, 1e6] } },
  gives: { unit: "VA", symbol: "S_L" },
  expression: "sum(apparentPowers)",
  source: [{ in: "common practice", clause: "sum on one phase", grade: "common-practice" }],
  unproven: { because: "composition only" },
});

/**
 * Largest difference between the apparent powers of two phases.
 *
 * @function
 * @example
 * ```ts
 * import { phaseUnbalance } from "pv-to-grid/grid";
 * phaseUnbalance({ phaseLoads: ["4.6 kVA", "3 kVA", "0 VA"] }).text; // "4600"
 * ```
 */
export const phaseUnbalance = /* @__PURE__ */ formula({
  id: "grid/phase-unbalance",
  about: "largest difference between the apparent powers of two phases",
  takes: { phaseLoads: { each: "VA", symbol: "S_L", about: "apparent power of each phase", from: 0, usual: [0, 1e7] } },
  gives: { unit: "VA", symbol: "ΔS" },
  expression: "max(phaseLoads) - min(phaseLoads)",
  source: [{ in: "VDE-AR-N 4105:2011", clause: "overview table, 4.6 kVA per phase", grade: "reproduced", seen: "Solar Energy Consult on 4105:undated, table" }],
  unproven: { because: "definition" },
});

/**
 * Voltage unbalance: the largest deviation of a line voltage from the mean of all, as a share of the mean.
 *
 * @function
 * @example
 * ```ts
 * import { voltageUnbalance } from "pv-to-grid/grid";
 * voltageUnbalance({ lineVoltages: ["400 V", "404 V", "396 V"] }).text; // "0.01"
 * ```
 */
export const voltageUnbalance = /* @__PURE__ */ formula({
  id: "grid/voltage-unbalance",
  about: "voltage unbalance: the largest deviation of a line voltage from the mean of all, as a share of the mean",
  takes: { lineVoltages: { each: "V", symbol: "U_LL", about: "each of the three line-to-line voltages", above: 0, usual: [50, 1000] } },
  gives: { unit: "1", symbol: "u_unb" },
  requires: [{ that: "count(lineVoltages) == 3", because: "three line voltages are due" }],
  expression:
    "max(max(lineVoltages) - sum(lineVoltages) / count(lineVoltages), sum(lineVoltages) / count(lineVoltages) - min(lineVoltages)) / (sum(lineVoltages) / count(lineVoltages))",
  source: [{ in: "Asean forum on unbalance:undated", clause: "thread 420624", grade: "copied" }],
  unproven: { because: "no publication found", sought: "three line voltages with their unbalance in an edited publication; one forum agrees, one manual rounds early" },
});
