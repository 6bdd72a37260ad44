import { table } from "../../formula/index.js";

/**
 * Smallest and largest grounding electrode conductor of a direct current system. @function
 *
 * @example
 * ```ts
 * import { nfpa70_2020_250_166 } from "pv-to-grid/earthing";
 * nfpa70_2020_250_166({ bound: "not smaller than", material: "copper" }).name; // "8 AWG"
 * ```
 */
export const nfpa70_2020_250_166 = /* @__PURE__ */ table({
  id: "earthing/nfpa-70-2020-250-166",
  about: "smallest and largest grounding electrode conductor of a direct current system",
  rows: { name: "bound", names: "in the first column" },
  rowRule: "exact",
  columns: { material: ["copper", "aluminium"] },
  gives: { names: "conductor size", symbol: "GEC" },
  source: [{ in: "NFPA 70:2020", clause: "250.166", grade: "copied" }],
  cells: `
    not smaller than          8 AWG    6 AWG
    not required larger than  3/0 AWG  250 kcmil
  `,
});
