import { table } from "../../../formula/index.js";

/**
 * Factor for an air temperature other than 30 °C after BS 7671.
 *
 * @function
 * @example
 * ```ts
 * import { bs7671_2018_4b1 } from "pv-to-grid/conductor";
 * bs7671_2018_4b1({ ambient: "40 °C", insulation: "XLPE" }).text; // "0.91"
 * ```
 */
export const bs7671_2018_4b1 = /* @__PURE__ */ table({
  id: "conductor/bs-7671-2018-4b1", about: "factor for an air temperature other than 30 °C after BS 7671",
  base: { air: "30 °C" },
  rows: { name: "ambient", unit: "°C", symbol: "θ_a" }, rowRule: "next above",
  columns: { insulation: ["PVC", "XLPE"] },
  gives: { unit: "1", symbol: "C_a" },
  source: [{ in: "BS 7671:2018", clause: "appendix 4, table 4B1", grade: "memory" }],
  cells: `
    25  1.03  1.02
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
