import { formula } from "../../formula/index.js";

/**
 * Change per ampere and metre of a direct-current circuit, from the resistance at 20 °C.
 *
 * @function
 * @example
 * ```ts
 * import { tabulatedDirectDrop } from "pv-to-grid/conductor";
 * tabulatedDirectDrop({ resistancePerLengthAt20: "0.727 Ω/km", temperatureCoefficientAt20: "0.00393 1/K", conductorTemperature: "90 °C" }).show(); // "1.854 mV/(A·m)"
 * ```
 */
export const tabulatedDirectDrop = /* @__PURE__ */ formula({
  id: "conductor/tabulated-direct-drop", about: "change per ampere and metre of a direct-current circuit, from the resistance at 20 °C",
  takes: {
    resistancePerLengthAt20: { unit: "mΩ/m", symbol: "R_20", about: "resistance per length at 20 °C", above: 0, usual: [0.01, 100] },
    temperatureCoefficientAt20: { unit: "1/K", symbol: "α_20", about: "temperature coefficient of resistance at 20 °C", above: 0, to: 0.0045, usual: [0.0035, 0.0045] },
    conductorTemperature: { unit: "°C", symbol: "θ", about: "temperature of the conductor", above: -200, to: 300, usual: [-40, 250] },
  },
  constants: {
    tableTemperature: { value: "20", unit: "°C", symbol: "θ_20", about: "temperature that tables of IEC 60228 hold for", source: [{ in: "IEC 60228:2004", clause: "tables 1 to 3", grade: "reproduced", seen: "Kabelmetal conductor tables:2011, tables 1 and 2" }] },
  },
  gives: { unit: "mV/(A·m)", symbol: "v" },
  expression: "2 * resistancePerLengthAt20 * (1 + temperatureCoefficientAt20 * (conductorTemperature - tableTemperature))",
  source: [{ in: "Shahin cable parameters:undated", clause: "d.c. resistance of conductor", grade: "original" }],
  unproven: { because: "no publication found", sought: "changes per ampere and metre to more digits than the tables; the law guards their cells" },
});

/**
 * Tabulated change by its resistive and reactive parts, whatever the power factor.
 *
 * @function
 * @example
 * ```ts
 * import { tabulatedImpedance } from "pv-to-grid/conductor";
 * tabulatedImpedance({ tabulatedResistive: "0.55 mV/A/m", tabulatedReactive: "0.31 mV/A/m" }).show({ digits: 2 }); // "0.63 mV/(A·m)"
 * ```
 */
export const tabulatedImpedance = /* @__PURE__ */ formula({
  id: "conductor/tabulated-impedance", about: "tabulated change by its resistive and reactive parts, whatever the power factor",
  takes: {
    tabulatedResistive: { unit: "mV/(A·m)", symbol: "r", about: "resistive part", from: 0, usual: [0.01, 200] },
    tabulatedReactive: { unit: "mV/(A·m)", symbol: "x", about: "reactive part", from: 0, usual: [0, 5] },
  },
  gives: { unit: "mV/(A·m)", symbol: "z" },
  expression: "sqrt(tabulatedResistive ^ 2 + tabulatedReactive ^ 2)",
  source: [{ in: "BS 7671:2018", clause: "appendix 4, 6.2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "r, x and z printed to more digits than the tables have" },
});
