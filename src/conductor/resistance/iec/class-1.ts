import { table } from "../../../formula/index.js";

/**
 * Highest d.c. resistance at 20 °C of solid conductors.
 *
 * @function
 * @example
 * ```ts
 * import { iec60228_2004_class1 } from "pv-to-grid/conductor";
 * iec60228_2004_class1({ section: "4 mm2", metal: "plain copper" }).show(); // "4.61 Ω/km"
 * ```
 */
export const iec60228_2004_class1 = /* @__PURE__ */ table({
  id: "conductor/iec-60228-2004-class-1", about: "highest d.c. resistance at 20 °C of solid conductors",
  base: { conductorTemperature: "20 °C" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { metal: ["plain copper", "coated copper", "aluminium"] },
  gives: { unit: "Ω/km", symbol: "R_20" },
  source: [{ in: "IEC 60228:2004", clause: "table 1", grade: "reproduced", seen: "Kabelmetal conductor tables:2011, table 1" }],
  cells: `
    0.5   36      36.7  –
    0.75  24.5    24.8  –
    1     18.1    18.2  –
    1.5   12.1    12.2  –
    2.5   7.41    7.56  –
    4     4.61    4.7   –
    6     3.08    3.11  –
    10    1.83    1.84  3.08
    16    1.15    1.16  1.91
    25    0.727   –     1.2
    35    0.524   –     0.868
    50    0.387   –     0.641
    70    0.268   –     0.443
    95    0.193   –     0.32
    120   0.153   –     0.253
    150   0.124   –     0.206
    185   0.101   –     0.164
    240   0.0775  –     0.125
    300   0.062   –     0.1
    400   0.0465  –     0.0778
    500   –       –     0.0605
    630   –       –     0.0469
    800   –       –     0.0367
    1000  –       –     0.0291
    1200  –       –     0.0247
  `,
});
