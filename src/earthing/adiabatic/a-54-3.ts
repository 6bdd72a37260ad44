import { table } from "../../formula/index.js";

/**
 * Adiabatic factor of bare protective conductors in contact with the covering of cables. @function
 *
 * @example
 * ```ts
 * import { iec60364_5_54_2011_a_54_3 } from "pv-to-grid/earthing";
 * iec60364_5_54_2011_a_54_3({ insulation: "covering PVC", material: "copper" }).text; // "159"
 * ```
 */
export const iec60364_5_54_2011_a_54_3 = /* @__PURE__ */ table({
  id: "earthing/iec-60364-5-54-2011-a-54-3",
  about: "adiabatic factor of bare protective conductors in contact with the covering of cables",
  rows: { name: "insulation", names: "in the first column" },
  rowRule: "exact",
  columns: { material: ["copper", "aluminium", "steel"] },
  gives: { unit: "A·√s/mm²", symbol: "k" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "table A.54.3", grade: "memory" }],
  cells: `
    covering PVC           159  105  58
    covering polyethylene  138  91   50
    covering CSP           166  110  60
  `,
});
