import { table } from "../../formula/index.js";

/**
 * Smallest buried earthing conductor. @function
 *
 * @example
 * ```ts
 * import { iec60364_5_54_2002_buried_minimum } from "pv-to-grid/earthing";
 * iec60364_5_54_2002_buried_minimum({ protection: "neither", material: "copper" }).text; // "25"
 * ```
 */
export const iec60364_5_54_2002_buried_minimum = /* @__PURE__ */ table({
  id: "earthing/iec-60364-5-54-2002-buried-minimum",
  about: "smallest buried earthing conductor",
  rows: { name: "protection", names: "in the first column" },
  rowRule: "exact",
  columns: { material: ["copper", "steel"] },
  gives: { unit: "mm²", symbol: "S_min" },
  source: [
    { in: "IEC 60364-5-54:2002", clause: "table 54.2 (then 54.1)", grade: "reproduced", seen: "Eland bonding page:undated, tables" },
  ],
  cellGrades: {
    memory: ["corrosion and mechanical damage | steel"],
  },
  note: "the edition of 2011 asks for 6 mm² of copper or 50 mm² of steel at least, which is checked beside it",
  cells: `
    corrosion and mechanical damage  2.5  10
    corrosion only                   16   16
    neither                          25   50
  `,
});

/**
 * Smallest earthing conductor whatever the line conductor. @function
 *
 * @example
 * ```ts
 * import { iec60364_5_54_2011_earthing_minimum } from "pv-to-grid/earthing";
 * iec60364_5_54_2011_earthing_minimum({ lightningProtection: "present", material: "copper" }).text; // "16"
 * ```
 */
export const iec60364_5_54_2011_earthing_minimum = /* @__PURE__ */ table({
  id: "earthing/iec-60364-5-54-2011-earthing-minimum",
  about: "smallest earthing conductor whatever the line conductor",
  rows: { name: "lightningProtection", names: "in the first column" },
  rowRule: "exact",
  columns: { material: ["copper", "steel"] },
  gives: { unit: "mm²", symbol: "S_min" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "542.3.1", grade: "memory" }],
  cells: `
    none     6   50
    present  16  50
  `,
});
