import { formula } from "../../formula/index.js";

/**
 * Current of a measured point corrected to another irradiance and temperature, procedure 2 of IEC 60891 (2021).
 *
 * @function
 * @example
 * ```ts
 * import { procedure2Current2021 } from "pv-to-grid/module";
 * procedure2Current2021({ measuredCurrent: "7 A", measuredIrradiance: "800 W/m2", targetIrradiance: "1000 W/m2", measuredTemperature: "45 °C", targetTemperature: "25 °C", shortCircuitCurrentCoefficient: "0.05 %/K" }).show(); // "8.663 A"
 * ```
 */
export const procedure2Current2021 = /* @__PURE__ */ formula({
  id: "module/procedure2-current2021",
  about: "current of a measured point corrected to another irradiance and temperature, procedure 2 of IEC 60891 (2021)",
  takes: {
    measuredCurrent: { unit: "A", symbol: "I_1", about: "measured current", above: -100, to: 1000, usual: [-1, 100] },
    measuredIrradiance: { unit: "W/m²", symbol: "G_1", about: "irradiance of the measurement", above: 0, to: 2000, usual: [50, 1500] },
    targetIrradiance: { unit: "W/m²", symbol: "G_2", about: "irradiance to correct to", above: 0, to: 2000, usual: [50, 1500] },
    measuredTemperature: { unit: "°C", symbol: "T_1", about: "cell temperature of the measurement", above: -100, to: 150, usual: [-40, 90] },
    targetTemperature: { unit: "°C", symbol: "T_2", about: "cell temperature to correct to", above: -100, to: 150, usual: [-40, 90] },
    shortCircuitCurrentCoefficient: { unit: "1/K", symbol: "α_ISC", about: "relative temperature coefficient of the short-circuit current", above: -0.01, below: 0.01, usual: [-0.002, 0.003] },
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
  gives: { unit: "A", symbol: "I_2" },
  expression: "measuredCurrent * targetIrradiance / measuredIrradiance * (1 + shortCircuitCurrentCoefficient * (targetTemperature - stcTemperature)) / (1 + shortCircuitCurrentCoefficient * (measuredTemperature - stcTemperature))",
  source: [{ in: "IEC 60891:2021", clause: "correction procedure 2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked corrections of single points with all parameters printed" },
  note: "recalled, not read from the standard; read the standard before an acceptance test depends on it",
});
