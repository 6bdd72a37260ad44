import { table } from "../../formula/index.js";

/**
 * Smallest cross-section of a conductor in a fixed installation.
 *
 * @function
 * @example
 * ```ts
 * import { minimumSections } from "pv-to-grid/conductor";
 * minimumSections({ conductor: "copper", use: "power" }).show(); // "1.5 mm²"
 * ```
 */
export const minimumSections = /* @__PURE__ */ table({
  id: "conductor/minimum-sections", about: "smallest cross-section of a conductor in a fixed installation",
  rows: { name: "conductor", names: "in the first column" }, rowRule: "exact",
  columns: { use: ["power", "signalling"] },
  gives: { unit: "mm²", symbol: "S_min" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "table 52.2", grade: "copied" }],
  cellGrades: { memory: ["aluminium"] },
  differences: [{ cell: "aluminium | power", ships: "16", others: "10 (2009 edition, memory), 2.5 (2001 edition)", why: "a text that was read gives 16 mm², with a remark that 10 mm² aligns with IEC 60228; the larger is the safer" }],
  cells: `
    copper     1.5  0.5
    aluminium  16   –
  `,
});
