import { formula } from "../../formula/index.js";

/**
 * Power that a string should give at an irradiance and a cell temperature. @function
 *
 * @example
 * ```ts
 * import { expectedMaximumPower } from "pv-to-grid/commissioning";
 * expectedMaximumPower({ modules: 14, maximumPower: "440 W", maximumPowerCoefficient: "-0.31 %/K", cellTemperature: "45 °C", irradiance: "800 W/m2" }).text; // "4622.464"
 * ```
 */
export const expectedMaximumPower = /* @__PURE__ */ formula({
  id: "commissioning/expected-maximum-power",
  about: "power that a string should give at an irradiance and a cell temperature",
  takes: {
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 1, usual: [1, 200] },
    maximumPower: { unit: "W", symbol: "P_max,STC", about: "maximum power at standard test conditions", above: 0, usual: [1, 1000] },
    maximumPowerCoefficient: { unit: "1/K", symbol: "γ_Pmax", about: "relative temperature coefficient of the maximum power", above: -0.01, below: 0, usual: [-0.009, -0.0005] },
    cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", above: -100, to: 120, usual: [-50, 95] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", above: 0, to: 2000, usual: [50, 1500] },
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
  gives: { unit: "W", symbol: "P" },
  expression: "modules * maximumPower * irradiance / stcIrradiance * (1 + maximumPowerCoefficient * (cellTemperature - stcTemperature))",
  source: [{ in: "common practice", clause: "linear correction of the datasheet value", grade: "common-practice" }],
  unproven: { because: "composition only" },
  note: "direct current, before the losses of cables and inverter",
});
