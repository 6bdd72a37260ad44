import { table } from "../../../formula/index.js";

/**
 * Highest d.c. resistance at 20 °C of flexible conductors.
 *
 * @function
 * @example
 * ```ts
 * import { iec60228_2004_class5 } from "pv-to-grid/conductor";
 * iec60228_2004_class5({ section: "4 mm2", metal: "plain copper" }).show(); // "4.95 Ω/km"
 * ```
 */
export const iec60228_2004_class5 = /* @__PURE__ */ table({
  id: "conductor/iec-60228-2004-class-5", about: "highest d.c. resistance at 20 °C of flexible conductors",
  base: { conductorTemperature: "20 °C" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { metal: ["plain copper", "coated copper"] },
  gives: { unit: "Ω/km", symbol: "R_20" },
  source: [{ in: "IEC 60228:2004", clause: "table 3", grade: "reproduced", seen: "uecables conductor page:undated, class 5" }],
  cellGrades: { memory: ["0.5", "0.75"] },
  cells: `
    0.5   39      40.1
    0.75  26      26.7
    1     19.5    20
    1.5   13.3    13.7
    2.5   7.98    8.21
    4     4.95    5.09
    6     3.3     3.39
    10    1.91    1.95
    16    1.21    1.24
    25    0.78    0.795
    35    0.554   0.565
    50    0.386   0.393
    70    0.272   0.277
    95    0.206   0.21
    120   0.161   0.164
    150   0.129   0.132
    185   0.106   0.108
    240   0.0801  0.0817
    300   0.0641  0.0654
    400   0.0486  0.0495
    500   0.0384  0.0391
    630   0.0287  0.0292
  `,
});
