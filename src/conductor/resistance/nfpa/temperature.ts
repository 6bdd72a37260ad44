import { formula, table } from "../../../formula/index.js";

/**
 * Resistance per length of a conductor at a temperature, from that at 75 °C.
 *
 * @function
 * @example
 * ```ts
 * import { resistanceFrom75 } from "pv-to-grid/conductor";
 * resistanceFrom75({ resistancePerLengthAt75: "6.5 Ω/km", temperatureCoefficientAt75: "0.00323 1/K", conductorTemperature: "50 °C" }).in("Ω/km").text; // "5.975125"
 * ```
 */
export const resistanceFrom75 = /* @__PURE__ */ formula({
  id: "conductor/resistance-from75", about: "resistance per length of a conductor at a temperature, from that at 75 °C",
  takes: {
    resistancePerLengthAt75: { unit: "Ω/m", symbol: "R_75", about: "resistance per length at 75 °C", above: 0, usual: [0.00001, 0.1] },
    temperatureCoefficientAt75: { unit: "1/K", symbol: "α_75", about: "temperature coefficient of resistance at 75 °C", above: 0, below: 0.01, usual: [0.003, 0.004] },
    conductorTemperature: { unit: "°C", symbol: "θ", about: "temperature of the conductor", above: -200, to: 300, usual: [-40, 250] },
  },
  constants: {
    table8Temperature: { value: "75", unit: "°C", symbol: "θ_75", about: "temperature that the table holds for", source: [{ in: "NFPA 70:2017", clause: "chapter 9, table 8, note 2", grade: "copied" }] },
  },
  gives: { unit: "Ω/m", symbol: "R_θ" },
  expression: "resistancePerLengthAt75 * (1 + temperatureCoefficientAt75 * (conductorTemperature - table8Temperature))",
  source: [{ in: "NFPA 70:2017", clause: "chapter 9, table 8, note 2", grade: "copied" }],
  unproven: { because: "no publication found", sought: "resistances at two temperatures with the coefficient of the code" },
});

/**
 * Temperature coefficient of resistance of a conductor metal at 75 °C.
 *
 * @function
 * @example
 * ```ts
 * import { temperatureCoefficientsAt75 } from "pv-to-grid/conductor";
 * temperatureCoefficientsAt75({ conductor: "copper" }).show(); // "0.00323 1/K"
 * ```
 */
export const temperatureCoefficientsAt75 = /* @__PURE__ */ table({
  id: "conductor/temperature-coefficients-at75", about: "temperature coefficient of resistance of a conductor metal at 75 °C",
  rows: { name: "conductor", names: "in the first column" }, rowRule: "exact",
  gives: { unit: "1/K", symbol: "α_75" },
  source: [{ in: "NFPA 70:2017", clause: "chapter 9, table 8, note 2", grade: "copied" }],
  cells: `
    copper     0.00323
    aluminium  0.0033
  `,
});
