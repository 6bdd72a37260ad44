import { table } from "../../formula/index.js";

/**
 * Voltage correction factor of crystalline silicon modules, NFPA 70 (1999 to 2005) table 690.7, five rows.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2005_690_7 } from "pv-to-grid/module";
 * nfpa70_2005_690_7({ coldest: "-8 °C" }).text; // "1.13"
 * ```
 */
export const nfpa70_2005_690_7 = /* @__PURE__ */ table({
  id: "module/nfpa70-2005-690-7",
  about: "voltage correction factor of crystalline silicon modules, NFPA 70 (1999 to 2005) table 690.7, five rows",
  base: { openCircuitVoltage: "25 °C" },
  rows: { name: "coldest", unit: "°C", symbol: "T_min", about: "lowest expected ambient temperature; a row is headed by its coldest end", to: 25 },
  rowRule: "next below",
  gives: { unit: "1", symbol: "k" },
  source: [{ in: "NFPA 70:2005", clause: "table 690.7", grade: "memory" }],
  cells: `
    10   1.06
    0    1.10
    -10  1.13
    -20  1.17
    -40  1.25
  `,
  note: "historic and coarser: old worked examples need it, new plants do not",
});
