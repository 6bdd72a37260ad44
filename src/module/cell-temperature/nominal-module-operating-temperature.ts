import { formula } from "../../formula/index.js";

/**
 * Nominal module operating temperature from heat-loss coefficients.
 *
 * @function
 * @example
 * ```ts
 * import { nominalModuleOperatingTemperature } from "pv-to-grid/module";
 * nominalModuleOperatingTemperature({ constantHeatLoss: "25 W/(m2*K)", windHeatLoss: "6.84 W*s/(m3*K)" }).show(); // "45.13 °C"
 * ```
 */
export const nominalModuleOperatingTemperature = /* @__PURE__ */ formula({
  id: "module/nominal-module-operating-temperature",
  about: "nominal module operating temperature from heat-loss coefficients",
  takes: {
    constantHeatLoss: { unit: "W/(m²·K)", symbol: "U_0", about: "constant heat-loss coefficient", above: 0, to: 100, usual: [10, 60] },
    windHeatLoss: { unit: "W·s/(m³·K)", symbol: "U_1", about: "heat-loss coefficient of the wind", from: 0, to: 50, usual: [0, 20] },
  },
  constants: {
    nmotAmbient: { value: "20", unit: "°C", symbol: "T_a,NMOT", about: "ambient of the nominal module operating temperature", source: [{ in: "IEC 61853-2:2016", clause: "nominal module operating temperature", grade: "memory" }] },
    nmotIrradiance: { value: "800", unit: "W/m²", symbol: "G_NMOT", about: "irradiance of the nominal module operating temperature", source: [{ in: "IEC 61853-2:2016", clause: "nominal module operating temperature", grade: "memory" }] },
    nmotWind: { value: "1", unit: "m/s", symbol: "v_NMOT", about: "wind speed of the nominal module operating temperature", source: [{ in: "IEC 61853-2:2016", clause: "nominal module operating temperature", grade: "memory" }] },
  },
  gives: { unit: "°C", symbol: "NMOT" },
  expression: "nmotAmbient + nmotIrradiance / (constantHeatLoss + windHeatLoss * nmotWind)",
  source: [{ in: "IEC 61853-2:2016", clause: "nominal module operating temperature", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked examples that state both heat-loss coefficients and the NMOT of one module" },
  note: "the module runs at its maximum power point, while the older NOCT is measured at open circuit and comes out warmer",
});
