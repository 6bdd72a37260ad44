import { formula } from "../../formula/index.js";

/**
 * Conductivity of a conductor metal at a temperature.
 *
 * @function
 * @example
 * ```ts
 * import { conductivityAtTemperature } from "pv-to-grid/conductor";
 * conductivityAtTemperature({ conductivityAt20: "58 m/(ohm*mm2)", temperatureCoefficientAt20: "0.00393 1/K", conductorTemperature: "90 °C" }).show({ digits: 3 }); // "45.5 m/(Ω·mm²)"
 * ```
 */
export const conductivityAtTemperature = /* @__PURE__ */ formula({
  id: "conductor/conductivity-at-temperature", about: "conductivity of a conductor metal at a temperature",
  takes: {
    conductivityAt20: { unit: "m/(Ω·mm²)", symbol: "γ_20", about: "conductivity at 20 °C", above: 0, usual: [20, 60] },
    temperatureCoefficientAt20: { unit: "1/K", symbol: "α_20", about: "temperature coefficient of resistance at 20 °C", above: 0, to: 0.0045, usual: [0.0035, 0.0045] },
    conductorTemperature: { unit: "°C", symbol: "θ", about: "temperature of the conductor", above: -200, to: 300, usual: [-40, 250] },
  },
  constants: {
    resistivityTemperature: { value: "20", unit: "°C", symbol: "θ_20", about: "temperature of the resistivity", source: [{ in: "common practice", clause: "reference temperature of resistivities", grade: "common-practice" }] },
  },
  gives: { unit: "m/(Ω·mm²)", symbol: "γ" },
  expression: "conductivityAt20 / (1 + temperatureCoefficientAt20 * (conductorTemperature - resistivityTemperature))",
  source: [{ in: "Prysmian low-voltage catalogue:undated", clause: "chapter K, p. 97", grade: "original" }],
});

/**
 * Resistivity of a conductor metal at a temperature.
 *
 * @function
 * @example
 * ```ts
 * import { resistivityAtTemperature } from "pv-to-grid/conductor";
 * resistivityAtTemperature({ conductivityAt20: "58 m/(ohm*mm2)", temperatureCoefficientAt20: "0.00393 1/K", conductorTemperature: "82.55 °C" }).show({ digits: 3 }); // "0.0215 Ω·mm²/m"
 * ```
 */
export const resistivityAtTemperature = /* @__PURE__ */ formula({
  id: "conductor/resistivity-at-temperature", about: "resistivity of a conductor metal at a temperature",
  takes: {
    conductivityAt20: { unit: "m/(Ω·mm²)", symbol: "γ_20", about: "conductivity at 20 °C", above: 0, usual: [20, 60] },
    temperatureCoefficientAt20: { unit: "1/K", symbol: "α_20", about: "temperature coefficient of resistance at 20 °C", above: 0, to: 0.0045, usual: [0.0035, 0.0045] },
    conductorTemperature: { unit: "°C", symbol: "θ", about: "temperature of the conductor", above: -200, to: 300, usual: [-40, 250] },
  },
  constants: {
    resistivityTemperature: { value: "20", unit: "°C", symbol: "θ_20", about: "temperature of the resistivity", source: [{ in: "common practice", clause: "reference temperature of resistivities", grade: "common-practice" }] },
  },
  gives: { unit: "Ω·mm²/m", symbol: "ρ_θ" },
  expression: "(1 + temperatureCoefficientAt20 * (conductorTemperature - resistivityTemperature)) / conductivityAt20",
  source: [{ in: "Prysmian low-voltage catalogue:undated", clause: "chapter K, p. 97", grade: "original" }],
});

/**
 * Cross-section of two conductors for a voltage change by the conductivity.
 *
 * @function
 * @example
 * ```ts
 * import { sectionByConductivity } from "pv-to-grid/conductor";
 * sectionByConductivity({ length: "20 m", activePower: "4.6 kW", conductivity: "48 m/(ohm*mm2)", voltageChange: "3.45 V", nominalVoltage: "230 V" }).show(); // "4.831 mm²"
 * ```
 */
export const sectionByConductivity = /* @__PURE__ */ formula({
  id: "conductor/section-by-conductivity", about: "cross-section of two conductors for a voltage change by the conductivity",
  takes: {
    length: { unit: "m", symbol: "L", about: "length one way", above: 0, usual: [0.1, 10000] },
    activePower: { unit: "W", symbol: "P", about: "active power", above: 0, usual: [1, 1000000] },
    conductivity: { unit: "m/(Ω·mm²)", symbol: "γ", about: "conductivity at the temperature", above: 0, usual: [20, 60] },
    voltageChange: { unit: "V", symbol: "ΔU", about: "voltage change", above: 0, usual: [0.01, 500] },
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage between the same conductors", above: 0, usual: [12, 1500] },
  },
  gives: { unit: "mm²", symbol: "S" },
  expression: "2 * length * activePower / (conductivity * voltageChange * nominalVoltage)",
  source: [{ in: "Hi-Tech Controls formulas:undated", clause: "cross-section", grade: "original" }],
  unproven: { because: "no publication found", sought: "printed sections by power, length and conductivity" },
});
