import { formula } from "../../formula/index.js";

/**
 * Temperature of the back of a module by the Sandia model.
 *
 * @function
 * @example
 * ```ts
 * import { sandiaModuleTemperature } from "pv-to-grid/module";
 * sandiaModuleTemperature({ ambient: "20 °C", irradiance: "1000 W/m2", wind: "1 m/s", sandiaExponent: "-3.56", sandiaWindExponent: "-0.075" }).show(); // "46.38 °C"
 * ```
 */
export const sandiaModuleTemperature = /* @__PURE__ */ formula({
  id: "module/sandia-module-temperature",
  about: "temperature of the back of a module by the Sandia model",
  takes: {
    ambient: { unit: "°C", symbol: "T_a", about: "ambient air temperature", above: -100, to: 70, usual: [-50, 60] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", from: 0, to: 2000, usual: [1, 1500] },
    wind: { unit: "m/s", symbol: "v", about: "wind speed at 10 m height", from: 0, to: 60, usual: [0, 30] },
    sandiaExponent: { unit: "1", symbol: "a", about: "exponent for calm air", from: -6, to: 0 },
    sandiaWindExponent: { unit: "1", symbol: "b", about: "exponent for each metre a second of wind", from: -1, to: 0 },
  },
  constants: {
    oneHeatTransfer: {
      value: "1", unit: "W/(m²·K)", symbol: "W/(m²·K)", about: "unit of the prefactor",
      source: [{ in: "PVPMC temperature models:undated", clause: "Sandia module temperature model", grade: "original" }],
    },
    oneSpeed: {
      value: "1", unit: "m/s", symbol: "m/s", about: "unit of the wind speed",
      source: [{ in: "PVPMC temperature models:undated", clause: "Sandia module temperature model", grade: "original" }],
    },
  },
  gives: { unit: "°C", symbol: "T_m" },
  expression: "ambient + irradiance / oneHeatTransfer * exp(sandiaExponent + sandiaWindExponent * wind / oneSpeed)",
  source: [
    { in: "PVPMC temperature models:undated", clause: "Sandia module temperature model", grade: "original" },
    { in: "King:2004", clause: "module temperature", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "worked examples of the model with printed results" },
  note: "thermally steady conditions",
});
