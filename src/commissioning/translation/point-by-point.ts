import { formula } from "../../formula/index.js";

/**
 * Current of a measured point at another irradiance and temperature, by ratios. @function
 *
 * @example
 * ```ts
 * import { pointByPointCurrent } from "pv-to-grid/commissioning";
 * pointByPointCurrent({ measuredCurrent: "7 A", measuredIrradiance: "800 W/m2", targetIrradiance: "1000 W/m2", measuredTemperature: "45 °C", targetTemperature: "25 °C", shortCircuitCurrentCoefficient: "0.05 %/K" }).text; // "8.6625"
 * ```
 */
export const pointByPointCurrent = /* @__PURE__ */ formula({
  id: "commissioning/point-by-point-current",
  about: "current of a measured point at another irradiance and temperature, by ratios",
  takes: {
    measuredCurrent: { unit: "A", symbol: "I_1", about: "measured current", from: 0, to: 1000, usual: [0, 100] },
    measuredIrradiance: { unit: "W/m²", symbol: "G_1", about: "irradiance of the measurement", above: 0, to: 2000, usual: [50, 1500] },
    targetIrradiance: { unit: "W/m²", symbol: "G_2", about: "irradiance to correct to", above: 0, to: 2000, usual: [50, 1500] },
    measuredTemperature: { unit: "°C", symbol: "T_1", about: "cell temperature of the measurement", above: -100, to: 150, usual: [-40, 90] },
    targetTemperature: { unit: "°C", symbol: "T_2", about: "cell temperature to correct to", above: -100, to: 150, usual: [-40, 90] },
    shortCircuitCurrentCoefficient: { unit: "1/K", symbol: "α_ISC", about: "relative temperature coefficient of the short-circuit current", above: -0.005, below: 0.005, usual: [-0.002, 0.003] },
  },
  gives: { unit: "A", symbol: "I_2" },
  expression: "measuredCurrent * targetIrradiance / measuredIrradiance * (1 + shortCircuitCurrentCoefficient * (targetTemperature - measuredTemperature))",
  source: [{ in: "Anderson:1996", clause: "translation equations", grade: "memory" }],
  unproven: { because: "no publication found", sought: "Anderson ASTM E1036 translation equations worked example" },
  note: "the practice of ASTM E1036; recalled, not read",
});

/**
 * Voltage of a measured point at another irradiance and temperature, by ratios. @function
 *
 * @example
 * ```ts
 * import { pointByPointVoltage } from "pv-to-grid/commissioning";
 * pointByPointVoltage({ measuredVoltage: "30 V", measuredIrradiance: "800 W/m2", targetIrradiance: "1000 W/m2", measuredTemperature: "45 °C", targetTemperature: "25 °C", openCircuitVoltageCoefficient: "-0.3 %/K", irradianceFactor: "0.06" }).show(); // "32.23 V"
 * ```
 */
export const pointByPointVoltage = /* @__PURE__ */ formula({
  id: "commissioning/point-by-point-voltage",
  about: "voltage of a measured point at another irradiance and temperature, by ratios",
  takes: {
    measuredVoltage: { unit: "V", symbol: "U_1", about: "measured voltage", above: 0, to: 3000, usual: [0.3, 1500] },
    measuredIrradiance: { unit: "W/m²", symbol: "G_1", about: "irradiance of the measurement", above: 0, to: 2000, usual: [50, 1500] },
    targetIrradiance: { unit: "W/m²", symbol: "G_2", about: "irradiance to correct to", above: 0, to: 2000, usual: [50, 1500] },
    measuredTemperature: { unit: "°C", symbol: "T_1", about: "cell temperature of the measurement", above: -100, to: 150, usual: [-40, 90] },
    targetTemperature: { unit: "°C", symbol: "T_2", about: "cell temperature to correct to", above: -100, to: 150, usual: [-40, 90] },
    openCircuitVoltageCoefficient: { unit: "1/K", symbol: "β_UOC", about: "relative temperature coefficient of the open-circuit voltage", above: -0.01, below: 0, usual: [-0.006, -0.001] },
    irradianceFactor: { unit: "1", symbol: "a", about: "irradiance correction factor of the open-circuit voltage", from: 0, to: 0.3 },
  },
  gives: { unit: "V", symbol: "U_2" },
  expression: "measuredVoltage * (1 + openCircuitVoltageCoefficient * (targetTemperature - measuredTemperature)) * (1 + irradianceFactor * log(targetIrradiance / measuredIrradiance))",
  source: [{ in: "Anderson:1996", clause: "translation equations", grade: "memory" }],
  unproven: { because: "no publication found", sought: "Anderson ASTM E1036 translation equations worked example" },
  note: "the practice of ASTM E1036; recalled, not read",
});
