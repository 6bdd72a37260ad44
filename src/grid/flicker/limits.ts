import { condition, table } from "../../formula/index.js";

/**
 * Limits of rapid voltage changes.
 *
 * @function
 * @example
 * ```ts
 * import { rapidVoltageChangeLimits } from "pv-to-grid/grid";
 * rapidVoltageChangeLimits({ document: "VDE-AR-N 4105:2018" }).text; // "3"
 * ```
 */
export const rapidVoltageChangeLimits = /* @__PURE__ */ table({
  id: "grid/rapid-voltage-change-limits",
  about: "limits of rapid voltage changes",
  rows: { name: "document", names: "in the first column", about: "document and case" },
  rowRule: "exact",
  gives: { unit: "%", symbol: "d_lim" },
  source: [
    { in: "Netcode elektriciteit:undated", clause: "voltage quality up to 1 kV, b", grade: "reproduced", seen: "Schrijvende Meter on the Netcode:undated, list, b" },
    { in: "VDE-AR-N 4105:2018", clause: "5.4.2", grade: "memory" },
    { in: "EREC P28:2019", clause: "general step voltage change", grade: "memory" },
    { in: "IEC 61000-3-3:2013", clause: "clause 5", grade: "memory" },
    { in: "IEEE 1547:2018", clause: "7.2.2", grade: "memory" },
  ],
  cellGrades: { memory: ["VDE-AR-N 4105:2018", "EREC P28:2019", "IEC 61000-3-3:2013 steady", "IEC 61000-3-3:2013 largest", "IEEE 1547:2018 low voltage"] },
  cells: `
    VDE-AR-N 4105:2018            3
    EREC P28:2019                 3
    Netcode                       10
    Netcode usual operation       3
    IEC 61000-3-3:2013 steady     3.3
    IEC 61000-3-3:2013 largest    4
    IEEE 1547:2018 low voltage    5
  `,
});

/**
 * Limits of the flicker severity.
 *
 * @function
 * @example
 * ```ts
 * import { flickerLimits } from "pv-to-grid/grid";
 * flickerLimits({ document: "VDE-AR-N 4105:2018 long-term" }).text; // "0.5"
 * ```
 */
export const flickerLimits = /* @__PURE__ */ table({
  id: "grid/flicker-limits",
  about: "limits of the flicker severity",
  rows: { name: "document", names: "in the first column", about: "document and kind of severity" },
  rowRule: "exact",
  gives: { unit: "1", symbol: "P_lim" },
  source: [
    { in: "VDE-AR-N 4105:2018", clause: "5.4.3", grade: "memory" },
    { in: "IEC 61000-3-3:2013", clause: "clause 5", grade: "memory" },
  ],
  cells: `
    VDE-AR-N 4105:2018 long-term     0.5
    IEC 61000-3-3:2013 short-term    1.0
    IEC 61000-3-3:2013 long-term     0.65
  `,
});

/**
 * Is the rapid voltage change within the limit?
 *
 * @function
 * @example
 * ```ts
 * import { rapidVoltageChangeWithinLimit } from "pv-to-grid/grid";
 * rapidVoltageChangeWithinLimit({ value: "0.02", limit: "0.03" }).verdict; // "met"
 * ```
 */
export const rapidVoltageChangeWithinLimit = /* @__PURE__ */ condition({
  id: "grid/rapid-voltage-change-within-limit",
  asks: "Is the rapid voltage change within the limit?",
  force: "requirement",
  value: { unit: "1", symbol: "d_max", about: "rapid voltage change" },
  relation: "≤",
  limit: { unit: "1", symbol: "d_lim", about: "limit of the document" },
  source: [{ in: "Netcode elektriciteit:undated", clause: "voltage quality up to 1 kV, b", grade: "reproduced", seen: "Schrijvende Meter on the Netcode:undated, list, b" }],
});

/**
 * Is the flicker severity within the limit?
 *
 * @function
 * @example
 * ```ts
 * import { flickerWithinLimit } from "pv-to-grid/grid";
 * flickerWithinLimit({ value: "0.4", limit: "0.5" }).verdict; // "met"
 * ```
 */
export const flickerWithinLimit = /* @__PURE__ */ condition({
  id: "grid/flicker-within-limit",
  asks: "Is the flicker severity within the limit?",
  force: "requirement",
  value: { unit: "1", symbol: "P", about: "flicker severity" },
  relation: "≤",
  limit: { unit: "1", symbol: "P_lim", about: "limit of the document" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "5.4.3", grade: "memory" }],
});
