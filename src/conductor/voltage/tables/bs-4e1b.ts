import { table } from "../../../formula/index.js";

/**
 * Voltage drop of single-core thermosetting copper cables without armour.
 *
 * @function
 * @example
 * ```ts
 * import { bs7671_2018_4e1b } from "pv-to-grid/conductor";
 * bs7671_2018_4e1b({ section: "25 mm2", arrangement: "d.c.", part: "z" }).show(); // "1.85 mV/(A·m)"
 * ```
 */
export const bs7671_2018_4e1b = /* @__PURE__ */ table({
  id: "conductor/bs-7671-2018-4e1b", about: "voltage drop of single-core thermosetting copper cables without armour",
  base: { conductorTemperature: "90 °C", frequency: "50 Hz" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { arrangement: ["d.c.", "two enclosed", "two touching", "two spaced", "three enclosed", "three trefoil", "three flat", "three flat spaced"], part: ["r", "x", "z"] },
  gives: { unit: "mV/(A·m)", symbol: "v" },
  source: [{ in: "BS 7671:2018", clause: "appendix 4, table 4E1B", grade: "reproduced", seen: "CSE Distributors table 4E1B:undated, table" }],
  differences: [
    { cell: "25 | three trefoil | x", ships: "–", others: "1.165", why: "misprint of the copy for 0.165: z stays 1.60" },
  ],
  cells: `
    1    –  –  46    46    –     46    46    –      46    46     –     46    40    –     40    40    –      40    40    –      40    40    –     40
    1.5  –  –  31    31    –     31    31    –      31    31     –     31    27    –     27    27    –      27    27    –      27    27    –     27
    2.5  –  –  19    19    –     19    19    –      19    19     –     19    16    –     16    16    –      16    16    –      16    16    –     16
    4    –  –  12    12    –     12    12    –      12    12     –     12    10    –     10    10    –      10    10    –      10    10    –     10
    6    –  –  7.9   7.9   –     7.9   7.9   –      7.9   7.9    –     7.9   6.8   –     6.8   6.8   –      6.8   6.8   –      6.8   6.8   –     6.8
    10   –  –  4.7   4.7   –     4.7   4.7   –      4.7   4.7    –     4.7   4     –     4     4     –      4     4     –      4     4     –     4
    16   –  –  2.9   2.9   –     2.9   2.9   –      2.9   2.9    –     2.9   2.5   –     2.5   2.5   –      2.5   2.5   –      2.5   2.5   –     2.5
    25   –  –  1.85  1.85  0.31  1.9   1.85  0.19   1.85  1.85   0.28  1.85  1.6   0.27  1.65  1.6   –      1.6   1.6   0.19   1.6   1.6   0.27  1.65
    35   –  –  1.35  1.35  0.29  1.35  1.35  0.18   1.35  1.35   0.27  1.35  1.15  0.25  1.15  1.15  0.155  1.15  1.15  0.18   1.15  1.15  0.26  1.2
    50   –  –  0.99  1     0.29  1.05  0.99  0.18   1     0.99   0.27  1     0.87  0.25  0.9   0.86  0.155  0.87  0.86  0.18   0.87  0.86  0.26  0.89
    70   –  –  0.68  0.7   0.28  0.75  0.68  0.175  0.71  0.68   0.26  0.73  0.6   0.24  0.65  0.59  0.15   0.61  0.59  0.175  0.62  0.59  0.25  0.65
    95   –  –  0.49  0.51  0.27  0.58  0.49  0.17   0.52  0.49   0.26  0.56  0.44  0.23  0.5   0.43  0.145  0.45  0.43  0.17   0.46  0.43  0.25  0.49
    120  –  –  0.39  0.41  0.26  0.48  0.39  0.165  0.43  0.39   0.25  0.47  0.35  0.23  0.42  0.34  0.14   0.37  0.34  0.165  0.38  0.34  0.24  0.42
    150  –  –  0.32  0.33  0.26  0.43  0.32  0.165  0.36  0.32   0.25  0.41  0.29  0.23  0.37  0.28  0.14   0.31  0.28  0.165  0.32  0.28  0.24  0.37
    185  –  –  0.25  0.27  0.26  0.37  0.26  0.165  0.3   0.25   0.25  0.36  0.23  0.23  0.32  0.22  0.14   0.26  0.22  0.165  0.28  0.22  0.24  0.33
    240  –  –  0.19  0.21  0.26  0.33  0.2   0.16   0.25  0.195  0.25  –     –     –     –     –     –      –     –     –      –     –     –     –
  `,
});
