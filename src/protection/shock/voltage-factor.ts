import { table } from "../../formula/index.js";

/**
 * Lowest voltage during a fault over the nominal one, by the wiring rules. @function
 *
 * @example
 * ```ts
 * import { lowestVoltageFactors } from "pv-to-grid/protection";
 * lowestVoltageFactors({ rule: "BS 7671:2018" }).text; // "0.95"
 * ```
 */
export const lowestVoltageFactors = /* @__PURE__ */ table({
  id: "protection/lowest-voltage-factors",
  about: "lowest voltage during a fault over the nominal one, by the wiring rules",
  rows: { name: "rule", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "1", symbol: "C_min" },
  source: [{ in: "BS 7671:2018", clause: "411.4.4, appendix 14", grade: "memory" }],
  cellGrades: {
    "common-practice": ["rules that are silent", "stricter option"],
  },
  note: "never together with the 0.8 of the conventional method",
  cells: `
    BS 7671:2018           0.95
    rules that are silent  0.95
    stricter option        0.90
  `,
});
