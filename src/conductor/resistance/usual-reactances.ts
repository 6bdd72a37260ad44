import { table } from "../../formula/index.js";

/**
 * Reactance per length at 50 Hz where a cable's own is not known.
 *
 * @function
 * @example
 * ```ts
 * import { usualReactances } from "pv-to-grid/conductor";
 * usualReactances({ formation: "multi-core" }).show(); // "0.08 Ω/km"
 * ```
 */
export const usualReactances = /* @__PURE__ */ table({
  id: "conductor/usual-reactances", about: "reactance per length at 50 Hz where a cable's own is not known",
  rows: { name: "formation", names: "in the first column" }, rowRule: "exact",
  gives: { unit: "Ω/km", symbol: "X_50" },
  source: [{ in: "Electrical Installation Guide:undated", clause: "chapter G, figure G29", grade: "original" }],
  cellGrades: { memory: ["trefoil", "flat touching", "spaced"] },
  cells: `
    multi-core     0.08
    trefoil        0.08
    flat touching  0.09
    spaced         0.13
  `,
});
