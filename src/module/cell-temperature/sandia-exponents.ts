import { table } from "../../formula/index.js";

/**
 * Exponents of the Sandia module temperature model, by construction and mounting.
 *
 * @function
 * @example
 * ```ts
 * import { sandiaExponents } from "pv-to-grid/module";
 * sandiaExponents({ construction: "glass/cell/glass", mounting: "close roof mount", exponent: "a" }).text; // "-2.98"
 * ```
 */
export const sandiaExponents = /* @__PURE__ */ table({
  id: "module/sandia-exponents",
  about: "exponents of the Sandia module temperature model, by construction and mounting",
  rows: { name: "construction", names: "in the first column" },
  rowRule: "exact",
  columns: { mounting: ["open rack", "close roof mount", "insulated back", "tracker"], exponent: ["a", "b"] },
  gives: { unit: "1", symbol: "a, b" },
  source: [
    { in: "PVPMC temperature models:undated", clause: "Sandia module temperature model, table", grade: "original" },
    { in: "King:2004", clause: "table 1", grade: "memory" },
  ],
  cells: `
    glass/cell/glass          -3.47  -0.0594  -2.98  -0.0471  –      –        –      –
    glass/cell/polymer sheet  -3.56  -0.075   –      –        -2.81  -0.0455  –      –
    polymer/thin-film/steel   -3.58  -0.113   –      –        –      –        –      –
    22x linear concentrator   –      –        –      –        –      –        -3.23  -0.13
  `,
});
