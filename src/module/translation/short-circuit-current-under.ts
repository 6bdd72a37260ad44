import { formula } from "../../formula/index.js";

/**
 * Short-circuit current of a module at an irradiance and a cell temperature.
 *
 * @function
 * @example
 * ```ts
 * import { shortCircuitCurrentUnder } from "pv-to-grid/module";
 * shortCircuitCurrentUnder({ shortCircuitCurrent: "14.1 A", shortCircuitCurrentCoefficient: "0.05 %/K", cellTemperature: "45 °C", irradiance: "800 W/m2" }).text; // "11.3928"
 * ```
 */
export const shortCircuitCurrentUnder = /* @__PURE__ */ formula({
  id: "module/short-circuit-current-under",
  about: "short-circuit current of a module at an irradiance and a cell temperature",
  takes: {
    shortCircuitCurrent: { unit: "A", symbol: "I_SC,STC", about: "short-circuit current at standard test conditions", above: 0, usual: [0.05, 40] },
    shortCircuitCurrentCoefficient: { unit: "1/K", symbol: "α_ISC", about: "relative temperature coefficient of the short-circuit current", above: -0.01, below: 0.01, usual: [-0.002, 0.003] },
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
  gives: { unit: "A", symbol: "I_SC" },
  expression: "shortCircuitCurrent * irradiance / stcIrradiance * (1 + shortCircuitCurrentCoefficient * (cellTemperature - stcTemperature))",
  source: [
    { in: "IEC 60891:2021", clause: "linear temperature correction", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "worked examples of the short-circuit current at an irradiance and a cell temperature" },
  note: "linear in irradiance and temperature",
});
