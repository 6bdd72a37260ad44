import { table } from "../../../formula/index.js";

/**
 * Factor for a group of multi-core cables in single-way ducts in the ground.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_19_a } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_19_a({ circuits: 3, clearance: "touching" }).text; // "0.75"
 * ```
 */
export const iec60364_5_52_2009_b_52_19_a = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-19-a", about: "factor for a group of multi-core cables in single-way ducts in the ground",
  rows: { name: "circuits", unit: "1", symbol: "n" }, rowRule: "next above",
  columns: { clearance: ["touching", "0.25 m", "0.5 m", "1.0 m"] },
  gives: { unit: "1", symbol: "k_g" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.19, part A", grade: "copied" }],
  cellGrades: { memory: ["13 | 0.25 m", "13 | 0.5 m", "13 | 1.0 m", "14 | 0.25 m", "14 | 0.5 m", "14 | 1.0 m", "15 | 0.25 m", "15 | 0.5 m", "15 | 1.0 m", "16 | 0.25 m", "16 | 0.5 m", "16 | 1.0 m", "17 | 0.25 m", "17 | 0.5 m", "17 | 1.0 m", "18 | 0.25 m", "18 | 0.5 m", "18 | 1.0 m", "19 | 0.25 m", "19 | 0.5 m", "19 | 1.0 m", "20 | 0.25 m", "20 | 0.5 m", "20 | 1.0 m"] },
  cells: `
    2   0.85  0.9   0.95  0.95
    3   0.75  0.85  0.9   0.95
    4   0.7   0.8   0.85  0.9
    5   0.65  0.8   0.85  0.9
    6   0.6   0.8   0.8   0.9
    7   0.57  0.76  0.8   0.88
    8   0.54  0.74  0.78  0.88
    9   0.52  0.73  0.77  0.87
    10  0.49  0.72  0.76  0.86
    11  0.47  0.7   0.75  0.86
    12  0.45  0.69  0.74  0.85
    13  0.44  0.68  0.73  0.85
    14  0.42  0.68  0.72  0.84
    15  0.41  0.67  0.72  0.84
    16  0.39  0.66  0.71  0.83
    17  0.38  0.65  0.7   0.83
    18  0.37  0.65  0.7   0.83
    19  0.35  0.64  0.69  0.82
    20  0.34  0.63  0.68  0.82
  `,
});
