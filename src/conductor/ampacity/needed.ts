import { formula } from "../../formula/index.js";

/**
 * Tabulated capacity that a current needs under factors.
 *
 * @function
 * @example
 * ```ts
 * import { tabulatedAmpacityNeeded } from "pv-to-grid/conductor";
 * tabulatedAmpacityNeeded({ current: "25 A", factors: ["0.48"] }).show(); // "52.08 A"
 * ```
 */
export const tabulatedAmpacityNeeded = /* @__PURE__ */ formula({
  id: "conductor/tabulated-ampacity-needed", about: "tabulated capacity that a current needs under factors",
  takes: {
    current: { unit: "A", symbol: "I", about: "current to be carried", from: 0, usual: [0, 5000] },
    factors: { each: "1", symbol: "k_i", about: "factors for ambient, group and soil", above: 0, to: 2 },
  },
  gives: { unit: "A", symbol: "I_tab,min" },
  expression: "current / prod(factors)",
  source: [{ in: "TELT course sheet:2012", clause: "section V", grade: "original" }],
});
