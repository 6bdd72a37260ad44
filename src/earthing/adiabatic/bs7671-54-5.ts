import { table } from "../../formula/index.js";

/**
 * Adiabatic factor of steel conduit, ducting and trunking as protective conductor. @function
 *
 * @example
 * ```ts
 * import { bs7671_2018_54_5 } from "pv-to-grid/earthing";
 * bs7671_2018_54_5({ insulation: "thermoplastic 70 °C" }).text; // "47"
 * ```
 */
export const bs7671_2018_54_5 = /* @__PURE__ */ table({
  id: "earthing/bs-7671-2018-54-5",
  about: "adiabatic factor of steel conduit, ducting and trunking as protective conductor",
  rows: { name: "insulation", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "A·√s/mm²", symbol: "k" },
  source: [{ in: "BS 7671:2018", clause: "table 54.5", grade: "reproduced", seen: "NICEIC Pocket Guide 14:2018, page 25" }],
  cells: `
    thermoplastic 70 °C  47
    thermoplastic 90 °C  44
    thermosetting 90 °C  58
  `,
});
