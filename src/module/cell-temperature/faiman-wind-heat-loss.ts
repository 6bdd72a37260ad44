import { table } from "../../formula/index.js";

/**
 * Heat-loss coefficient of the wind of seven module types on an open rack.
 *
 * @function
 * @example
 * ```ts
 * import { faimanWindHeatLoss } from "pv-to-grid/module";
 * faimanWindHeatLoss({ fit: "combined" }).show(); // "6.84 W·s/(m³·K)"
 * ```
 */
export const faimanWindHeatLoss = /* @__PURE__ */ table({
  id: "module/faiman-wind-heat-loss",
  about: "heat-loss coefficient of the wind of seven module types on an open rack",
  rows: { name: "fit", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "W·s/(m³·K)", symbol: "U_1" },
  source: [{ in: "Faiman:2008", clause: "fitted coefficients", grade: "reproduced", seen: "PVPMC temperature models:undated, Faiman module temperature model" }],
  cells: `
    lowest    6.25
    highest   7.68
    combined  6.84
  `,
});
