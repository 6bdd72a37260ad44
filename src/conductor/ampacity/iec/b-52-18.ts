import { table } from "../../../formula/index.js";

/**
 * Factor for a group of circuits directly in the ground.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_18 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_18({ circuits: 2, clearance: "0.25 m" }).text; // "0.9"
 * ```
 */
export const iec60364_5_52_2009_b_52_18 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-18", about: "factor for a group of circuits directly in the ground",
  rows: { name: "circuits", unit: "1", symbol: "n" }, rowRule: "next above",
  columns: { clearance: ["touching", "one diameter", "0.125 m", "0.25 m", "0.5 m"] },
  gives: { unit: "1", symbol: "k_g" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.18", grade: "copied" }],
  note: "averages for 0.7 m and 2.5 K·m/W, with a spread of up to ±10 %",
  cells: `
    2   0.75  0.8   0.85  0.9   0.9
    3   0.65  0.7   0.75  0.8   0.85
    4   0.6   0.6   0.7   0.75  0.8
    5   0.55  0.55  0.65  0.7   0.8
    6   0.5   0.55  0.6   0.7   0.8
    7   0.45  0.51  0.59  0.67  0.76
    8   0.43  0.48  0.57  0.65  0.75
    9   0.41  0.46  0.55  0.63  0.74
    12  0.36  0.42  0.51  0.59  0.71
    16  0.32  0.38  0.47  0.56  0.68
    20  0.29  0.35  0.44  0.53  0.66
  `,
});
