import { formula } from "../../formula/index.js";

/**
 * Module temperature by the heat-loss coefficients of Faiman.
 *
 * @function
 * @example
 * ```ts
 * import { faimanModuleTemperature } from "pv-to-grid/module";
 * faimanModuleTemperature({ ambient: "36 °C", irradiance: "1000 W/m2", wind: "1 m/s", constantHeatLoss: "25 W/(m2*K)", windHeatLoss: "6.84 W*s/(m3*K)" }).show(); // "67.41 °C"
 * ```
 */
export const faimanModuleTemperature = /* @__PURE__ */ formula({
  id: "module/faiman-module-temperature",
  about: "module temperature by the heat-loss coefficients of Faiman",
  takes: {
    ambient: { unit: "°C", symbol: "T_a", about: "ambient air temperature", above: -100, to: 70, usual: [-50, 60] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", from: 0, to: 2000, usual: [1, 1500] },
    wind: { unit: "m/s", symbol: "v", about: "wind speed near the module", from: 0, to: 60, usual: [0, 30] },
    constantHeatLoss: { unit: "W/(m²·K)", symbol: "U_0", about: "constant heat-loss coefficient", above: 0, to: 100, usual: [10, 60] },
    windHeatLoss: { unit: "W·s/(m³·K)", symbol: "U_1", about: "heat-loss coefficient of the wind", from: 0, to: 50, usual: [0, 20] },
  },
  gives: { unit: "°C", symbol: "T_m" },
  expression: "ambient + irradiance / (constantHeatLoss + windHeatLoss * wind)",
  source: [{ in: "Faiman:2008", clause: "module temperature", grade: "reproduced", seen: "PVPMC temperature models:undated, Faiman module temperature model" }],
  unproven: { because: "no publication found", sought: "worked examples with printed heat-loss coefficients" },
  note: "open rack; means over a day's cycle",
});
