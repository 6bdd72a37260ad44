import { table } from "../../../formula/index.js";

/**
 * Line-to-line voltage drop of copper cables, simplified.
 *
 * @function
 * @example
 * ```ts
 * import { eig_copper_drop } from "pv-to-grid/conductor";
 * eig_copper_drop({ section: "35 mm2", circuit: "three-phase", use: "motor in service" }).show(); // "1 mV/(A·m)"
 * ```
 */
export const eig_copper_drop = /* @__PURE__ */ table({
  id: "conductor/eig-copper-drop", about: "line-to-line voltage drop of copper cables, simplified",
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { circuit: ["single-phase", "three-phase"], use: ["motor in service", "motor starting", "lighting"] },
  gives: { unit: "mV/(A·m)", symbol: "v" },
  source: [{ in: "Electrical Installation Guide:undated", clause: "chapter G, figure G30", grade: "memory" }],
  note: "volts per ampere and kilometre; power factors 0.8, 0.35 and 1",
  cells: `
    1.5  25.4  11.2  32    22    9.7   27
    2.5  15.3  6.8   19    13.2  5.9   16
    4    9.6   4.3   11.9  8.3   3.7   10.3
    6    6.4   2.9   7.9   5.6   2.5   6.8
    10   3.9   1.8   4.7   3.4   1.6   4.1
    16   2.5   1.2   3     2.1   1     2.6
    25   1.6   0.81  1.9   1.4   0.7   1.6
    35   1.18  0.62  1.35  1     0.54  1.2
    50   0.89  0.5   1     0.77  0.43  0.86
    70   0.64  0.39  0.68  0.55  0.34  0.59
    95   0.5   0.32  0.5   0.43  0.28  0.43
    120  0.41  0.29  0.4   0.36  0.25  0.34
    150  0.35  0.26  0.32  0.3   0.22  0.27
    185  0.3   0.24  0.26  0.26  0.21  0.22
    240  0.25  0.22  0.2   0.22  0.19  0.17
    300  0.22  0.21  0.16  0.19  0.18  0.14
  `,
});
