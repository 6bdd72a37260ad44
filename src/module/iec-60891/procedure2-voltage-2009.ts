import { formula } from "../../formula/index.js";

/**
 * Voltage of a measured point corrected to another irradiance and temperature, procedure 2 of IEC 60891 (2009).
 *
 * @function
 * @example
 * ```ts
 * import { procedure2Voltage2009 } from "pv-to-grid/module";
 * procedure2Voltage2009({ measuredVoltage: "30 V", measuredCurrent: "7 A", correctedCurrent: "8.6625 A", measuredOpenCircuitVoltage: "37 V", measuredIrradiance: "800 W/m2", targetIrradiance: "1000 W/m2", measuredTemperature: "45 °C", targetTemperature: "25 °C", openCircuitVoltageCoefficient: "-0.3 %/K", irradianceFactor: "0.06", seriesResistance: "0.3 ohm", curveCorrection: "0.001 ohm" }).show(); // "32.39 V"
 * ```
 */
export const procedure2Voltage2009 = /* @__PURE__ */ formula({
  id: "module/procedure2-voltage2009",
  about: "voltage of a measured point corrected to another irradiance and temperature, procedure 2 of IEC 60891 (2009)",
  takes: {
    measuredVoltage: { unit: "V", symbol: "U_1", about: "measured voltage", from: -100, to: 3000, usual: [-10, 1500] },
    measuredCurrent: { unit: "A", symbol: "I_1", about: "measured current", above: -100, to: 1000, usual: [-1, 100] },
    correctedCurrent: { unit: "A", symbol: "I_2", about: "corrected current", above: -100, to: 1000, usual: [-1, 100] },
    measuredOpenCircuitVoltage: { unit: "V", symbol: "U_OC1", about: "open-circuit voltage of the measured curve", above: 0, usual: [0.3, 1500] },
    measuredIrradiance: { unit: "W/m²", symbol: "G_1", about: "irradiance of the measurement", above: 0, to: 2000, usual: [50, 1500] },
    targetIrradiance: { unit: "W/m²", symbol: "G_2", about: "irradiance to correct to", above: 0, to: 2000, usual: [50, 1500] },
    measuredTemperature: { unit: "°C", symbol: "T_1", about: "cell temperature of the measurement", above: -100, to: 150, usual: [-40, 90] },
    targetTemperature: { unit: "°C", symbol: "T_2", about: "cell temperature to correct to", above: -100, to: 150, usual: [-40, 90] },
    openCircuitVoltageCoefficient: { unit: "1/K", symbol: "β_UOC", about: "relative temperature coefficient of the open-circuit voltage", above: -0.01, below: 0, usual: [-0.006, -0.001] },
    irradianceFactor: { unit: "1", symbol: "a", about: "irradiance correction factor of the open-circuit voltage", from: 0, to: 0.3 },
    seriesResistance: { unit: "Ω", symbol: "R_s", about: "internal series resistance", from: 0, usual: [0, 50] },
    curveCorrection: { unit: "Ω", symbol: "κ", about: "curve correction factor, for each kelvin", from: -1, to: 1 },
  },
  constants: {
    oneKelvin: { value: "1", unit: "K", symbol: "K", about: "unit of the curve correction factor", source: [{ in: "IEC 60891:2021", clause: "correction procedures", grade: "memory" }, { in: "IEC 60891:2009", clause: "correction procedures", grade: "memory" }] },
  },
  gives: { unit: "V", symbol: "U_2" },
  expression: "measuredVoltage + measuredOpenCircuitVoltage * (openCircuitVoltageCoefficient * (targetTemperature - measuredTemperature) + irradianceFactor * log(targetIrradiance / measuredIrradiance)) - seriesResistance * (correctedCurrent - measuredCurrent) - curveCorrection * correctedCurrent * (targetTemperature - measuredTemperature) / oneKelvin",
  source: [{ in: "IEC 60891:2009", clause: "correction procedure 2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked corrections of single points with all parameters printed" },
  note: "recalled, not read from the standard; read the standard before an acceptance test depends on it",
});
