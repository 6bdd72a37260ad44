import { table } from "../../../formula/index.js";

/**
 * Current-carrying capacity, PVC (70 °C), two loaded conductors, methods A1 to D2.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_2 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_2({ section: "10 mm2", conductor: "copper", method: "C" }).show(); // "63 A"
 * ```
 */
export const iec60364_5_52_2009_b_52_2 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-2", about: "current-carrying capacity, PVC (70 °C), two loaded conductors, methods A1 to D2",
  base: { air: "30 °C", ground: "20 °C", soilResistivity: "2.5 K·m/W", conductorTemperature: "70 °C", depth: "0.7 m" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { conductor: ["copper", "aluminium"], method: ["A1", "A2", "B1", "B2", "C", "D1", "D2"] },
  gives: { unit: "A", symbol: "I_tab" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.2", grade: "copied" }],
  note: "shaped conductors from 25 mm² for A2, B2, C, D1 and D2; the values may safely be used for circular ones",
  cells: `
    1.5  14.5  14    17.5  16.5  19.5  22   22   –    –     –     –     –    –    –
    2.5  19.5  18.5  24    23    27    29   28   15   14.5  18.5  17.5  21   22   –
    4    26    25    32    30    36    37   38   20   19.5  25    24    28   29   –
    6    34    32    41    38    46    46   48   26   25    32    30    36   36   –
    10   46    43    57    52    63    60   64   36   33    44    41    49   47   –
    16   61    57    76    69    85    78   83   48   44    60    54    66   61   63
    25   80    75    101   90    112   99   110  63   58    79    71    83   77   82
    35   99    92    125   111   138   119  132  77   71    97    86    103  93   98
    50   119   110   151   133   168   140  156  93   86    118   104   125  109  117
    70   151   139   192   168   213   173  192  118  108   150   131   160  135  145
    95   182   167   232   201   258   204  230  142  130   181   157   195  159  173
    120  210   192   269   232   299   231  261  164  150   210   181   226  180  200
    150  240   219   300   258   344   261  293  189  172   234   201   261  204  224
    185  273   248   341   294   392   292  331  215  195   266   230   298  228  255
    240  321   291   400   344   461   336  382  252  229   312   269   352  262  298
    300  367   334   458   394   530   379  427  289  263   358   308   406  296  336
  `,
});
