import { table } from "../../../formula/index.js";

/**
 * Factor for an air temperature other than 30 °C.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_14 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_14({ ambient: "40 °C", insulation: "PVC" }).text; // "0.87"
 * ```
 */
export const iec60364_5_52_2009_b_52_14 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-14", about: "factor for an air temperature other than 30 °C",
  base: { air: "30 °C" },
  rows: { name: "ambient", unit: "°C", symbol: "θ_a" }, rowRule: "next above",
  columns: { insulation: ["PVC", "XLPE"] },
  gives: { unit: "1", symbol: "k_θ" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.14", grade: "copied" }],
  cells: `
    10  1.22  1.15
    15  1.17  1.12
    20  1.12  1.08
    25  1.06  1.04
    30  1     1
    35  0.94  0.96
    40  0.87  0.91
    45  0.79  0.87
    50  0.71  0.82
    55  0.61  0.76
    60  0.5   0.71
    65  –     0.65
    70  –     0.58
    75  –     0.5
    80  –     0.41
  `,
});
