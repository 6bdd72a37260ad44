import { formula } from "../../formula/index.js";

/**
 * Voltage of a measured point corrected to another irradiance and temperature, procedure 1 of IEC 60891.
 *
 * @function
 * @example
 * ```ts
 * import { procedure1Voltage } from "pv-to-grid/module";
 * procedure1Voltage({ measuredVoltage: "30 V", measuredCurrent: "7 A", correctedCurrent: "7.809 A", measuredTemperature: "45 °C", targetTemperature: "25 °C", absoluteVoltageCoefficient: "-120 mV/K", seriesResistance: "0.3 ohm", curveCorrection: "0.001 ohm" }).text; // "32.31348"
 * ```
 */
export const procedure1Voltage = /* @__PURE__ */ formula({
  id: "module/procedure1-voltage",
  about: "voltage of a measured point corrected to another irradiance and temperature, procedure 1 of IEC 60891",
  takes: {
    measuredVoltage: { unit: "V", symbol: "U_1", about: "measured voltage", from: -100, to: 3000, usual: [-10, 1500] },
    measuredCurrent: { unit: "A", symbol: "I_1", about: "measured current", above: -100, to: 1000, usual: [-1, 100] },
    correctedCurrent: { unit: "A", symbol: "I_2", about: "corrected current", above: -100, to: 1000, usual: [-1, 100] },
    measuredTemperature: { unit: "°C", symbol: "T_1", about: "cell temperature of the measurement", above: -100, to: 150, usual: [-40, 90] },
    targetTemperature: { unit: "°C", symbol: "T_2", about: "cell temperature to correct to", above: -100, to: 150, usual: [-40, 90] },
    absoluteVoltageCoefficient: { unit: "V/K", symbol: "β_U", about: "absolute temperature coefficient of the open-circuit voltage at the target irradiance", above: -20, below: 1, usual: [-5, 0] },
    seriesResistance: { unit: "Ω", symbol: "R_s", about: "internal series resistance", from: 0, usual: [0, 50] },
    curveCorrection: { unit: "Ω", symbol: "κ", about: "curve correction factor, for each kelvin", from: -1, to: 1 },
  },
  constants: {
    oneKelvin: { value: "1", unit: "K", symbol: "K", about: "unit of the curve correction factor", source: [{ in: "IEC 60891:2021", clause: "correction procedures", grade: "memory" }, { in: "IEC 60891:2009", clause: "correction procedures", grade: "memory" }] },
  },
  gives: { unit: "V", symbol: "U_2" },
  expression: "measuredVoltage - seriesResistance * (correctedCurrent - measuredCurrent) - curveCorrection * correctedCurrent * (targetTemperature - measuredTemperature) / oneKelvin + absoluteVoltageCoefficient * (targetTemperature - measuredTemperature)",
  source: [
    { in: "IEC 60891:2021", clause: "correction procedure 1", grade: "memory" },
    { in: "IEC 60891:2009", clause: "correction procedure 1", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "worked corrections of single points with all parameters printed" },
  note: "for changes of irradiance within about 20 %; recalled, not read from the standard; read the standard before an acceptance test depends on it",
});
