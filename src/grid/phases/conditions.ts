import { condition } from "../../formula/index.js";

/**
 * Is the difference between two phases within the limit of the connection rules?
 *
 * @function
 * @example
 * ```ts
 * import { unbalanceWithinLimit } from "pv-to-grid/grid";
 * unbalanceWithinLimit({ value: "4.6 kVA", limit: "4.6 kVA" }).verdict; // "met"
 * ```
 */
export const unbalanceWithinLimit = /* @__PURE__ */ condition({
  id: "grid/unbalance-within-limit",
  asks: "Is the difference between two phases within the limit of the connection rules?",
  force: "requirement",
  value: { unit: "VA", symbol: "ΔS", about: "largest difference between the apparent powers of two phases" },
  relation: "≤",
  limit: { unit: "VA", symbol: "ΔS_lim", about: "limit of the document" },
  source: [{ in: "VDE-AR-N 4105:2011", clause: "overview table", grade: "reproduced", seen: "Solar Energy Consult on 4105:undated, table" }],
});

/**
 * Is the active power difference between two phases within the limit of the connection rules?
 *
 * @function
 * @example
 * ```ts
 * import { activeUnbalanceWithinLimit } from "pv-to-grid/grid";
 * activeUnbalanceWithinLimit({ value: "4 kW", limit: "5 kW" }).verdict; // "met"
 * ```
 */
export const activeUnbalanceWithinLimit = /* @__PURE__ */ condition({
  id: "grid/active-unbalance-within-limit",
  asks: "Is the active power difference between two phases within the limit of the connection rules?",
  force: "requirement",
  value: { unit: "W", symbol: "ΔP", about: "largest difference between the active powers of two phases" },
  relation: "≤",
  limit: { unit: "W", symbol: "ΔP_lim", about: "limit of the document" },
  source: [{ in: "AS/NZS 4777.1:2016", clause: "three-phase systems", grade: "reproduced", seen: "SEANZ on 4777.1:2016, item II" }],
});

/**
 * Is the active power difference between two phases below the limit of the connection rules?
 *
 * @function
 * @example
 * ```ts
 * import { activeUnbalanceBelowLimit } from "pv-to-grid/grid";
 * activeUnbalanceBelowLimit({ value: "4 kW", limit: "5 kW" }).verdict; // "met"
 * ```
 */
export const activeUnbalanceBelowLimit = /* @__PURE__ */ condition({
  id: "grid/active-unbalance-below-limit",
  asks: "Is the active power difference between two phases below the limit of the connection rules?",
  force: "requirement",
  value: { unit: "W", symbol: "ΔP", about: "largest difference between the active powers of two phases" },
  relation: "<",
  limit: { unit: "W", symbol: "ΔP_lim", about: "limit of the document" },
  source: [{ in: "RD 1699/2011:2020", clause: "12.2", grade: "copied" }],
});

/**
 * Is the power of a single-phase connection within the limit of the connection rules?
 *
 * @function
 * @example
 * ```ts
 * import { singlePhasePowerWithinLimit } from "pv-to-grid/grid";
 * singlePhasePowerWithinLimit({ value: "4.6 kVA", limit: "4.6 kVA" }).verdict; // "met"
 * ```
 */
export const singlePhasePowerWithinLimit = /* @__PURE__ */ condition({
  id: "grid/single-phase-power-within-limit",
  asks: "Is the power of a single-phase connection within the limit of the connection rules?",
  force: "requirement",
  value: { unit: "VA", symbol: "S", about: "apparent power of the single-phase plant" },
  relation: "≤",
  limit: { unit: "VA", symbol: "S_lim", about: "limit of the document" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "5.2", grade: "memory" }],
});

/**
 * Is the active power of a single-phase connection within the limit of the connection rules?
 *
 * @function
 * @example
 * ```ts
 * import { singlePhaseActivePowerWithinLimit } from "pv-to-grid/grid";
 * singlePhaseActivePowerWithinLimit({ value: "4 kW", limit: "5 kW" }).verdict; // "met"
 * ```
 */
export const singlePhaseActivePowerWithinLimit = /* @__PURE__ */ condition({
  id: "grid/single-phase-active-power-within-limit",
  asks: "Is the active power of a single-phase connection within the limit of the connection rules?",
  force: "requirement",
  value: { unit: "W", symbol: "P", about: "active power of the single-phase plant" },
  relation: "≤",
  limit: { unit: "W", symbol: "P_lim", about: "limit of the document" },
  source: [
    { in: "AS/NZS 4777.1:2016", clause: "single-phase systems", grade: "reproduced", seen: "SEANZ on 4777.1:2016, item I" },
    { in: "RD 1699/2011:2020", clause: "12.2", grade: "copied" },
  ],
});

/**
 * Is the current per phase within the limit of the connection rules?
 *
 * @function
 * @example
 * ```ts
 * import { currentPerPhaseWithinLimit } from "pv-to-grid/grid";
 * currentPerPhaseWithinLimit({ value: "26.1 A", limit: "25 A" }).verdict; // "not met"
 * ```
 */
export const currentPerPhaseWithinLimit = /* @__PURE__ */ condition({
  id: "grid/current-per-phase-within-limit",
  asks: "Is the current per phase within the limit of the connection rules?",
  force: "requirement",
  value: { unit: "A", symbol: "I", about: "rated current per phase at nominal voltage" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_lim", about: "limit of the document" },
  source: [
    { in: "EREC G98:2022", clause: "scope", grade: "reproduced", seen: "Western Power Distribution G98:undated, rating example" },
    { in: "ESB Networks micro-generators:undated", clause: "body", grade: "original" },
  ],
  note: "the rated current counts, not the name of the model",
});

/**
 * Is the voltage unbalance within three per cent?
 *
 * @function
 * @example
 * ```ts
 * import { voltageUnbalanceWithinLimit } from "pv-to-grid/grid";
 * voltageUnbalanceWithinLimit({ value: "0.02", limit: "0.03" }).verdict; // "met"
 * ```
 */
export const voltageUnbalanceWithinLimit = /* @__PURE__ */ condition({
  id: "grid/voltage-unbalance-within-limit",
  asks: "Is the voltage unbalance within three per cent?",
  force: "requirement",
  value: { unit: "1", symbol: "u_unb", about: "voltage unbalance" },
  relation: "≤",
  limit: { unit: "1", symbol: "u_unb,lim", about: "limit of the document" },
  source: [{ in: "NFPA 70:2017", clause: "705.100(A)", grade: "copied", seen: "NEC 2017 transcription:undated" }],
});
