import { table } from "../../../formula/index.js";

/**
 * Factor for conductors of 105 °C and 125 °C in photovoltaic circuits.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2020_690_31_a_a } from "pv-to-grid/conductor";
 * nfpa70_2020_690_31_a_a({ ambient: "70 °C", rating: "125 °C" }).text; // "0.76"
 * ```
 */
export const nfpa70_2020_690_31_a_a = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2020-690-31-a-a", about: "factor for conductors of 105 °C and 125 °C in photovoltaic circuits",
  base: { air: "30 °C" },
  rows: { name: "ambient", unit: "°C", symbol: "θ_a" }, rowRule: "next above",
  columns: { rating: ["105 °C", "125 °C"] },
  gives: { unit: "1", symbol: "k_θ" },
  source: [
    { in: "NFPA 70:2020", clause: "table 690.31(A)(a)", grade: "copied" },
  ],
  cells: `
    30   1     1
    35   0.97  0.97
    40   0.93  0.95
    45   0.89  0.92
    50   0.86  0.89
    55   0.82  0.86
    60   0.77  0.83
    65   0.73  0.79
    70   0.68  0.76
    75   0.63  0.73
    80   0.58  0.69
    85   0.52  0.65
    90   0.45  0.61
    95   0.37  0.56
    100  0.26  0.51
    105  –     0.46
    110  –     0.4
    115  –     0.32
    120  –     0.23
  `,
});
