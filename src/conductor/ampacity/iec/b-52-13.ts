import { table } from "../../../formula/index.js";

/**
 * Current-carrying capacity in free air, XLPE or EPR (90 °C), aluminium.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_13 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_13({ section: "35 mm2", arrangement: "E three loaded" }).show(); // "120 A"
 * ```
 */
export const iec60364_5_52_2009_b_52_13 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-13", about: "current-carrying capacity in free air, XLPE or EPR (90 °C), aluminium",
  base: { air: "30 °C", conductorTemperature: "90 °C" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { arrangement: ["E two loaded", "E three loaded", "F two loaded touching", "F three loaded trefoil", "F three loaded flat", "G three loaded horizontal", "G three loaded vertical"] },
  gives: { unit: "A", symbol: "I_tab" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.13", grade: "copied" }],
  cellGrades: { memory: ["300 | F two loaded touching", "400 | F two loaded touching", "500 | F two loaded touching", "630 | F two loaded touching", "25 | F three loaded flat", "35 | F three loaded flat", "50 | F three loaded flat", "70 | F three loaded flat", "95 | F three loaded flat", "120 | F three loaded flat", "150 | F three loaded flat", "185 | F three loaded flat", "240 | F three loaded flat", "300 | F three loaded flat", "400 | F three loaded flat", "500 | F three loaded flat", "630 | F three loaded flat", "25 | G three loaded horizontal", "35 | G three loaded horizontal", "50 | G three loaded horizontal", "70 | G three loaded horizontal", "95 | G three loaded horizontal", "120 | G three loaded horizontal", "150 | G three loaded horizontal", "185 | G three loaded horizontal", "240 | G three loaded horizontal", "300 | G three loaded horizontal", "400 | G three loaded horizontal", "500 | G three loaded horizontal", "630 | G three loaded horizontal", "25 | G three loaded vertical", "35 | G three loaded vertical", "50 | G three loaded vertical", "70 | G three loaded vertical", "95 | G three loaded vertical", "120 | G three loaded vertical", "150 | G three loaded vertical", "185 | G three loaded vertical", "240 | G three loaded vertical", "300 | G three loaded vertical", "400 | G three loaded vertical", "500 | G three loaded vertical", "630 | G three loaded vertical"] },
  cells: `
    2.5  28   24   –    –    –    –     –
    4    38   32   –    –    –    –     –
    6    49   42   –    –    –    –     –
    10   67   58   –    –    –    –     –
    16   91   77   –    –    –    –     –
    25   108  97   121  103  107  138   122
    35   135  120  150  129  135  172   153
    50   164  146  184  159  165  210   188
    70   211  187  237  206  215  271   244
    95   257  227  289  253  264  332   300
    120  300  263  337  296  308  387   351
    150  346  304  389  343  358  448   408
    185  397  347  447  395  413  515   470
    240  470  409  530  471  492  611   561
    300  543  471  613  547  571  708   652
    400  –    –    740  663  694  856   792
    500  –    –    856  770  806  991   921
    630  –    –    996  899  942  1154  1077
  `,
});
