import { formula } from "../../formula/index.js";

/**
 * Rated power at a module temperature, over that at a reference temperature. @function
 *
 * @example
 * ```ts
 * import { temperatureRating } from "pv-to-grid/commissioning";
 * temperatureRating({ maximumPowerCoefficient: "-0.3 %/K", moduleTemperature: "45 °C", referenceTemperature: "25 °C" }).text; // "0.94"
 * ```
 */
export const temperatureRating = /* @__PURE__ */ formula({
  id: "commissioning/temperature-rating",
  about: "rated power at a module temperature, over that at a reference temperature",
  takes: {
    maximumPowerCoefficient: { unit: "1/K", symbol: "γ_Pmax", about: "relative temperature coefficient of the maximum power", above: -0.01, below: 0, usual: [-0.009, -0.0005] },
    moduleTemperature: { unit: "°C", symbol: "T_m", about: "temperature of the back of the module", above: -100, to: 150, usual: [-40, 110] },
    referenceTemperature: { unit: "°C", symbol: "T_ref", about: "temperature that the ratio is brought to: 25 °C, or the mean of the year weighted by irradiance", above: -50, to: 100, usual: [-10, 70] },
  },
  gives: { unit: "1", symbol: "C_k" },
  expression: "1 + maximumPowerCoefficient * (moduleTemperature - referenceTemperature)",
  source: [{ in: "IEC 61724-1:2017", clause: "temperature-corrected performance ratio", grade: "memory" }, { in: "Dierauf:2013", clause: "weather-corrected ratio", grade: "memory" }],
  unproven: { because: "no publication found", sought: "weather-corrected performance ratio worked example" },
});

/**
 * Energy that an array without losses gives in an interval, at its module temperature. @function
 *
 * @example
 * ```ts
 * import { intervalEnergy } from "pv-to-grid/commissioning";
 * intervalEnergy({ temperatureRating: "0.94", arrayPower: "10 kW", irradiation: "0.8 kWh/m2" }).text; // "7.52"
 * ```
 */
export const intervalEnergy = /* @__PURE__ */ formula({
  id: "commissioning/interval-energy",
  about: "energy that an array without losses gives in an interval, at its module temperature",
  takes: {
    temperatureRating: { unit: "1", symbol: "C_k", about: "rated power at the module temperature, over that at the reference temperature", above: 0, to: 2, usual: [0.5, 1.3] },
    arrayPower: { unit: "kW", symbol: "P_0", about: "power of the array at standard test conditions", above: 0, usual: [0.3, 100000] },
    irradiation: { unit: "kWh/m²", symbol: "H_i", about: "irradiation in the plane of the array over the period", above: 0, usual: [0.0001, 3000] },
  },
  constants: {
    referenceIrradiance: { value: "1", unit: "kW/m²", symbol: "G_ref", about: "irradiance at which the array is rated", source: [{ in: "IEC 61724-1:2017", clause: "performance ratio", grade: "reproduced", seen: "BNRC 46 article 929:2022, table 4, equations 1 to 3" }, { in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" }] },
  },
  gives: { unit: "kWh", symbol: "E_k" },
  expression: "temperatureRating * arrayPower * irradiation / referenceIrradiance",
  source: [{ in: "IEC 61724-1:2017", clause: "temperature-corrected performance ratio", grade: "memory" }, { in: "Dierauf:2013", clause: "weather-corrected ratio", grade: "memory" }],
  unproven: { because: "no publication found", sought: "weather-corrected performance ratio worked example" },
});

/**
 * Performance ratio brought to a reference temperature. @function
 *
 * @example
 * ```ts
 * import { correctedPerformanceRatio } from "pv-to-grid/commissioning";
 * correctedPerformanceRatio({ energies: ["6.4 kWh"], intervalEnergies: ["7.52 kWh"] }).show(); // "0.8511"
 * ```
 */
export const correctedPerformanceRatio = /* @__PURE__ */ formula({
  id: "commissioning/corrected-performance-ratio",
  about: "performance ratio brought to a reference temperature",
  takes: {
    energies: { each: "kWh", symbol: "E_k", about: "energy of each interval", from: 0 },
    intervalEnergies: { each: "kWh", symbol: "E_ref,k", about: "energy without losses of each interval, at its module temperature", above: 0 },
  },
  gives: { unit: "1", symbol: "PR_corr" },
  expression: "sum(energies) / sum(intervalEnergies)",
  source: [{ in: "IEC 61724-1:2017", clause: "temperature-corrected performance ratio", grade: "memory" }, { in: "Dierauf:2013", clause: "weather-corrected ratio", grade: "memory" }],
  unproven: { because: "no publication found", sought: "weather-corrected performance ratio worked example" },
});
