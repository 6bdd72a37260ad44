import { table } from "../../formula/index.js";

/**
 * Rise of the cells over the back of the module at standard irradiance, by construction and mounting.
 *
 * @function
 * @example
 * ```ts
 * import { sandiaCellRise } from "pv-to-grid/module";
 * sandiaCellRise({ construction: "glass/cell/glass", mounting: "close roof mount" }).text; // "1"
 * ```
 */
export const sandiaCellRise = /* @__PURE__ */ table({
  id: "module/sandia-cell-rise",
  about: "rise of the cells over the back of the module at standard irradiance, by construction and mounting",
  base: { irradiance: "1000 W/m²" },
  rows: { name: "construction", names: "in the first column" },
  rowRule: "exact",
  columns: { mounting: ["open rack", "close roof mount", "insulated back", "tracker"] },
  gives: { unit: "K", symbol: "ΔT" },
  source: [{ in: "King:2004", clause: "table 1", grade: "memory" }],
  cells: `
    glass/cell/glass          3  1  –  –
    glass/cell/polymer sheet  3  –  0  –
    polymer/thin-film/steel   3  –  –  –
    22x linear concentrator   –  –  –  13
  `,
});
