import { table } from "../../../formula/index.js";

/**
 * Current-carrying capacity, PVC (70 °C), three loaded conductors, methods A1 to D2.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_4 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_4({ section: "10 mm2", conductor: "copper", method: "C" }).show(); // "57 A"
 * ```
 */
export const iec60364_5_52_2009_b_52_4 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-4", about: "current-carrying capacity, PVC (70 °C), three loaded conductors, methods A1 to D2",
  base: { air: "30 °C", ground: "20 °C", soilResistivity: "2.5 K·m/W", conductorTemperature: "70 °C", depth: "0.7 m" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { conductor: ["copper", "aluminium"], method: ["A1", "A2", "B1", "B2", "C", "D1", "D2"] },
  gives: { unit: "A", symbol: "I_tab" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.4", grade: "copied" }],
  differences: [
    { cell: "120 | copper | D1", ships: "192", others: "292", why: "the text of the final draft prints 292 between 169 and 217; three transcriptions and the formula of annex D give 192" },
    { cell: "240 | copper | A1", ships: "286", others: "266", why: "one transcription prints 266; four others and annex D give 286" },
  ],
  note: "shaped conductors from 25 mm² for A2, B2, C, D1 and D2; the values may safely be used for circular ones",
  cells: `
    1.5  13.5  13    15.5  15   17.5  18   19   –     –     –     –     –     –     –
    2.5  18    17.5  21    20   24    24   24   14    13.5  16.5  15.5  18.5  18.5  –
    4    24    23    28    27   32    30   33   18.5  17.5  22    21    25    24    –
    6    31    29    36    34   41    38   41   24    23    28    27    32    30    –
    10   42    39    50    46   57    50   54   32    31    39    36    44    39    –
    16   56    52    68    62   76    64   70   43    41    53    48    59    50    53
    25   73    68    89    80   96    82   92   57    53    70    62    73    64    69
    35   89    83    110   99   119   98   110  70    65    86    77    90    77    83
    50   108   99    134   118  144   116  130  84    78    104   92    110   91    99
    70   136   125   171   149  184   143  162  107   98    133   116   140   112   122
    95   164   150   207   179  223   169  193  129   118   161   139   170   132   148
    120  188   172   239   206  259   192  220  149   135   186   160   197   150   169
    150  216   196   262   225  299   217  246  170   155   204   176   227   169   189
    185  245   223   296   255  341   243  278  194   176   230   199   259   190   214
    240  286   261   346   297  403   280  320  227   207   269   232   305   218   250
    300  328   298   394   339  464   316  359  261   237   306   265   351   247   282
  `,
});
