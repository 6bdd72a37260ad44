import { table } from "../../../formula/index.js";

/**
 * Current-carrying capacity of multi-core armoured thermosetting copper cables.
 *
 * @function
 * @example
 * ```ts
 * import { bs7671_2018_4e4a } from "pv-to-grid/conductor";
 * bs7671_2018_4e4a({ section: "25 mm2", method: "C", cores: "three or four" }).show(); // "124 A"
 * ```
 */
export const bs7671_2018_4e4a = /* @__PURE__ */ table({
  id: "conductor/bs-7671-2018-4e4a", about: "current-carrying capacity of multi-core armoured thermosetting copper cables",
  base: { air: "30 °C", ground: "20 °C", conductorTemperature: "90 °C" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { method: ["C", "E", "D"], cores: ["two", "three or four"] },
  gives: { unit: "A", symbol: "I_t" },
  source: [{ in: "BS 7671:2018", clause: "appendix 4, table 4E4A", grade: "reproduced", seen: "R&M Electrical cable tables:undated, tables 4E4A and 4E4B" }],
  differences: [
    { cell: "4 | D | two", ships: "43", others: "46", why: "another reprint prints 46 A; the cell of IEC D1 is 43 A, the safer value" },
  ],
  cells: `
    1.5  27   23   29   25   25   21
    2.5  36   31   39   33   33   28
    4    49   42   52   44   43   36
    6    62   53   66   56   53   44
    10   85   73   90   78   71   58
    16   110  94   115  99   91   75
    25   146  124  152  131  116  96
    35   180  154  188  162  139  115
    50   219  187  228  197  164  135
    70   279  238  291  251  203  167
    95   338  289  354  304  239  197
    120  392  335  410  353  271  223
    150  451  386  472  406  306  251
    185  515  441  539  463  343  281
    240  607  520  636  546  395  324
    300  698  599  732  628  446  365
    400  787  673  847  728  –    –
  `,
});
