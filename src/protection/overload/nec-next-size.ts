import { table } from "../../formula/index.js";

/**
 * Largest rating that may be the next standard size above an ampacity. @function
 *
 * @example
 * ```ts
 * import { nfpa70_2020_next_size_limit } from "pv-to-grid/protection";
 * nfpa70_2020_next_size_limit({ rule: "next standard size" }).text; // "800"
 * ```
 */
export const nfpa70_2020_next_size_limit = /* @__PURE__ */ table({
  id: "protection/nfpa-70-2020-next-size-limit",
  about: "largest rating that may be the next standard size above an ampacity",
  rows: { name: "rule", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "A", symbol: "I_n" },
  source: [
    { in: "NFPA 70:2020", clause: "240.4(B)(3)", grade: "copied" },
    { in: "NFPA 70:2017", clause: "240.4(B)(3)", grade: "copied" },
  ],
  cells: `
    next standard size  800
  `,
});
