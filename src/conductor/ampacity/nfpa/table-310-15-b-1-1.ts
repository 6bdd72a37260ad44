import { table } from "../../../formula/index.js";

/**
 * Factor for an ambient temperature other than 30 °C.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2023_310_15_b_1_1 } from "pv-to-grid/conductor";
 * nfpa70_2023_310_15_b_1_1({ ambient: "47 °C", rating: "90 °C" }).text; // "0.82"
 * ```
 */
export const nfpa70_2023_310_15_b_1_1 = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2023-310-15-b-1-1", about: "factor for an ambient temperature other than 30 °C",
  base: { air: "30 °C" },
  rows: { name: "ambient", unit: "°C", symbol: "θ_a" }, rowRule: "next above",
  columns: { rating: ["60 °C", "75 °C", "90 °C"] },
  gives: { unit: "1", symbol: "k_θ" },
  source: [
    { in: "NFPA 70:2023", clause: "table 310.15(B)(1)(1)", grade: "copied" },
    { in: "NFPA 70:2020", clause: "table 310.15(B)(1)", grade: "copied" },
    { in: "NFPA 70:2017", clause: "table 310.15(B)(2)(a)", grade: "copied" },
  ],
  note: "a row stands for the top of its band",
  cells: `
    10  1.29  1.2   1.15
    15  1.22  1.15  1.12
    20  1.15  1.11  1.08
    25  1.08  1.05  1.04
    30  1     1     1
    35  0.91  0.94  0.96
    40  0.82  0.88  0.91
    45  0.71  0.82  0.87
    50  0.58  0.75  0.82
    55  0.41  0.67  0.76
    60  –     0.58  0.71
    65  –     0.47  0.65
    70  –     0.33  0.58
    75  –     –     0.5
    80  –     –     0.41
    85  –     –     0.29
  `,
});
