import { table } from "../../../formula/index.js";

/**
 * Factor for a group of single-core circuits in single-way ducts in the ground.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_19_b } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_19_b({ circuits: 3, clearance: "touching" }).text; // "0.7"
 * ```
 */
export const iec60364_5_52_2009_b_52_19_b = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-19-b", about: "factor for a group of single-core circuits in single-way ducts in the ground",
  rows: { name: "circuits", unit: "1", symbol: "n" }, rowRule: "next above",
  columns: { clearance: ["touching", "0.25 m", "0.5 m", "1.0 m"] },
  gives: { unit: "1", symbol: "k_g" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.19, part B", grade: "copied" }],
  note: "the rows for more than nine circuits were not seen",
  cells: `
    2  0.8   0.9   0.9   0.95
    3  0.7   0.8   0.85  0.9
    4  0.65  0.75  0.8   0.9
    5  0.6   0.7   0.8   0.9
    6  0.6   0.7   0.8   0.9
    7  0.53  0.66  0.76  0.87
    8  0.5   0.63  0.74  0.87
    9  0.47  0.61  0.73  0.86
  `,
});
