import { table } from "../../../formula/index.js";

/**
 * Highest d.c. resistance at 20 °C of stranded conductors.
 *
 * @function
 * @example
 * ```ts
 * import { iec60228_2004_class2 } from "pv-to-grid/conductor";
 * iec60228_2004_class2({ section: "4 mm2", metal: "plain copper" }).show(); // "4.61 Ω/km"
 * ```
 */
export const iec60228_2004_class2 = /* @__PURE__ */ table({
  id: "conductor/iec-60228-2004-class-2", about: "highest d.c. resistance at 20 °C of stranded conductors",
  base: { conductorTemperature: "20 °C" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { metal: ["plain copper", "coated copper", "aluminium"] },
  gives: { unit: "Ω/km", symbol: "R_20" },
  source: [{ in: "IEC 60228:2004", clause: "table 2", grade: "reproduced", seen: "Kabelmetal conductor tables:2011, table 2" }],
  cellGrades: { memory: ["800 | coated copper", "1000 | coated copper", "1200 | coated copper", "240 | aluminium", "300 | aluminium", "400 | aluminium", "500 | aluminium", "630 | aluminium", "800 | aluminium", "1000 | aluminium", "1200 | aluminium"] },
  cells: `
    0.5   36      36.7    –
    0.75  24.5    24.8    –
    1     18.1    18.2    –
    1.5   12.1    12.2    –
    2.5   7.41    7.56    –
    4     4.61    4.7     –
    6     3.08    3.11    –
    10    1.83    1.84    3.08
    16    1.15    1.16    1.91
    25    0.727   0.734   1.2
    35    0.524   0.529   0.868
    50    0.387   0.391   0.641
    70    0.268   0.27    0.443
    95    0.193   0.195   0.32
    120   0.153   0.154   0.253
    150   0.124   0.126   0.206
    185   0.0991  0.1     0.164
    240   0.0754  0.0762  0.125
    300   0.0601  0.0607  0.1
    400   0.047   0.0475  0.0778
    500   0.0366  0.0369  0.0605
    630   0.0283  0.0286  0.0469
    800   0.0221  0.0224  0.0367
    1000  0.0176  0.0177  0.0291
    1200  0.0151  0.0151  0.0247
  `,
});
