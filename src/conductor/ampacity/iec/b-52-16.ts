import { table } from "../../../formula/index.js";

/**
 * Factor for a thermal resistivity of the soil other than 2.5 K·m/W.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_16 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_16({ soilThermalResistivity: "1.5 K·m/W", method: "D2" }).text; // "1.28"
 * ```
 */
export const iec60364_5_52_2009_b_52_16 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-16", about: "factor for a thermal resistivity of the soil other than 2.5 K·m/W",
  base: { soilResistivity: "2.5 K·m/W" },
  rows: { name: "soilThermalResistivity", unit: "K·m/W", symbol: "ρ_s" }, rowRule: "next above",
  columns: { method: ["D1", "D2"] },
  gives: { unit: "1", symbol: "k_s" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.16", grade: "copied" }],
  note: "accurate to about ±5 % on average; for ducts down to 0.8 m",
  cells: `
    0.5  1.28  1.88
    0.7  1.2   1.62
    1    1.18  1.5
    1.5  1.1   1.28
    2    1.05  1.12
    2.5  1     1
    3    0.96  0.9
  `,
});
