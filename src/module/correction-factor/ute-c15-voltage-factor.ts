import { table } from "../../formula/index.js";

/**
 * Voltage correction factor of crystalline silicon modules, UTE C15-712-1.
 *
 * @function
 * @example
 * ```ts
 * import { uteC15VoltageFactor } from "pv-to-grid/module";
 * uteC15VoltageFactor({ coldest: "-10 °C" }).text; // "1.14"
 * ```
 */
export const uteC15VoltageFactor = /* @__PURE__ */ table({
  id: "module/ute-c15-voltage-factor",
  about: "voltage correction factor of crystalline silicon modules, UTE C15-712-1",
  base: { openCircuitVoltage: "25 °C" },
  rows: { name: "coldest", unit: "°C", symbol: "T_min", about: "lowest expected ambient temperature; a row is headed by its coldest end", to: 24 },
  rowRule: "next below",
  gives: { unit: "1", symbol: "k" },
  source: [{ in: "UTE C15-712-1:undated", clause: "voltage rating of switching devices", grade: "reproduced", seen: "GuidEnR switching devices:undated, table of the multiplier k" }],
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
});
