import { table } from "../../../formula/index.js";

/**
 * Current-carrying capacity in free air, XLPE or EPR (90 °C), copper.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_12 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_12({ section: "35 mm2", arrangement: "E three loaded" }).show(); // "158 A"
 * ```
 */
export const iec60364_5_52_2009_b_52_12 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-12", about: "current-carrying capacity in free air, XLPE or EPR (90 °C), copper",
  base: { air: "30 °C", conductorTemperature: "90 °C" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { arrangement: ["E two loaded", "E three loaded", "F two loaded touching", "F three loaded trefoil", "F three loaded flat", "G three loaded horizontal", "G three loaded vertical"] },
  gives: { unit: "A", symbol: "I_tab" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.12", grade: "copied" }],
  cells: `
    1.5  26   23   –     –     –     –     –
    2.5  36   32   –     –     –     –     –
    4    49   42   –     –     –     –     –
    6    63   54   –     –     –     –     –
    10   86   75   –     –     –     –     –
    16   115  100  –     –     –     –     –
    25   149  127  161   135   141   182   161
    35   185  158  200   169   176   226   201
    50   225  192  242   207   216   275   246
    70   289  246  310   268   279   353   318
    95   352  298  377   328   342   430   389
    120  410  346  437   383   400   500   454
    150  473  399  504   444   464   577   527
    185  542  456  575   510   533   661   605
    240  641  538  679   607   634   781   719
    300  741  621  783   703   736   902   833
    400  –    –    940   823   868   1085  1008
    500  –    –    1083  946   998   1253  1169
    630  –    –    1254  1088  1151  1454  1362
  `,
});
