import { table } from "../../formula/index.js";

/**
 * Constant heat-loss coefficient of seven module types on an open rack.
 *
 * @function
 * @example
 * ```ts
 * import { faimanConstantHeatLoss } from "pv-to-grid/module";
 * faimanConstantHeatLoss({ fit: "combined" }).show(); // "25 W/(m²·K)"
 * ```
 */
export const faimanConstantHeatLoss = /* @__PURE__ */ table({
  id: "module/faiman-constant-heat-loss",
  about: "constant heat-loss coefficient of seven module types on an open rack",
  rows: { name: "fit", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "W/(m²·K)", symbol: "U_0" },
  source: [{ in: "Faiman:2008", clause: "fitted coefficients", grade: "reproduced", seen: "PVPMC temperature models:undated, Faiman module temperature model" }],
  cells: `
    lowest    23.5
    highest   26.5
    combined  25
  `,
});
