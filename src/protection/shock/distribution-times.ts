import { table } from "../../formula/index.js";

/**
 * Longest time until disconnection in distribution circuits and larger final circuits. @function
 *
 * @example
 * ```ts
 * import { iec60364_4_41_2017_distribution } from "pv-to-grid/protection";
 * iec60364_4_41_2017_distribution({ system: "TN" }).text; // "5"
 * ```
 */
export const iec60364_4_41_2017_distribution = /* @__PURE__ */ table({
  id: "protection/iec-60364-4-41-2017-distribution",
  about: "longest time until disconnection in distribution circuits and larger final circuits",
  rows: { name: "system", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.3.2.3, 411.3.2.4", grade: "reproduced", seen: "elektroseminar page:undated" }],
  cells: `
    TN  5
    TT  1
  `,
});

/**
 * Rated current up to which a final circuit takes the short times. @function
 *
 * @example
 * ```ts
 * import { iec60364_4_41_final_circuit_limits } from "pv-to-grid/protection";
 * iec60364_4_41_final_circuit_limits({ circuit: "socket-outlets", edition: "2017" }).text; // "63"
 * ```
 */
export const iec60364_4_41_final_circuit_limits = /* @__PURE__ */ table({
  id: "protection/iec-60364-4-41-final-circuit-limits",
  about: "rated current up to which a final circuit takes the short times",
  rows: { name: "circuit", names: "in the first column" },
  rowRule: "exact",
  columns: { edition: ["2005", "2017"] },
  gives: { unit: "A", symbol: "I_n" },
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.3.2.2", grade: "reproduced", seen: "elektroseminar page:undated" }],
  cells: `
    fixed equipment  32  32
    socket-outlets   32  63
  `,
});
