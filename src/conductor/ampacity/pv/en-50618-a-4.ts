import { table } from "../../../formula/index.js";

/**
 * Factor for an ambient temperature of photovoltaic cables other than 60 °C.
 *
 * @function
 * @example
 * ```ts
 * import { en50618_2014_a_4 } from "pv-to-grid/conductor";
 * en50618_2014_a_4({ ambient: "70 °C" }).text; // "0.92"
 * ```
 */
export const en50618_2014_a_4 = /* @__PURE__ */ table({
  id: "conductor/en-50618-2014-a-4", about: "factor for an ambient temperature of photovoltaic cables other than 60 °C",
  base: { air: "60 °C" },
  rows: { name: "ambient", unit: "°C", symbol: "θ_a" }, rowRule: "next above",
  gives: { unit: "1", symbol: "k_θ" },
  source: [{ in: "EN 50618:2014", clause: "annex A, table A.4", grade: "memory" }],
  note: "no rise below 60 °C; the factors lie above the square-root law, and an earlier specification printed that law",
  cells: `
    60  1
    70  0.92
    80  0.84
    90  0.75
  `,
});
