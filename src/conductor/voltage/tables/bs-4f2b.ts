import { table } from "../../../formula/index.js";

/**
 * Voltage drop of flexible thermosetting copper cables.
 *
 * @function
 * @example
 * ```ts
 * import { bs7671_2018_4f2b } from "pv-to-grid/conductor";
 * bs7671_2018_4f2b({ section: "4 mm2", arrangement: "d.c.", part: "z" }).show(); // "13.2 mV/(A·m)"
 * ```
 */
export const bs7671_2018_4f2b = /* @__PURE__ */ table({
  id: "conductor/bs-7671-2018-4f2b", about: "voltage drop of flexible thermosetting copper cables",
  base: { conductorTemperature: "90 °C", frequency: "50 Hz" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { arrangement: ["d.c.", "two cores", "three phases", "two single cores touching"], part: ["r", "x", "z"] },
  gives: { unit: "mV/(A·m)", symbol: "v" },
  source: [{ in: "BS 7671:2018", clause: "appendix 4, table 4F2B", grade: "reproduced", seen: "CSE Distributors table 4F2B:undated, table" }],
  differences: [
    { cell: "25 | d.c. | z", ships: "2.03", others: "1.80", why: "an upload prints the values of 60 °C cables; twice the resistance of a tinned class 5 conductor at 90 °C is 2.03" },
    { cell: "25 | two cores | r", ships: "2.03", others: "1.80", why: "as for d.c." },
    { cell: "25 | two cores | z", ships: "2.04", others: "1.85", why: "as for d.c." },
    { cell: "240 | three phases | z", ships: "0.23", others: "0.231", why: "rounding" },
    { cell: "4 | three phases | r", ships: "11.1", others: "11", why: "a maker's booklet prints 11; three-phase values of the booklet are lower up to 10 mm²" },
    { cell: "6 | three phases | r", ships: "7.4", others: "7.3", why: "as for 4 mm²" },
    { cell: "10 | three phases | r", ships: "4.4", others: "4.3", why: "as for 4 mm²" },
  ],
  cells: `
    4    –  –  13.2   13.2  –      –     11.1   –      –      –      –      –
    6    –  –  8.5    8.5   –      –     7.4    –      –      –      –      –
    10   –  –  5.1    5.1   –      –     4.4    –      –      –      –      –
    16   –  –  3.2    3.2   –      –     2.7    –      –      –      –      –
    25   –  –  2.03   2.03  0.175  2.04  1.73   0.15   1.73   –      –      –
    35   –  –  1.42   –     –      –     1.22   0.15   1.23   1.44   0.21   1.46
    50   –  –  1      –     –      –     0.91   0.145  0.93   1      0.21   1.02
    70   –  –  0.71   –     –      –     0.62   0.14   0.64   0.71   0.2    0.73
    95   –  –  0.54   –     –      –     0.47   0.135  0.49   0.54   0.195  0.57
    120  –  –  0.42   –     –      –     0.37   0.135  0.39   0.42   0.19   0.46
    150  –  –  0.34   –     –      –     0.29   0.13   0.32   0.34   0.19   0.39
    185  –  –  0.27   –     –      –     0.24   0.13   0.27   0.27   0.19   0.33
    240  –  –  0.21   –     –      –     0.188  0.13   0.23   0.21   0.185  0.28
    300  –  –  0.167  –     –      –     0.147  0.125  0.195  0.173  0.18   0.25
    400  –  –  0.127  –     –      –     –      –      –      0.132  0.175  0.22
    500  –  –  0.1    –     –      –     –      –      –      0.107  0.17   0.2
    630  –  –  0.074  –     –      –     –      –      –      0.085  0.17   0.19
  `,
});
