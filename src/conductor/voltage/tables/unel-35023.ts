import { table } from "../../../formula/index.js";

/**
 * Voltage drop of single-core copper cables at 80 °C.
 *
 * @function
 * @example
 * ```ts
 * import { unel35023_1970_single_core } from "pv-to-grid/conductor";
 * unel35023_1970_single_core({ section: "16 mm2", circuit: "three-phase", powerFactor: "0.9" }).show(); // "2.28 mV/(A·m)"
 * ```
 */
export const unel35023_1970_single_core = /* @__PURE__ */ table({
  id: "conductor/unel-35023-1970-single-core", about: "voltage drop of single-core copper cables at 80 °C",
  base: { conductorTemperature: "80 °C", frequency: "50 Hz" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { circuit: ["d.c.", "single-phase", "three-phase"], powerFactor: ["1", "0.9", "0.8"] },
  gives: { unit: "mV/(A·m)", symbol: "v" },
  source: [{ in: "CEI-UNEL 35023:1970", clause: "single-core cables", grade: "reproduced", seen: "PLC Forum voltage drop page:undated, table" }],
  differences: [
    { cell: "500 | d.c. | 1", ships: "–", others: "0.0192", why: "misprint of the copy: its neighbours are 0.115 and 0.0707" },
  ],
  note: "resistances up to 3 % below the limits of IEC 60228",
  cells: `
    1    44.2    –  –  44.2    39.9   35.6   38.3    34.6   30.8
    1.5  29.7    –  –  29.7    26.8   23.9   25.7    23.2   20.7
    2.5  17.8    –  –  17.8    16.2   14.4   15.4    14     12.5
    4    11.1    –  –  11.1    10.2   9.08   9.65    8.8    7.87
    6    7.41    –  –  7.41    6.8    6.1    6.42    5.89   5.28
    10   4.47    –  –  4.47    4.14   3.72   3.87    3.58   3.22
    16   2.82    –  –  2.82    2.64   2.39   2.44    2.28   2.07
    25   1.78    –  –  1.78    1.69   1.55   1.54    1.47   1.34
    35   1.28    –  –  1.28    1.24   1.15   1.11    1.08   0.993
    50   0.947   –  –  0.947   0.939  0.878  0.82    0.814  0.76
    70   0.655   –  –  0.656   0.674  0.641  0.568   0.584  0.555
    95   0.472   –  –  0.473   0.509  0.494  0.41    0.441  0.428
    120  0.373   –  –  0.375   0.42   0.413  0.325   0.364  0.358
    150  0.304   –  –  0.306   0.356  0.356  0.265   0.308  0.308
    185  0.243   –  –  0.246   0.301  0.306  0.213   0.26   0.265
    240  0.185   –  –  0.189   0.248  0.259  0.163   0.215  0.224
    300  0.147   –  –  0.152   0.215  0.229  0.132   0.186  0.198
    400  0.115   –  –  0.121   0.186  0.202  0.105   0.161  0.175
    500  –       –  –  0.0992  0.165  0.183  0.0859  0.143  0.159
    630  0.0707  –  –  0.0805  0.148  0.168  0.0697  0.128  0.146
  `,
});
