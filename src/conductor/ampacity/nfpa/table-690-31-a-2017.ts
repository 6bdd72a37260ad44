import { table } from "../../../formula/index.js";

/**
 * Factor for conductors of photovoltaic source and output circuits.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2017_690_31_a } from "pv-to-grid/conductor";
 * nfpa70_2017_690_31_a({ ambient: "62 °C", rating: "90 °C" }).text; // "0.58"
 * ```
 */
export const nfpa70_2017_690_31_a = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2017-690-31-a", about: "factor for conductors of photovoltaic source and output circuits",
  base: { air: "30 °C" },
  rows: { name: "ambient", unit: "°C", symbol: "θ_a" }, rowRule: "next above",
  columns: { rating: ["60 °C", "75 °C", "90 °C", "105 °C"] },
  gives: { unit: "1", symbol: "k_θ" },
  source: [
    { in: "NFPA 70:2017", clause: "table 690.31(A)", grade: "copied" },
  ],
  note: "bands of 10 K above 60 °C",
  cells: `
    30  1     1     1     1
    35  0.91  0.94  0.96  0.97
    40  0.82  0.88  0.91  0.93
    45  0.71  0.82  0.87  0.89
    50  0.58  0.75  0.82  0.86
    55  0.41  0.67  0.76  0.82
    60  –     0.58  0.71  0.77
    70  –     0.33  0.58  0.68
    80  –     –     0.41  0.58
  `,
});
