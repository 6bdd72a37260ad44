import { table } from "../../../formula/index.js";

/**
 * Factor for a ground temperature other than 20 °C.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_15 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_15({ ambient: "40 °C", insulation: "PVC" }).text; // "0.77"
 * ```
 */
export const iec60364_5_52_2009_b_52_15 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-15", about: "factor for a ground temperature other than 20 °C",
  base: { ground: "20 °C" },
  rows: { name: "ambient", unit: "°C", symbol: "θ_a" }, rowRule: "next above",
  columns: { insulation: ["PVC", "XLPE"] },
  gives: { unit: "1", symbol: "k_θ" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.15", grade: "copied" }],
  cells: `
    10  1.1   1.07
    15  1.05  1.04
    20  1     1
    25  0.95  0.96
    30  0.89  0.93
    35  0.84  0.89
    40  0.77  0.85
    45  0.71  0.8
    50  0.63  0.76
    55  0.55  0.71
    60  0.45  0.65
    65  –     0.6
    70  –     0.53
    75  –     0.46
    80  –     0.38
  `,
});
