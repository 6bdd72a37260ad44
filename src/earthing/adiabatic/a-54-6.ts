import { table } from "../../formula/index.js";

/**
 * Adiabatic factor of bare conductors that can damage nothing beside them. @function
 *
 * @example
 * ```ts
 * import { iec60364_5_54_2011_a_54_6 } from "pv-to-grid/earthing";
 * iec60364_5_54_2011_a_54_6({ insulation: "normal conditions", material: "steel" }).text; // "58"
 * ```
 */
export const iec60364_5_54_2011_a_54_6 = /* @__PURE__ */ table({
  id: "earthing/iec-60364-5-54-2011-a-54-6",
  about: "adiabatic factor of bare conductors that can damage nothing beside them",
  rows: { name: "insulation", names: "in the first column" },
  rowRule: "exact",
  columns: { material: ["copper", "aluminium", "steel"] },
  gives: { unit: "A·√s/mm²", symbol: "k" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "table A.54.6", grade: "memory" }],
  cells: `
    visible and restricted area  228  125  82
    normal conditions            159  105  58
    fire risk                    138  91   50
  `,
});
