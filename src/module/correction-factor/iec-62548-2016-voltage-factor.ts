import { table } from "../../formula/index.js";

/**
 * Voltage correction factor of crystalline silicon modules, IEC 62548 (2016).
 *
 * @function
 * @example
 * ```ts
 * import { iec62548_2016_voltageFactor } from "pv-to-grid/module";
 * iec62548_2016_voltageFactor({ coldest: "-10 °C" }).text; // "1.14"
 * ```
 */
export const iec62548_2016_voltageFactor = /* @__PURE__ */ table({
  id: "module/iec-62548-2016-voltage-factor",
  about: "voltage correction factor of crystalline silicon modules, IEC 62548 (2016)",
  base: { openCircuitVoltage: "25 °C" },
  rows: { name: "coldest", unit: "°C", symbol: "T_min", about: "lowest expected ambient temperature; a row is headed by its coldest end", to: 24 },
  rowRule: "next below",
  gives: { unit: "1", symbol: "k" },
  source: [{ in: "IEC 62548:2016", clause: "voltage correction factors", grade: "memory" }],
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
  note: "recalled as the same rows as the tables of NFPA 70 and UTE C15-712-1; no publication was found that names the clause",
});
