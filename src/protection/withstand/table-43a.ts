import { table } from "../../formula/index.js";

/**
 * Adiabatic factor of live conductors in a fault. @function
 *
 * @example
 * ```ts
 * import { iec60364_4_43_2008_43a } from "pv-to-grid/protection";
 * iec60364_4_43_2008_43a({ insulation: "PVC 70 °C, up to 300 mm²", material: "copper" }).text; // "115"
 * ```
 */
export const iec60364_4_43_2008_43a = /* @__PURE__ */ table({
  id: "protection/iec-60364-4-43-2008-43a",
  about: "adiabatic factor of live conductors in a fault",
  rows: { name: "insulation", names: "in the first column" },
  rowRule: "exact",
  columns: { material: ["copper", "aluminium"] },
  gives: { unit: "A·√s/mm²", symbol: "k" },
  source: [
    { in: "IEC 60364-4-43:2008", clause: "table 43A", grade: "memory" },
    { in: "BS 7671:2018", clause: "table 43.1", grade: "reproduced", seen: "NICEIC Pocket Guide 14:2018, page 25" },
  ],
  cellGrades: {
    memory: [
      "PVC 70 °C, up to 300 mm² | aluminium", "PVC 70 °C, above 300 mm² | aluminium",
      "PVC 90 °C, up to 300 mm² | aluminium", "PVC 90 °C, above 300 mm² | aluminium",
      "thermosetting 90 °C | aluminium", "rubber 60 °C | aluminium", "soldered joints | copper",
    ],
  },
  note: "up to 5 s; below 0.1 s the let-through of the device counts",
  cells: `
    PVC 70 °C, up to 300 mm²              115  76
    PVC 70 °C, above 300 mm²              103  68
    PVC 90 °C, up to 300 mm²              100  66
    PVC 90 °C, above 300 mm²              86   57
    thermosetting 90 °C                   143  94
    rubber 60 °C                          141  93
    mineral, covered or exposed to touch  115  –
    mineral, bare                         135  –
    soldered joints                       115  –
  `,
});
