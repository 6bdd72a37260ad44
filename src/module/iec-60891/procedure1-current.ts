import { formula } from "../../formula/index.js";

/**
 * Current of a measured point corrected to another irradiance and temperature, procedure 1 of IEC 60891.
 *
 * @function
 * @example
 * ```ts
 * import { procedure1Current } from "pv-to-grid/module";
 * procedure1Current({ measuredCurrent: "7 A", measuredShortCircuitCurrent: "8 A", measuredIrradiance: "900 W/m2", targetIrradiance: "1000 W/m2", measuredTemperature: "45 °C", targetTemperature: "25 °C", absoluteCurrentCoefficient: "4 mA/K" }).show(); // "7.809 A"
 * ```
 */
export const procedure1Current = /* @__PURE__ */ formula({
  id: "module/procedure1-current",
  about: "current of a measured point corrected to another irradiance and temperature, procedure 1 of IEC 60891",
  takes: {
    measuredCurrent: { unit: "A", symbol: "I_1", about: "measured current", above: -100, to: 1000, usual: [-1, 100] },
    measuredShortCircuitCurrent: { unit: "A", symbol: "I_SC1", about: "short-circuit current of the measured curve", above: 0, usual: [0.01, 100] },
    measuredIrradiance: { unit: "W/m²", symbol: "G_1", about: "irradiance of the measurement", above: 0, to: 2000, usual: [50, 1500] },
    targetIrradiance: { unit: "W/m²", symbol: "G_2", about: "irradiance to correct to", above: 0, to: 2000, usual: [50, 1500] },
    measuredTemperature: { unit: "°C", symbol: "T_1", about: "cell temperature of the measurement", above: -100, to: 150, usual: [-40, 90] },
    targetTemperature: { unit: "°C", symbol: "T_2", about: "cell temperature to correct to", above: -100, to: 150, usual: [-40, 90] },
    absoluteCurrentCoefficient: { unit: "A/K", symbol: "α_I", about: "absolute temperature coefficient of the short-circuit current at the target irradiance", above: -0.5, below: 0.5, usual: [-0.05, 0.05] },
  },
  gives: { unit: "A", symbol: "I_2" },
  expression: "measuredCurrent + measuredShortCircuitCurrent * (targetIrradiance / measuredIrradiance - 1) + absoluteCurrentCoefficient * (targetTemperature - measuredTemperature)",
  source: [
    { in: "IEC 60891:2021", clause: "correction procedure 1", grade: "memory" },
    { in: "IEC 60891:2009", clause: "correction procedure 1", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "worked corrections of single points with all parameters printed" },
  note: "for changes of irradiance within about 20 %; recalled, not read from the standard; read the standard before an acceptance test depends on it",
});
