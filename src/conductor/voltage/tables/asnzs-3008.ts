import { formula, table } from "../../../formula/index.js";

/**
 * Three-phase voltage drop of multi-core copper cables at 75 °C.
 *
 * @function
 * @example
 * ```ts
 * import { asnzs3008_2017_42 } from "pv-to-grid/conductor";
 * asnzs3008_2017_42({ section: "4 mm2" }).show(); // "9.71 mV/(A·m)"
 * ```
 */
export const asnzs3008_2017_42 = /* @__PURE__ */ table({
  id: "conductor/asnzs-3008-2017-42", about: "three-phase voltage drop of multi-core copper cables at 75 °C",
  base: { conductorTemperature: "75 °C" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  gives: { unit: "mV/(A·m)", symbol: "V_c" },
  source: [{ in: "AS/NZS 3008.1.1:2017", clause: "table 42", grade: "memory" }],
  differences: [
    { cell: "25", ships: "1.53", others: "1.545", why: "back-computed from AS/NZS 3000, table C7" },
    { cell: "35", ships: "1.11", others: "1.123", why: "back-computed from AS/NZS 3000, table C7" },
  ],
  note: "1 and 1.5 mm² stand for conductors of 21.2 and 13.6 Ω/km, above IEC 60228; two conductors drop 2/√3 times as much",
  cells: `
    1    44.7
    1.5  28.6
    2.5  15.6
    4    9.71
    6    6.49
    10   3.86
    16   2.43
    25   1.53
    35   1.11
    50   0.822
    70   0.577
    95   0.426
    120  0.346
    150  0.291
    185  0.244
    240  0.202
    300  0.178
  `,
});

/**
 * Single-phase voltage drop from the three-phase one of a table.
 *
 * @function
 * @example
 * ```ts
 * import { asnzs3008_2017_singlePhase } from "pv-to-grid/conductor";
 * asnzs3008_2017_singlePhase({ tabulatedDrop: "15.6 mV/A/m" }).show(); // "18.01 mV/(A·m)"
 * ```
 */
export const asnzs3008_2017_singlePhase = /* @__PURE__ */ formula({
  id: "conductor/asnzs-3008-2017-single-phase", about: "single-phase voltage drop from the three-phase one of a table",
  takes: {
    tabulatedDrop: { unit: "mV/(A·m)", symbol: "V_c", about: "tabulated three-phase change", above: 0, usual: [0.01, 200] },
  },
  gives: { unit: "mV/(A·m)", symbol: "v" },
  expression: "tabulatedDrop * 2 / sqrt(3)",
  source: [
    { in: "AS/NZS 3008.1.1:2017", clause: "4.4", grade: "memory" },
    { in: "common practice", clause: "two conductors against √3 of one", grade: "common-practice" },
  ],
  unproven: { because: "no publication found", sought: "worked single-phase drops from three-phase tables" },
});
