import { table } from "../../../formula/index.js";

/**
 * Current-carrying capacity in free air, PVC (70 °C), copper.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_10 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_10({ section: "35 mm2", arrangement: "E three loaded" }).show(); // "126 A"
 * ```
 */
export const iec60364_5_52_2009_b_52_10 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-10", about: "current-carrying capacity in free air, PVC (70 °C), copper",
  base: { air: "30 °C", conductorTemperature: "70 °C" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { arrangement: ["E two loaded", "E three loaded", "F two loaded touching", "F three loaded trefoil", "F three loaded flat", "G three loaded horizontal", "G three loaded vertical"] },
  gives: { unit: "A", symbol: "I_tab" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.10", grade: "copied" }],
  differences: [
    { cell: "400 | F three loaded trefoil", ships: "656", others: "659", why: "a maker's manual prints 659; another transcription and annex D give 656" },
    { cell: "70 | E three loaded", ships: "196", others: "198", why: "one transcription prints 198; three others and annex D give 196" },
    { cell: "120 | E three loaded", ships: "276", others: "278", why: "one transcription prints 278; three others and annex D give 276" },
  ],
  cells: `
    1.5  22   18.5  –     –    –    –     –
    2.5  30   25    –     –    –    –     –
    4    40   34    –     –    –    –     –
    6    51   43    –     –    –    –     –
    10   70   60    –     –    –    –     –
    16   94   80    –     –    –    –     –
    25   119  101   131   110  114  146   130
    35   148  126   162   137  143  181   162
    50   180  153   196   167  174  219   197
    70   232  196   251   216  225  281   254
    95   282  238   304   264  275  341   311
    120  328  276   352   308  321  396   362
    150  379  319   406   356  372  456   419
    185  434  364   463   409  427  521   480
    240  514  430   546   485  507  615   569
    300  593  497   629   561  587  709   659
    400  –    –     754   656  689  852   795
    500  –    –     868   749  789  982   920
    630  –    –     1005  855  905  1138  1070
  `,
});
