import { table } from "../../formula/index.js";

/**
 * Voltage correction factor of crystalline silicon modules, NFPA 70 (2023) table 690.7(A).
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2023_690_7_a } from "pv-to-grid/module";
 * nfpa70_2023_690_7_a({ coldest: "-7 °C" }).text; // "1.14"
 * ```
 */
export const nfpa70_2023_690_7_a = /* @__PURE__ */ table({
  id: "module/nfpa70-2023-690-7-a",
  about: "voltage correction factor of crystalline silicon modules, NFPA 70 (2023) table 690.7(A)",
  base: { openCircuitVoltage: "25 °C" },
  rows: { name: "coldest", unit: "°C", symbol: "T_min", about: "lowest expected ambient temperature; a row is headed by its coldest end", below: 25 },
  rowRule: "next below",
  gives: { unit: "1", symbol: "k" },
  source: [{ in: "NFPA 70:2023", clause: "table 690.7(A)", grade: "memory" }],
  cells: `
    20   1.02
    15   1.04
    10   1.06
    5    1.08
    0    1.10
    -5   1.12
    -10  1.14
    -15  1.16
    -20  1.18
    -25  1.20
    -30  1.21
    -35  1.23
    -40  1.25
  `,
  note: "the Fahrenheit column of its first row reaches 76 °F (24.4 °C); at 25 °C and above the factor is 1 and nothing is tabulated",
});
