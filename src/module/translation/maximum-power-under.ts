import { formula } from "../../formula/index.js";

/**
 * Maximum power of a module at an irradiance and a cell temperature.
 *
 * @function
 * @example
 * ```ts
 * import { maximumPowerUnder } from "pv-to-grid/module";
 * maximumPowerUnder({ maximumPower: "440 W", maximumPowerCoefficient: "-0.31 %/K", cellTemperature: "65 °C", irradiance: "800 W/m2" }).text; // "308.352"
 * ```
 */
export const maximumPowerUnder = /* @__PURE__ */ formula({
  id: "module/maximum-power-under",
  about: "maximum power of a module at an irradiance and a cell temperature",
  takes: {
    maximumPower: { unit: "W", symbol: "P_max,STC", about: "maximum power at standard test conditions", above: 0, usual: [1, 1000] },
    maximumPowerCoefficient: { unit: "1/K", symbol: "γ_Pmax", about: "relative temperature coefficient of the maximum power", above: -0.02, below: 0, usual: [-0.01, -0.0005] },
    cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", above: -273.15, to: 150, usual: [-50, 95] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", from: 0, to: 2000, usual: [1, 1500] },
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
  gives: { unit: "W", symbol: "P_max" },
  expression: "maximumPower * irradiance / stcIrradiance * (1 + maximumPowerCoefficient * (cellTemperature - stcTemperature))",
  source: [
    { in: "IEC 60891:2021", clause: "linear temperature correction", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "worked examples of the power at an irradiance and a cell temperature" },
  note: "linear in irradiance and temperature; below about 200 W/m² real modules give less",
});
