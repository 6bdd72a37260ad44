import { table } from "../../../formula/index.js";

/**
 * Voltage drop of multi-core armoured thermosetting copper cables.
 *
 * @function
 * @example
 * ```ts
 * import { bs7671_2018_4e4b } from "pv-to-grid/conductor";
 * bs7671_2018_4e4b({ section: "35 mm2", arrangement: "three or four cores", part: "z" }).show(); // "1.15 mV/(A·m)"
 * ```
 */
export const bs7671_2018_4e4b = /* @__PURE__ */ table({
  id: "conductor/bs-7671-2018-4e4b", about: "voltage drop of multi-core armoured thermosetting copper cables",
  base: { conductorTemperature: "90 °C", frequency: "50 Hz" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { arrangement: ["d.c.", "two cores", "three or four cores"], part: ["r", "x", "z"] },
  gives: { unit: "mV/(A·m)", symbol: "v" },
  source: [{ in: "BS 7671:2018", clause: "appendix 4, table 4E4B", grade: "reproduced", seen: "CSE Distributors table 4E4B:undated, table" }],
  differences: [
    { cell: "35 | two cores | r", ships: "1.35", others: "1.365", why: "another reprint prints 1.365, which its own x and z contradict" },
    { cell: "35 | two cores | z", ships: "1.35", others: "1.365", why: "as for r" },
    { cell: "95 | three or four cores | r", ships: "0.43", others: "0.473", why: "another reprint prints 0.473, which its own z contradicts" },
    { cell: "120 | three or four cores | z", ships: "0.37", others: "0.380", why: "another reprint prints 0.380; r and x give 0.364" },
  ],
  cells: `
    1.5  –  –  31     31    –      31    27     –      27
    2.5  –  –  19     19    –      19    16     –      16
    4    –  –  12     12    –      12    10     –      10
    6    –  –  7.9    7.9   –      7.9   6.8    –      6.8
    10   –  –  4.7    4.7   –      4.7   4      –      4
    16   –  –  2.9    2.9   –      2.9   2.5    –      2.5
    25   –  –  1.85   1.85  0.16   1.9   1.6    0.14   1.65
    35   –  –  1.35   1.35  0.155  1.35  1.15   0.135  1.15
    50   –  –  0.98   0.99  0.155  1     0.86   0.135  0.87
    70   –  –  0.67   0.67  0.15   0.69  0.59   0.13   0.6
    95   –  –  0.49   0.5   0.15   0.52  0.43   0.13   0.45
    120  –  –  0.39   0.4   0.145  0.42  0.34   0.13   0.37
    150  –  –  0.31   0.32  0.145  0.35  0.28   0.125  0.3
    185  –  –  0.25   0.26  0.145  0.29  0.22   0.125  0.26
    240  –  –  0.195  0.2   0.14   0.24  0.175  0.125  0.21
    300  –  –  0.155  0.16  0.14   0.21  0.14   0.12   0.185
    400  –  –  0.12   0.13  0.14   0.19  0.115  0.12   0.165
  `,
});
