import { table } from "../../../formula/index.js";

/**
 * Factor for an ambient temperature other than 40 °C.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2023_310_15_b_1_2 } from "pv-to-grid/conductor";
 * nfpa70_2023_310_15_b_1_2({ ambient: "55 °C", rating: "90 °C" }).text; // "0.84"
 * ```
 */
export const nfpa70_2023_310_15_b_1_2 = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2023-310-15-b-1-2", about: "factor for an ambient temperature other than 40 °C",
  base: { air: "40 °C" },
  rows: { name: "ambient", unit: "°C", symbol: "θ_a" }, rowRule: "next above",
  columns: { rating: ["60 °C", "75 °C", "90 °C", "150 °C", "200 °C", "250 °C"] },
  gives: { unit: "1", symbol: "k_θ" },
  source: [
    { in: "NFPA 70:2023", clause: "table 310.15(B)(1)(2)", grade: "copied" },
    { in: "NFPA 70:2020", clause: "table 310.15(B)(2)", grade: "copied" },
    { in: "NFPA 70:2017", clause: "table 310.15(B)(2)(b)", grade: "copied" },
  ],
  note: "for tables 310.18 to 310.21 only; a row stands for the top of its band",
  cells: `
    10   1.58  1.36  1.26  1.13  1.09  1.07
    15   1.5   1.31  1.22  1.11  1.08  1.06
    20   1.41  1.25  1.18  1.09  1.06  1.05
    25   1.32  1.2   1.14  1.07  1.05  1.04
    30   1.22  1.13  1.1   1.04  1.03  1.02
    35   1.12  1.07  1.05  1.02  1.02  1.01
    40   1     1     1     1     1     1
    45   0.87  0.93  0.95  0.98  0.98  0.99
    50   0.71  0.85  0.89  0.95  0.97  0.98
    55   0.5   0.76  0.84  0.93  0.95  0.96
    60   –     0.65  0.77  0.9   0.94  0.95
    65   –     0.53  0.71  0.88  0.92  0.94
    70   –     0.38  0.63  0.85  0.9   0.93
    75   –     –     0.55  0.83  0.88  0.91
    80   –     –     0.45  0.8   0.87  0.9
    90   –     –     –     0.74  0.83  0.87
    100  –     –     –     0.67  0.79  0.85
    110  –     –     –     0.6   0.75  0.82
    120  –     –     –     0.52  0.71  0.79
    130  –     –     –     0.43  0.66  0.76
    140  –     –     –     0.3   0.61  0.72
    160  –     –     –     –     0.5   0.65
    180  –     –     –     –     0.35  0.58
    200  –     –     –     –     –     0.49
    225  –     –     –     –     –     0.35
  `,
});
