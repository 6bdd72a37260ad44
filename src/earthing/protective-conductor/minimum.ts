import { table } from "../../formula/index.js";

/**
 * Smallest protective conductor that is not part of a cable. @function
 *
 * @example
 * ```ts
 * import { iec60364_5_54_2011_separate_minimum } from "pv-to-grid/earthing";
 * iec60364_5_54_2011_separate_minimum({ placing: "separate, unprotected", material: "copper" }).text; // "4"
 * ```
 */
export const iec60364_5_54_2011_separate_minimum = /* @__PURE__ */ table({
  id: "earthing/iec-60364-5-54-2011-separate-minimum",
  about: "smallest protective conductor that is not part of a cable",
  rows: { name: "placing", names: "in the first column" },
  rowRule: "exact",
  columns: { material: ["copper", "aluminium"] },
  gives: { unit: "mm²", symbol: "S_min" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "543.1.3", grade: "reproduced", seen: "Mitolo:2009, table 11.4, p. 186" }],
  cells: `
    separate, protected    2.5  16
    separate, unprotected  4    16
  `,
});
