import { table } from "../../../formula/index.js";

/**
 * Current-carrying capacity of single-core thermosetting copper cables without armour.
 *
 * @function
 * @example
 * ```ts
 * import { bs7671_2018_4e1a } from "pv-to-grid/conductor";
 * bs7671_2018_4e1a({ section: "25 mm2", arrangement: "F three trefoil" }).show(); // "135 A"
 * ```
 */
export const bs7671_2018_4e1a = /* @__PURE__ */ table({
  id: "conductor/bs-7671-2018-4e1a", about: "current-carrying capacity of single-core thermosetting copper cables without armour",
  base: { air: "30 °C", conductorTemperature: "90 °C" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { arrangement: ["A two", "A three or four", "B two", "B three or four", "F two flat", "F three flat", "F three trefoil", "G horizontal", "G vertical"] },
  gives: { unit: "A", symbol: "I_t" },
  source: [{ in: "BS 7671:2018", clause: "appendix 4, table 4E1A", grade: "reproduced", seen: "Doncaster Cables tables:undated, types 6491B and 6181XY" }],
  note: "method C of this table was not taken over",
  cells: `
    1     14   13   17   15   –     –     –     –     –
    1.5   19   17   23   20   –     –     –     –     –
    2.5   26   23   31   28   –     –     –     –     –
    4     35   31   42   37   –     –     –     –     –
    6     45   40   54   48   –     –     –     –     –
    10    61   54   75   66   –     –     –     –     –
    16    81   73   100  88   –     –     –     –     –
    25    106  95   133  117  161   141   135   182   161
    35    131  117  164  144  200   176   169   226   201
    50    158  141  198  175  242   216   207   275   246
    70    200  179  253  222  310   279   268   353   318
    95    241  216  306  269  377   342   328   430   389
    120   278  249  354  312  437   400   383   500   454
    150   318  285  393  342  504   464   444   577   527
    185   362  324  449  384  575   533   510   661   605
    240   424  380  528  450  679   634   607   781   719
    300   486  435  603  514  783   736   703   902   833
    400   –    –    683  584  940   868   823   1085  1008
    500   –    –    783  666  1083  998   946   1253  1169
    630   –    –    900  764  1254  1151  1088  1454  1362
    800   –    –    –    –    1358  1275  1214  1581  1485
    1000  –    –    –    –    1520  1436  1349  1775  –
  `,
});
