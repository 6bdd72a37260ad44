import { table } from "../../formula/index.js";

/**
 * Limits of the voltage unbalance.
 *
 * @function
 * @example
 * ```ts
 * import { voltageUnbalanceLimits } from "pv-to-grid/grid";
 * voltageUnbalanceLimits({ document: "NFPA 70:2017" }).text; // "3"
 * ```
 */
export const voltageUnbalanceLimits = /* @__PURE__ */ table({
  id: "grid/voltage-unbalance-limits",
  about: "limits of the voltage unbalance",
  rows: { name: "document", names: "in the first column", about: "document and share of the time" },
  rowRule: "exact",
  gives: { unit: "%", symbol: "u_unb,lim" },
  source: [
    { in: "NFPA 70:2017", clause: "705.100(A)", grade: "copied", seen: "NEC 2017 transcription:undated" },
    { in: "Netcode elektriciteit:undated", clause: "voltage quality up to 1 kV, c", grade: "reproduced", seen: "Schrijvende Meter on the Netcode:undated, list, c" },
  ],
  cellGrades: { copied: ["NFPA 70:2017"] },
  cells: `
    NFPA 70:2017                     3
    Netcode 95 % of a week           2
    Netcode always                   3
  `,
  note: "Netcode: negative-sequence voltage",
});
