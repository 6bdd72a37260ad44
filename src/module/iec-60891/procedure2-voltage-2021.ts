import { formula } from "../../formula/index.js";

/**
 * Voltage of a measured point corrected to another irradiance and temperature, procedure 2 of IEC 60891 (2021).
 *
 * @function
 * @example
 * ```ts
 * import { procedure2Voltage2021 } from "pv-to-grid/module";
 * procedure2Voltage2021({ measuredVoltage: "30 V", measuredCurrent: "7 A", correctedCurrent: "8.663 A", openCircuitVoltage: "39 V", measuredVoltageRatio: "1.0133", targetVoltageRatio: "1", measuredTemperature: "45 °C", targetTemperature: "25 °C", openCircuitVoltageCoefficient: "-0.3 %/K", measuredSeriesResistance: "0.32 ohm", curveCorrection: "0.001 ohm" }).show(); // "32.52 V"
 * ```
 */
export const procedure2Voltage2021 = /* @__PURE__ */ formula({
  id: "module/procedure2-voltage2021",
  about: "voltage of a measured point corrected to another irradiance and temperature, procedure 2 of IEC 60891 (2021)",
  takes: {
    measuredVoltage: { unit: "V", symbol: "U_1", about: "measured voltage", from: -100, to: 3000, usual: [-10, 1500] },
    measuredCurrent: { unit: "A", symbol: "I_1", about: "measured current", above: -100, to: 1000, usual: [-1, 100] },
    correctedCurrent: { unit: "A", symbol: "I_2", about: "corrected current", above: -100, to: 1000, usual: [-1, 100] },
    openCircuitVoltage: { unit: "V", symbol: "U_OC,STC", about: "open-circuit voltage at standard test conditions", above: 0, usual: [0.5, 1500] },
    measuredVoltageRatio: { unit: "1", symbol: "f(G_1)", about: "ratio of open-circuit voltages at the irradiance of the measurement", above: 0, to: 5 },
    targetVoltageRatio: { unit: "1", symbol: "f(G_2)", about: "ratio of open-circuit voltages at the irradiance to correct to", above: 0, to: 5 },
    measuredTemperature: { unit: "°C", symbol: "T_1", about: "cell temperature of the measurement", above: -100, to: 150, usual: [-40, 90] },
    targetTemperature: { unit: "°C", symbol: "T_2", about: "cell temperature to correct to", above: -100, to: 150, usual: [-40, 90] },
    openCircuitVoltageCoefficient: { unit: "1/K", symbol: "β_UOC", about: "relative temperature coefficient of the open-circuit voltage", above: -0.01, below: 0, usual: [-0.006, -0.001] },
    measuredSeriesResistance: { unit: "Ω", symbol: "R_S1", about: "internal series resistance at the temperature of the measurement", from: 0, usual: [0, 50] },
    curveCorrection: { unit: "Ω", symbol: "κ", about: "curve correction factor, for each kelvin", from: -1, to: 1 },
  },
  constants: {
    stcTemperature: {
      value: "25", unit: "°C", symbol: "T_STC", about: "cell temperature at standard test conditions",
      source: [
        { in: "GSES handout:2011", clause: "worked examples 1 to 3", grade: "original" },
        { in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" },
      ],
    },
    oneKelvin: { value: "1", unit: "K", symbol: "K", about: "unit of the curve correction factor", source: [{ in: "IEC 60891:2021", clause: "correction procedures", grade: "memory" }, { in: "IEC 60891:2009", clause: "correction procedures", grade: "memory" }] },
  },
  gives: { unit: "V", symbol: "U_2" },
  expression: "measuredVoltage - measuredSeriesResistance * (correctedCurrent - measuredCurrent) - curveCorrection * correctedCurrent * (targetTemperature - measuredTemperature) / oneKelvin + openCircuitVoltage * (openCircuitVoltageCoefficient * (targetVoltageRatio * (targetTemperature - stcTemperature) - measuredVoltageRatio * (measuredTemperature - stcTemperature)) + 1 / targetVoltageRatio - 1 / measuredVoltageRatio)",
  source: [{ in: "IEC 60891:2021", clause: "correction procedure 2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked corrections of single points with all parameters printed" },
  note: "recalled, not read from the standard; read the standard before an acceptance test depends on it; a corrigendum of 2024 changes clause 5.1",
});
