import { table } from "../../formula/index.js";

/**
 * Voltage correction factor of crystalline silicon modules, NFPA 70 (2008 to 2014) table 690.7.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2008_690_7 } from "pv-to-grid/module";
 * nfpa70_2008_690_7({ coldest: "-7 °C" }).text; // "1.14"
 * ```
 */
export const nfpa70_2008_690_7 = /* @__PURE__ */ table({
  id: "module/nfpa70-2008-690-7",
  about: "voltage correction factor of crystalline silicon modules, NFPA 70 (2008 to 2014) table 690.7",
  base: { openCircuitVoltage: "25 °C" },
  rows: { name: "coldest", unit: "°C", symbol: "T_min", about: "lowest expected ambient temperature; a row is headed by its coldest end", below: 25 },
  rowRule: "next below",
  gives: { unit: "1", symbol: "k" },
  source: [{ in: "NFPA 70:2008", clause: "table 690.7", grade: "memory" }],
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
  note: "recalled as the same thirteen rows in the 2008, 2011 and 2014 editions; there it applies only where the maker states no coefficient",
});
