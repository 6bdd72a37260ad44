import { table } from "../../formula/index.js";

/**
 * Adiabatic factor of insulated protective conductors outside cables and not bunched. @function
 *
 * @example
 * ```ts
 * import { iec60364_5_54_2011_a_54_2 } from "pv-to-grid/earthing";
 * iec60364_5_54_2011_a_54_2({ insulation: "thermosetting 90 °C", material: "copper" }).text; // "176"
 * ```
 */
export const iec60364_5_54_2011_a_54_2 = /* @__PURE__ */ table({
  id: "earthing/iec-60364-5-54-2011-a-54-2",
  about: "adiabatic factor of insulated protective conductors outside cables and not bunched",
  rows: { name: "insulation", names: "in the first column" },
  rowRule: "exact",
  columns: { material: ["copper", "aluminium", "steel"] },
  gives: { unit: "A·√s/mm²", symbol: "k" },
  source: [
    { in: "IEC 60364-5-54:2011", clause: "table A.54.2", grade: "memory" },
    { in: "BS 7671:2018", clause: "table 54.2", grade: "reproduced", seen: "NICEIC Pocket Guide 14:2018, page 25" },
  ],
  cellGrades: {
    memory: [
      "PVC 70 °C, above 300 mm² | steel", "PVC 90 °C, above 300 mm² | steel", "rubber 60 °C", "rubber 85 °C",
      "silicone rubber",
    ],
  },
  note: "table 54.2 of BS 7671 prints the same values",
  cells: `
    PVC 70 °C, up to 300 mm²  143  95   52
    PVC 70 °C, above 300 mm²  133  88   49
    PVC 90 °C, up to 300 mm²  143  95   52
    PVC 90 °C, above 300 mm²  133  88   49
    thermosetting 90 °C       176  116  64
    rubber 60 °C              159  105  58
    rubber 85 °C              166  110  60
    silicone rubber           201  133  73
  `,
});
