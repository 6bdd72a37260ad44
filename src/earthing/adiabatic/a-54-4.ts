import { table } from "../../formula/index.js";

/**
 * Adiabatic factor of protective conductors as a core of a cable or bunched with other cables. @function
 *
 * @example
 * ```ts
 * import { iec60364_5_54_2011_a_54_4 } from "pv-to-grid/earthing";
 * iec60364_5_54_2011_a_54_4({ insulation: "PVC 70 °C, up to 300 mm²", material: "copper" }).text; // "115"
 * ```
 */
export const iec60364_5_54_2011_a_54_4 = /* @__PURE__ */ table({
  id: "earthing/iec-60364-5-54-2011-a-54-4",
  about: "adiabatic factor of protective conductors as a core of a cable or bunched with other cables",
  rows: { name: "insulation", names: "in the first column" },
  rowRule: "exact",
  columns: { material: ["copper", "aluminium", "steel"] },
  gives: { unit: "A·√s/mm²", symbol: "k" },
  source: [
    { in: "IEC 60364-5-54:2011", clause: "table A.54.4", grade: "memory" },
    { in: "BS 7671:2018", clause: "table 54.3", grade: "reproduced", seen: "NICEIC Pocket Guide 14:2018, page 25" },
  ],
  cellGrades: {
    memory: [
      "PVC 70 °C, up to 300 mm² | aluminium", "PVC 70 °C, up to 300 mm² | steel",
      "PVC 70 °C, above 300 mm² | aluminium", "PVC 70 °C, above 300 mm² | steel",
      "PVC 90 °C, up to 300 mm² | aluminium", "PVC 90 °C, up to 300 mm² | steel",
      "PVC 90 °C, above 300 mm² | aluminium", "PVC 90 °C, above 300 mm² | steel",
      "thermosetting 90 °C | aluminium", "thermosetting 90 °C | steel", "rubber 60 °C", "rubber 85 °C",
      "silicone rubber",
    ],
  },
  note: "table 54.3 of BS 7671 prints the same values",
  cells: `
    PVC 70 °C, up to 300 mm²  115  76  42
    PVC 70 °C, above 300 mm²  103  68  37
    PVC 90 °C, up to 300 mm²  100  66  36
    PVC 90 °C, above 300 mm²  86   57  31
    thermosetting 90 °C       143  94  52
    rubber 60 °C              141  93  51
    rubber 85 °C              134  89  48
    silicone rubber           132  87  47
  `,
});
