import { table } from "../../../formula/index.js";

/**
 * Current-carrying capacity of copper cables in ducts in the ground, method D of 2001.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2001_method_d } from "pv-to-grid/conductor";
 * iec60364_5_52_2001_method_d({ section: "25 mm2", insulation: "PVC", loaded: "two" }).show(); // "104 A"
 * ```
 */
export const iec60364_5_52_2001_method_d = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2001-method-d", about: "current-carrying capacity of copper cables in ducts in the ground, method D of 2001",
  base: { ground: "20 °C", soilResistivity: "2.5 K·m/W" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { insulation: ["PVC", "XLPE"], loaded: ["two", "three"] },
  gives: { unit: "A", symbol: "I_tab" },
  source: [{ in: "IEC 60364-5-52:2001", clause: "tables 52-C1 to 52-C4, column D", grade: "reproduced", seen: "Electrical Installation Guide:undated, chapter G, figure G22" }],
  cellGrades: { memory: ["240 | XLPE | three", "300 | XLPE | three", "185 | XLPE | three"], copied: ["240 | PVC | two", "240 | PVC | three", "240 | XLPE | two", "300 | PVC | two", "300 | PVC | three", "300 | XLPE | two"] },
  note: "superseded in 2009 by D1 and D2, to which it is up to 7 % higher; for reading old designs only",
  cells: `
    1.5  22   18   26   22
    2.5  29   24   34   29
    4    38   31   44   37
    6    47   39   56   46
    10   63   52   73   61
    16   81   67   95   79
    25   104  86   121  101
    35   125  103  146  122
    50   148  122  173  144
    70   183  151  213  178
    95   216  179  252  211
    120  246  203  287  240
    150  278  230  324  271
    185  312  258  363  304
    240  361  297  419  351
    300  408  336  474  396
  `,
});
