import { table } from "../../../formula/index.js";

/**
 * Current-carrying capacity in free air, PVC (70 °C), aluminium.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_11 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_11({ section: "35 mm2", arrangement: "E three loaded" }).show(); // "96 A"
 * ```
 */
export const iec60364_5_52_2009_b_52_11 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-11", about: "current-carrying capacity in free air, PVC (70 °C), aluminium",
  base: { air: "30 °C", conductorTemperature: "70 °C" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { arrangement: ["E two loaded", "E three loaded", "F two loaded touching", "F three loaded trefoil", "F three loaded flat", "G three loaded horizontal", "G three loaded vertical"] },
  gives: { unit: "A", symbol: "I_tab" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.11", grade: "copied" }],
  cellGrades: { memory: ["25 | F two loaded touching", "35 | F two loaded touching", "50 | F two loaded touching", "70 | F two loaded touching", "95 | F two loaded touching", "120 | F two loaded touching", "150 | F two loaded touching", "185 | F two loaded touching", "240 | F two loaded touching", "300 | F two loaded touching", "400 | F two loaded touching", "500 | F two loaded touching", "630 | F two loaded touching", "25 | F three loaded flat", "35 | F three loaded flat", "50 | F three loaded flat", "70 | F three loaded flat", "95 | F three loaded flat", "120 | F three loaded flat", "150 | F three loaded flat", "185 | F three loaded flat", "240 | F three loaded flat", "300 | F three loaded flat", "400 | F three loaded flat", "500 | F three loaded flat", "630 | F three loaded flat", "25 | G three loaded horizontal", "35 | G three loaded horizontal", "50 | G three loaded horizontal", "70 | G three loaded horizontal", "95 | G three loaded horizontal", "120 | G three loaded horizontal", "150 | G three loaded horizontal", "185 | G three loaded horizontal", "240 | G three loaded horizontal", "300 | G three loaded horizontal", "400 | G three loaded horizontal", "500 | G three loaded horizontal", "630 | G three loaded horizontal", "25 | G three loaded vertical", "35 | G three loaded vertical", "50 | G three loaded vertical", "70 | G three loaded vertical", "95 | G three loaded vertical", "120 | G three loaded vertical", "150 | G three loaded vertical", "185 | G three loaded vertical", "240 | G three loaded vertical", "300 | G three loaded vertical", "400 | G three loaded vertical", "500 | G three loaded vertical", "630 | G three loaded vertical"] },
  cells: `
    2.5  23   19.5  –    –    –    –    –
    4    31   26    –    –    –    –    –
    6    39   33    –    –    –    –    –
    10   54   46    –    –    –    –    –
    16   73   61    –    –    –    –    –
    25   89   78    98   84   87   112  99
    35   111  96    122  105  109  139  124
    50   135  117   149  128  133  169  152
    70   173  150   192  166  173  217  196
    95   210  183   235  203  212  265  241
    120  244  212   273  237  247  308  282
    150  282  245   316  274  287  356  327
    185  322  280   363  315  330  407  376
    240  380  330   430  375  392  482  447
    300  439  381   497  434  455  557  519
    400  –    –     600  526  552  671  629
    500  –    –     694  610  640  775  730
    630  –    –     808  711  746  900  852
  `,
});
