import { table } from "../../../formula/index.js";

/**
 * Factor for more than three current-carrying conductors together.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2023_310_15_c_1 } from "pv-to-grid/conductor";
 * nfpa70_2023_310_15_c_1({ conductors: 9 }).show(); // "70 %"
 * ```
 */
export const nfpa70_2023_310_15_c_1 = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2023-310-15-c-1", about: "factor for more than three current-carrying conductors together",
  rows: { name: "conductors", unit: "1", symbol: "n" }, rowRule: "next above",
  gives: { unit: "%", symbol: "k_g" },
  source: [
    { in: "NFPA 70:2023", clause: "table 310.15(C)(1)", grade: "copied" },
    { in: "NFPA 70:2020", clause: "table 310.15(C)(1)", grade: "copied" },
    { in: "NFPA 70:2017", clause: "table 310.15(B)(3)(a)", grade: "copied" },
  ],
  note: "a row stands for the top of its band, 41 for 41 and more; up to three conductors are the base of the ampacity tables",
  cells: `
    3   100
    6   80
    9   70
    20  50
    30  45
    40  40
    41  35
  `,
});
