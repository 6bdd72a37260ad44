import { formula } from "../../formula/index.js";

/**
 * Slope of the open-circuit voltage of a silicon cell against temperature.
 *
 * @function
 * @example
 * ```ts
 * import { openCircuitVoltageSlope } from "pv-to-grid/module";
 * openCircuitVoltageSlope({ openCircuitVoltage: "0.6 V", bandGapVoltage: "1.2 V", temperatureExponent: 3, cellTemperature: "26.85 °C" }).show({ digits: 2 }); // "-0.0023 V/K"
 * ```
 */
export const openCircuitVoltageSlope = /* @__PURE__ */ formula({
  id: "module/open-circuit-voltage-slope",
  about: "slope of the open-circuit voltage of a silicon cell against temperature",
  takes: {
    openCircuitVoltage: { unit: "V", symbol: "U_OC", about: "open-circuit voltage of one cell", above: 0, to: 3 },
    bandGapVoltage: { unit: "V", symbol: "U_G0", about: "band gap at absolute zero, as a voltage", above: 0, to: 4 },
    temperatureExponent: { unit: "1", symbol: "γ", about: "exponent of temperature in the saturation current", from: 0, to: 6 },
    cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", above: -273.15, to: 150, usual: [-50, 95] },
  },
  constants: {
    absoluteZero: { value: "-273.15", unit: "°C", symbol: "T_0", about: "absolute zero", source: [{ in: "CODATA:2018", clause: "definition of the degree Celsius", grade: "memory" }] },
    boltzmannPerCharge: { value: "0.00008617333262", unit: "V/K", symbol: "k/q", about: "Boltzmann constant over the elementary charge, both exact since 2019", source: [{ in: "CODATA:2018", clause: "k = 1.380649e-23 J/K and q = 1.602176634e-19 C", grade: "reproduced", seen: "Solar cells textbook:2024, notebooks" }] },
  },
  gives: { unit: "V/K", symbol: "dU_OC/dT" },
  expression: "-(bandGapVoltage - openCircuitVoltage + temperatureExponent * boltzmannPerCharge * (cellTemperature - absoluteZero)) / (cellTemperature - absoluteZero)",
  source: [{ in: "PVEducation:undated", clause: "effect of temperature", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked examples in edited publications; the one held is recalled" },
});
