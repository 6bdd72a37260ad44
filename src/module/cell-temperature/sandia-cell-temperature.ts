import { formula } from "../../formula/index.js";

/**
 * Cell temperature from the temperature of the back of a module.
 *
 * @function
 * @example
 * ```ts
 * import { sandiaCellTemperature } from "pv-to-grid/module";
 * sandiaCellTemperature({ moduleTemperature: "46.4 °C", irradiance: "1000 W/m2", cellRise: "3 K" }).text; // "49.4"
 * ```
 */
export const sandiaCellTemperature = /* @__PURE__ */ formula({
  id: "module/sandia-cell-temperature",
  about: "cell temperature from the temperature of the back of a module",
  takes: {
    moduleTemperature: { unit: "°C", symbol: "T_m", about: "temperature of the back of the module", above: -100, to: 150, usual: [-50, 110] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", from: 0, to: 2000, usual: [1, 1500] },
    cellRise: { unit: "K", symbol: "ΔT", about: "rise of the cells over the back of the module at standard irradiance", from: 0, to: 30 },
  },
  constants: {
    stcIrradiance: {
      value: "1000", unit: "W/m²", symbol: "G_STC", about: "irradiance at standard test conditions",
      source: [{ in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" }],
    },
  },
  gives: { unit: "°C", symbol: "T_c" },
  expression: "moduleTemperature + irradiance / stcIrradiance * cellRise",
  source: [{ in: "PVPMC temperature models:undated", clause: "Sandia cell temperature model", grade: "original" }],
  unproven: { because: "no publication found", sought: "worked examples of the model with printed results" },
});
