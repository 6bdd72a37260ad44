import { table } from "../../../formula/index.js";

/**
 * Conductivity to reckon with in voltage drops, Spain.
 *
 * @function
 * @example
 * ```ts
 * import { rebt_guide_conductivities } from "pv-to-grid/conductor";
 * rebt_guide_conductivities({ conductorTemperature: "70 °C", conductor: "copper" }).text; // "48"
 * ```
 */
export const rebt_guide_conductivities = /* @__PURE__ */ table({
  id: "conductor/rebt-guide-conductivities", about: "conductivity to reckon with in voltage drops, Spain",
  rows: { name: "conductorTemperature", unit: "°C", symbol: "θ" }, rowRule: "next above",
  columns: { conductor: ["copper", "aluminium"] },
  gives: { unit: "m/(Ω·mm²)", symbol: "γ" },
  source: [{ in: "REBT guide annex 2:2003", clause: "table of conductivities", grade: "memory" }],
  note: "rounded down by the ministry; the exact values are 58, 48.5 and 45.5 for copper",
  cells: `
    20  56  35
    70  48  30
    90  44  28
  `,
});
