import { table } from "../../../formula/index.js";

/**
 * Current-carrying capacity, XLPE or EPR (90 °C), three loaded conductors, methods A1 to D2.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_5 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_5({ section: "10 mm2", conductor: "copper", method: "C" }).show(); // "71 A"
 * ```
 */
export const iec60364_5_52_2009_b_52_5 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-5", about: "current-carrying capacity, XLPE or EPR (90 °C), three loaded conductors, methods A1 to D2",
  base: { air: "30 °C", ground: "20 °C", soilResistivity: "2.5 K·m/W", conductorTemperature: "90 °C", depth: "0.7 m" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { conductor: ["copper", "aluminium"], method: ["A1", "A2", "B1", "B2", "C", "D1", "D2"] },
  gives: { unit: "A", symbol: "I_tab" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.5", grade: "copied" }],
  differences: [
    { cell: "70 | aluminium | D2", ships: "144", others: "114", why: "one transcription prints 114; two others print 144, which fits its neighbours" },
  ],
  note: "shaped conductors from 25 mm² for A2, B2, C, D1 and D2; the values may safely be used for circular ones",
  cells: `
    1.5  17   16.5  20   19.5  22   21   23   –    –    –    –    –    –    –
    2.5  23   22    28   26    30   28   30   19   18   22   21   24   22   –
    4    31   30    37   35    40   36   39   25   24   29   28   32   28   –
    6    40   38    48   44    52   44   49   32   31   38   35   41   35   –
    10   54   51    66   60    71   58   65   44   41   52   48   57   46   –
    16   73   68    88   80    96   75   84   58   55   71   64   76   59   64
    25   95   89    117  105   119  96   107  76   71   93   84   90   75   82
    35   117  109   144  128   147  115  129  94   87   116  103  112  90   98
    50   141  130   175  154   179  135  153  113  104  140  124  136  106  117
    70   179  164   222  194   229  167  188  142  131  179  156  174  130  144
    95   216  197   269  233   278  197  226  171  157  217  188  211  154  172
    120  249  227   312  268   322  223  257  197  180  251  216  245  174  197
    150  285  259   342  300   371  251  287  226  206  267  240  283  197  220
    185  324  295   384  340   424  281  324  256  233  300  272  323  220  250
    240  380  346   450  398   500  324  375  300  273  351  318  382  253  290
    300  435  396   514  455   576  365  419  344  313  402  364  440  286  326
  `,
});
