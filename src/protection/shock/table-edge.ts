import { condition } from "../../formula/index.js";

/**
 * Does the table of disconnection times tabulate the voltage? @function
 *
 * @example
 * ```ts
 * import { voltageWithinTable } from "pv-to-grid/protection";
 * voltageWithinTable({ value: "277 V", limit: "400 V" }).verdict; // "met"
 * ```
 */
export const voltageWithinTable = /* @__PURE__ */ condition({
  id: "protection/voltage-within-table",
  asks: "Does the table of disconnection times tabulate the voltage?",
  force: "requirement",
  value: { unit: "V", symbol: "U_0", about: "nominal voltage between line and earth" },
  relation: "≤",
  limit: { unit: "V", symbol: "400 V", about: "last voltage with a row of its own" },
  source: [{ in: "IEC 60364-4-41:2017", clause: "table 41.1", grade: "copied", seen: "REBT:2002, ITC-BT-24, table 1" }],
});
