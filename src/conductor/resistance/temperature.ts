import { formula } from "../../formula/index.js";

/**
 * Resistance per length of a conductor at a temperature.
 *
 * @function
 * @example
 * ```ts
 * import { resistanceAtTemperature } from "pv-to-grid/conductor";
 * resistanceAtTemperature({ resistancePerLengthAt20: "4.61 Ω/km", temperatureCoefficientAt20: "0.00393 1/K", conductorTemperature: "70 °C" }).in("Ω/km").text; // "5.515865"
 * ```
 */
export const resistanceAtTemperature = /* @__PURE__ */ formula({
  id: "conductor/resistance-at-temperature", about: "resistance per length of a conductor at a temperature",
  takes: {
    resistancePerLengthAt20: { unit: "Ω/m", symbol: "R_20", about: "resistance per length at 20 °C", above: 0, usual: [0.00001, 0.1] },
    temperatureCoefficientAt20: { unit: "1/K", symbol: "α_20", about: "temperature coefficient of resistance at 20 °C", above: 0, to: 0.0045, usual: [0.0035, 0.0045] },
    conductorTemperature: { unit: "°C", symbol: "θ", about: "temperature of the conductor", above: -200, to: 300, usual: [-40, 250] },
  },
  constants: {
    tableTemperature: { value: "20", unit: "°C", symbol: "θ_20", about: "temperature that tables of IEC 60228 hold for", source: [{ in: "IEC 60228:2004", clause: "tables 1 to 3", grade: "reproduced", seen: "Kabelmetal conductor tables:2011, tables 1 and 2" }] },
  },
  gives: { unit: "Ω/m", symbol: "R_θ" },
  expression: "resistancePerLengthAt20 * (1 + temperatureCoefficientAt20 * (conductorTemperature - tableTemperature))",
  source: [{ in: "Shahin cable parameters:undated", clause: "d.c. resistance of conductor", grade: "original" }],
  unproven: { because: "no publication found", sought: "resistances at two temperatures with the coefficient; a British table guards the law" },
});

/**
 * Resistance per length at 20 °C from the resistance at a temperature.
 *
 * @function
 * @example
 * ```ts
 * import { resistanceAt20 } from "pv-to-grid/conductor";
 * resistanceAt20({ resistancePerLength: "5.515865 Ω/km", temperatureCoefficientAt20: "0.00393 1/K", conductorTemperature: "70 °C" }).in("Ω/km").text; // "4.61"
 * ```
 */
export const resistanceAt20 = /* @__PURE__ */ formula({
  id: "conductor/resistance-at-20", about: "resistance per length at 20 °C from the resistance at a temperature",
  takes: {
    resistancePerLength: { unit: "Ω/m", symbol: "R_θ", about: "resistance per length at the temperature", above: 0, usual: [0.00001, 0.1] },
    temperatureCoefficientAt20: { unit: "1/K", symbol: "α_20", about: "temperature coefficient of resistance at 20 °C", above: 0, to: 0.0045, usual: [0.0035, 0.0045] },
    conductorTemperature: { unit: "°C", symbol: "θ", about: "temperature of the conductor", above: -200, to: 300, usual: [-40, 250] },
  },
  constants: {
    tableTemperature: { value: "20", unit: "°C", symbol: "θ_20", about: "temperature that tables of IEC 60228 hold for", source: [{ in: "IEC 60228:2004", clause: "tables 1 to 3", grade: "reproduced", seen: "Kabelmetal conductor tables:2011, tables 1 and 2" }] },
  },
  gives: { unit: "Ω/m", symbol: "R_20" },
  expression: "resistancePerLength / (1 + temperatureCoefficientAt20 * (conductorTemperature - tableTemperature))",
  source: [{ in: "uecables conductor page:undated", clause: "factor for measurements at other temperatures", grade: "original" }],
  unproven: { because: "no publication found", sought: "resistances at two temperatures with the coefficient" },
});

/**
 * Temperature of a conductor under load.
 *
 * @function
 * @example
 * ```ts
 * import { conductorTemperatureAtLoad } from "pv-to-grid/conductor";
 * conductorTemperatureAtLoad({ ambient: "30 °C", conductorLimit: "70 °C", current: "20 A", ampacity: "40 A" }).text; // "40"
 * ```
 */
export const conductorTemperatureAtLoad = /* @__PURE__ */ formula({
  id: "conductor/conductor-temperature-at-load", about: "temperature of a conductor under load",
  takes: {
    ambient: { unit: "°C", symbol: "θ_a", about: "temperature around the cable", above: -273.15, to: 150, usual: [-40, 90] },
    conductorLimit: { unit: "°C", symbol: "θ_max", about: "temperature that the ampacity holds for", above: 0, to: 300, usual: [60, 150] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    ampacity: { unit: "A", symbol: "I_z", about: "ampacity as laid, corrected to the ambient and the group", above: 0, usual: [1, 5000] },
  },
  requires: [{ that: "ambient < conductorLimit", because: "the surroundings must be cooler than the conductor may become" }],
  gives: { unit: "°C", symbol: "θ" },
  expression: "ambient + (conductorLimit - ambient) * (current / ampacity) ^ 2",
  source: [{ in: "Prysmian low-voltage catalogue:undated", clause: "chapter K, p. 97", grade: "original" }],
  unproven: { because: "no publication found", sought: "conductor temperatures with ambient, current and capacity on one page" },
});
