import { table } from "../../../formula/index.js";

/**
 * Factor for a group of circuits of single-core cables in free air.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_21 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_21({ circuits: 2, support: "ladder", arrangement: "trefoil", trays: "1" }).text; // "1"
 * ```
 */
export const iec60364_5_52_2009_b_52_21 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-21", about: "factor for a group of circuits of single-core cables in free air",
  rows: { name: "circuits", unit: "1", symbol: "n" }, rowRule: "next above",
  columns: { support: ["perforated", "vertical perforated", "ladder"], arrangement: ["touching", "trefoil"], trays: ["1", "2", "3"] },
  gives: { unit: "1", symbol: "k_g" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.21", grade: "copied" }],
  cellGrades: { memory: ["1 | vertical perforated | touching | 1", "1 | vertical perforated | touching | 2", "2 | vertical perforated | touching | 1", "2 | vertical perforated | touching | 2"] },
  cells: `
    1  0.98  0.96  0.95  1     0.97  0.96  0.96  0.95  –  1     1     –  1     0.98  0.97  1  0.97  0.96
    2  0.91  0.87  0.85  0.98  0.93  0.92  0.86  0.84  –  0.91  0.9   –  0.97  0.93  0.9   1  0.95  0.94
    3  0.87  0.81  0.78  0.96  0.89  0.86  –     –     –  0.89  0.86  –  0.96  0.89  0.86  1  0.93  0.9
  `,
});
