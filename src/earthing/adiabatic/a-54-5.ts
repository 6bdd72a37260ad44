import { table } from "../../formula/index.js";

/**
 * Adiabatic factor of a metallic layer of a cable used as protective conductor. @function
 *
 * @example
 * ```ts
 * import { iec60364_5_54_2011_a_54_5 } from "pv-to-grid/earthing";
 * iec60364_5_54_2011_a_54_5({ insulation: "PVC 70 °C", material: "steel" }).text; // "51"
 * ```
 */
export const iec60364_5_54_2011_a_54_5 = /* @__PURE__ */ table({
  id: "earthing/iec-60364-5-54-2011-a-54-5",
  about: "adiabatic factor of a metallic layer of a cable used as protective conductor",
  rows: { name: "insulation", names: "in the first column" },
  rowRule: "exact",
  columns: { material: ["copper", "aluminium", "lead", "steel"] },
  gives: { unit: "A·√s/mm²", symbol: "k" },
  source: [
    { in: "IEC 60364-5-54:2011", clause: "table A.54.5", grade: "memory" },
    { in: "BS 7671:2018", clause: "table 54.4", grade: "reproduced", seen: "NICEIC Pocket Guide 14:2018, page 25" },
  ],
  cellGrades: {
    memory: [
      "PVC 70 °C | copper", "PVC 90 °C | copper", "thermosetting 90 °C | copper", "rubber 60 °C", "rubber 85 °C",
      "mineral, covered", "mineral, bare",
    ],
  },
  note: "table 54.4 of BS 7671 prints the same values",
  cells: `
    PVC 70 °C            141  93  26  51
    PVC 90 °C            128  85  23  46
    thermosetting 90 °C  128  85  23  46
    rubber 60 °C         144  95  26  52
    rubber 85 °C         140  93  26  51
    mineral, covered     135  –   –   –
    mineral, bare        135  –   –   –
  `,
});
