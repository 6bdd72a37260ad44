import { formula } from "../../formula/index.js";

/**
 * Internal series resistance at the cell temperature of a measurement, IEC 60891 (2021).
 *
 * @function
 * @example
 * ```ts
 * import { seriesResistanceAt } from "pv-to-grid/module";
 * seriesResistanceAt({ seriesResistance: "0.3 ohm", curveCorrection: "0.001 ohm", cellTemperature: "45 °C" }).text; // "0.32"
 * ```
 */
export const seriesResistanceAt = /* @__PURE__ */ formula({
  id: "module/series-resistance-at",
  about: "internal series resistance at the cell temperature of a measurement, IEC 60891 (2021)",
  takes: {
    seriesResistance: { unit: "Ω", symbol: "R_s", about: "internal series resistance", from: 0, usual: [0, 50] },
    curveCorrection: { unit: "Ω", symbol: "κ", about: "curve correction factor, for each kelvin", from: -1, to: 1 },
    cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", above: -273.15, to: 150, usual: [-50, 95] },
  },
  constants: {
    stcTemperature: {
      value: "25", unit: "°C", symbol: "T_STC", about: "cell temperature at standard test conditions",
      source: [
        { in: "GSES handout:2011", clause: "worked examples 1 to 3", grade: "original" },
        { in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" },
      ],
    },
    oneKelvin: { value: "1", unit: "K", symbol: "K", about: "unit of the curve correction factor", source: [{ in: "IEC 60891:2021", clause: "correction procedures", grade: "memory" }, { in: "IEC 60891:2009", clause: "correction procedures", grade: "memory" }] },
  },
  gives: { unit: "Ω", symbol: "R_S1" },
  expression: "seriesResistance + curveCorrection * (cellTemperature - stcTemperature) / oneKelvin",
  source: [{ in: "IEC 60891:2021", clause: "correction procedure 2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked corrections of single points with all parameters printed" },
  note: "recalled, not read from the standard; read the standard before an acceptance test depends on it",
});
