import { table } from "../../../formula/index.js";

/**
 * Current-carrying capacity, XLPE or EPR (90 °C), two loaded conductors, methods A1 to D2.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_3 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_3({ section: "10 mm2", conductor: "copper", method: "C" }).show(); // "80 A"
 * ```
 */
export const iec60364_5_52_2009_b_52_3 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-3", about: "current-carrying capacity, XLPE or EPR (90 °C), two loaded conductors, methods A1 to D2",
  base: { air: "30 °C", ground: "20 °C", soilResistivity: "2.5 K·m/W", conductorTemperature: "90 °C", depth: "0.7 m" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { conductor: ["copper", "aluminium"], method: ["A1", "A2", "B1", "B2", "C", "D1", "D2"] },
  gives: { unit: "A", symbol: "I_tab" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.3", grade: "copied" }],
  differences: [
    { cell: "120 | aluminium | D2", ships: "233", others: "223", why: "one transcription prints 223, two print 233, which fits its neighbours" },
  ],
  note: "shaped conductors from 25 mm² for A2, B2, C, D1 and D2; the values may safely be used for circular ones",
  cells: `
    1.5  19   18.5  23   22   24   25   27   –    –     –    –    –    –    –
    2.5  26   25    31   30   33   33   35   20   19.5  25   23   26   26   –
    4    35   33    42   40   45   43   46   27   26    33   31   35   33   –
    6    45   42    54   51   58   53   58   35   33    43   40   45   42   –
    10   61   57    75   69   80   71   77   48   45    59   54   62   55   –
    16   81   76    100  91   107  91   100  64   60    79   72   84   71   76
    25   106  99    133  119  138  116  129  84   78    105  94   101  90   98
    35   131  121   164  146  171  139  155  103  96    130  115  126  108  117
    50   158  145   198  175  209  164  183  125  115   157  138  154  128  139
    70   200  183   253  221  269  203  225  158  145   200  175  198  158  170
    95   241  220   306  265  328  239  270  191  175   242  210  241  186  204
    120  278  253   354  305  382  271  306  220  201   281  242  280  211  233
    150  318  290   393  334  441  306  343  253  230   307  261  324  238  261
    185  362  329   449  384  506  343  387  288  262   351  300  371  267  296
    240  424  386   528  459  599  395  448  338  307   412  358  439  307  343
    300  486  442   603  532  693  446  502  387  352   471  415  508  346  386
  `,
});
