import { formula } from "../../formula/index.js";

/**
 * Cell temperature of a string from its open-circuit voltage. @function
 *
 * @example
 * ```ts
 * import { cellTemperatureFromVoltage } from "pv-to-grid/commissioning";
 * cellTemperatureFromVoltage({ measuredVoltage: "520.2624 V", modules: 14, openCircuitVoltage: "39.2 V", openCircuitVoltageCoefficient: "-0.26 %/K" }).show(); // "45 °C"
 * ```
 */
export const cellTemperatureFromVoltage = /* @__PURE__ */ formula({
  id: "commissioning/cell-temperature-from-voltage",
  about: "cell temperature of a string from its open-circuit voltage",
  takes: {
    measuredVoltage: { unit: "V", symbol: "U_1", about: "measured voltage", above: 0, to: 3000, usual: [0.3, 1500] },
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 1, usual: [1, 200] },
    openCircuitVoltage: { unit: "V", symbol: "U_OC,STC", about: "open-circuit voltage at standard test conditions", above: 0, usual: [0.5, 200] },
    openCircuitVoltageCoefficient: { unit: "1/K", symbol: "β_UOC", about: "relative temperature coefficient of the open-circuit voltage", above: -0.01, below: 0, usual: [-0.006, -0.001] },
  },
  constants: {
    stcTemperature: {
      value: "25", unit: "°C", symbol: "T_STC", about: "cell temperature at standard test conditions",
      source: [
        { in: "GSES handout:2011", clause: "worked examples 1 to 3", grade: "original" },
        { in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" },
      ],
    },
  },
  gives: { unit: "°C", symbol: "T_c" },
  expression: "stcTemperature + (measuredVoltage / (modules * openCircuitVoltage) - 1) / openCircuitVoltageCoefficient",
  source: [{ in: "IEC 60904-5:2011", clause: "equivalent cell temperature by the open-circuit voltage", grade: "memory" }],
  unproven: { because: "no publication found", sought: "equivalent cell temperature open-circuit voltage method worked example" },
  note: "inverse of the expected voltage: a string that is itself wrong tells a wrong temperature, so use another, sound string",
});

/**
 * Cell temperature of a string from its open-circuit voltage and the irradiance. @function
 *
 * @example
 * ```ts
 * import { cellTemperatureFromVoltageInLight } from "pv-to-grid/commissioning";
 * cellTemperatureFromVoltageInLight({ measuredVoltage: "503.4 V", modules: 14, openCircuitVoltage: "39.2 V", openCircuitVoltageCoefficient: "-0.26 %/K", irradiance: "600 W/m2", irradianceFactor: "0.06" }).show({ digits: 3 }); // "45 °C"
 * ```
 */
export const cellTemperatureFromVoltageInLight = /* @__PURE__ */ formula({
  id: "commissioning/cell-temperature-from-voltage-in-light",
  about: "cell temperature of a string from its open-circuit voltage and the irradiance",
  takes: {
    measuredVoltage: { unit: "V", symbol: "U_1", about: "measured voltage", above: 0, to: 3000, usual: [0.3, 1500] },
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 1, usual: [1, 200] },
    openCircuitVoltage: { unit: "V", symbol: "U_OC,STC", about: "open-circuit voltage at standard test conditions", above: 0, usual: [0.5, 200] },
    openCircuitVoltageCoefficient: { unit: "1/K", symbol: "β_UOC", about: "relative temperature coefficient of the open-circuit voltage", above: -0.01, below: 0, usual: [-0.006, -0.001] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", above: 0, to: 2000, usual: [50, 1500] },
    irradianceFactor: { unit: "1", symbol: "a", about: "irradiance correction factor of the open-circuit voltage", from: 0, to: 0.3 },
  },
  constants: {
    stcTemperature: {
      value: "25", unit: "°C", symbol: "T_STC", about: "cell temperature at standard test conditions",
      source: [
        { in: "GSES handout:2011", clause: "worked examples 1 to 3", grade: "original" },
        { in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" },
      ],
    },
    stcIrradiance: {
      value: "1000", unit: "W/m²", symbol: "G_STC", about: "irradiance at standard test conditions",
      source: [{ in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" }],
    },
  },
  gives: { unit: "°C", symbol: "T_c" },
  expression: "stcTemperature + (measuredVoltage / (modules * openCircuitVoltage) - 1 - irradianceFactor * log(irradiance / stcIrradiance)) / openCircuitVoltageCoefficient",
  source: [{ in: "IEC 60904-5:2011", clause: "equivalent cell temperature by the open-circuit voltage", grade: "memory" }],
  unproven: { because: "no publication found", sought: "equivalent cell temperature open-circuit voltage method worked example" },
});
