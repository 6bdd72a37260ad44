import { table } from "../../../formula/index.js";

/**
 * Factor for a group of multi-core cables in free air.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_20 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_20({ circuits: 3, support: "perforated", arrangement: "touching", trays: "1" }).text; // "0.82"
 * ```
 */
export const iec60364_5_52_2009_b_52_20 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-20", about: "factor for a group of multi-core cables in free air",
  rows: { name: "circuits", unit: "1", symbol: "n" }, rowRule: "next above",
  columns: { support: ["perforated", "vertical perforated", "unperforated", "ladder"], arrangement: ["touching", "spaced"], trays: ["1", "2", "3", "6"] },
  gives: { unit: "1", symbol: "k_g" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.20", grade: "copied" }],
  differences: [
    { cell: "6 | perforated | spaced | 3", ships: "0.85", others: "0.86", why: "one of two transcriptions prints 0.86" },
  ],
  note: "single layers; trays at least 300 mm apart, back to back 225 mm",
  cells: `
    1  1     1     1     1     1     1     1     –  1     1     –  –  1     1     –  –  0.97  0.97  0.97  0.97  –  –  –  –  1     1     1     1     1  1     1     –
    2  0.88  0.87  0.86  0.84  1     0.99  0.98  –  0.88  0.88  –  –  0.91  0.91  –  –  0.84  0.83  0.82  0.81  –  –  –  –  0.87  0.86  0.85  0.84  1  0.99  0.98  –
    3  0.82  0.8   0.79  0.77  0.98  0.96  0.95  –  0.82  0.81  –  –  0.89  0.88  –  –  0.78  0.76  0.75  0.73  –  –  –  –  0.82  0.8   0.79  0.77  1  0.98  0.97  –
    4  0.79  0.77  0.76  0.73  0.95  0.92  0.91  –  0.78  0.76  –  –  0.88  0.87  –  –  0.75  0.72  0.71  0.69  –  –  –  –  0.8   0.78  0.76  0.73  1  0.97  0.96  –
    6  0.76  0.73  0.71  0.68  0.91  0.87  0.85  –  0.73  0.71  –  –  0.87  0.85  –  –  0.71  0.68  0.66  0.63  –  –  –  –  0.79  0.76  0.73  0.68  1  0.96  0.93  –
    9  0.73  0.68  0.66  0.64  –     –     –     –  0.72  0.7   –  –  –     –     –  –  0.68  0.63  0.61  0.58  –  –  –  –  0.78  0.73  0.7   0.64  –  –     –     –
  `,
});
