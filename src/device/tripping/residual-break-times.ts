import { table } from "../../formula/index.js";

/**
 * Break times of residual current devices at multiples of the rated residual operating current. @function
 *
 * @example
 * ```ts
 * import { iec61008_1_2010_break_times } from "pv-to-grid/device";
 * iec61008_1_2010_break_times({ device: "general, longest break", residualCurrent: "5 I_Δn" }).text; // "0.04"
 * ```
 */
export const iec61008_1_2010_break_times = /* @__PURE__ */ table({
  id: "device/iec-61008-1-2010-break-times",
  about: "break times of residual current devices at multiples of the rated residual operating current",
  rows: { name: "device", names: "in the first column" },
  rowRule: "exact",
  columns: { residualCurrent: ["I_Δn", "2 I_Δn", "5 I_Δn"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEC 61008-1:2010", clause: "table 1", grade: "memory" }],
  cells: `
    general, longest break              0.3   0.15  0.04
    time-delayed S, longest break       0.5   0.2   0.15
    time-delayed S, no break before     0.13  0.06  0.05
  `,
});
