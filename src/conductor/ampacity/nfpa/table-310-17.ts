import { table } from "../../../formula/index.js";

/**
 * Ampacity of a single insulated conductor in free air.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2023_310_17 } from "pv-to-grid/conductor";
 * nfpa70_2023_310_17({ conductorSize: "10 AWG", conductor: "copper", rating: "75 °C" }).show(); // "50 A"
 * ```
 */
export const nfpa70_2023_310_17 = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2023-310-17", about: "ampacity of a single insulated conductor in free air",
  base: { air: "30 °C" },
  rows: { name: "conductorSize", names: "in the first column" }, rowRule: "exact",
  columns: { conductor: ["copper", "aluminium"], rating: ["60 °C", "75 °C", "90 °C"] },
  gives: { unit: "A", symbol: "I_tab" },
  source: [
    { in: "NFPA 70:2023", clause: "table 310.17", grade: "copied" },
    { in: "NFPA 70:2020", clause: "table 310.17", grade: "copied" },
    { in: "NFPA 70:2017", clause: "table 310.15(B)(17)", grade: "copied" },
  ],
  differences: [
    { cell: "18 AWG | copper | 90 °C", ships: "14", others: "18", why: "the Mexican standard built on the edition of 2011 prints 14 A; the smaller is the safer" },
    { cell: "16 AWG | copper | 90 °C", ships: "18", others: "24", why: "the Mexican standard built on the edition of 2011 prints 18 A; the smaller is the safer" },
  ],
  note: "aluminium columns hold for copper-clad aluminium too; the table has not changed from 2011 to 2023",
  cells: `
    18 AWG      –     –     14    –    –     –
    16 AWG      –     –     18    –    –     –
    14 AWG      25    30    35    –    –     –
    12 AWG      30    35    40    25   30    35
    10 AWG      40    50    55    35   40    45
    8 AWG       60    70    80    45   55    60
    6 AWG       80    95    105   60   75    85
    4 AWG       105   125   140   80   100   115
    3 AWG       120   145   165   95   115   130
    2 AWG       140   170   190   110  135   150
    1 AWG       165   195   220   130  155   175
    1/0 AWG     195   230   260   150  180   205
    2/0 AWG     225   265   300   175  210   235
    3/0 AWG     260   310   350   200  240   270
    4/0 AWG     300   360   405   235  280   315
    250 kcmil   340   405   455   265  315   355
    300 kcmil   375   445   500   290  350   395
    350 kcmil   420   505   570   330  395   445
    400 kcmil   455   545   615   355  425   480
    500 kcmil   515   620   700   405  485   545
    600 kcmil   575   690   780   455  545   615
    700 kcmil   630   755   850   500  595   670
    750 kcmil   655   785   885   515  620   700
    800 kcmil   680   815   920   535  645   725
    900 kcmil   730   870   980   580  700   790
    1000 kcmil  780   935   1055  625  750   845
    1250 kcmil  890   1065  1200  710  855   965
    1500 kcmil  980   1175  1325  795  950   1070
    1750 kcmil  1070  1280  1445  875  1050  1185
    2000 kcmil  1155  1385  1560  960  1150  1295
  `,
});
