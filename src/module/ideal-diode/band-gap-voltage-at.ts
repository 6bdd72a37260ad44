import { formula } from "../../formula/index.js";

/**
 * Band gap of silicon at a cell temperature, as a voltage.
 *
 * @function
 * @example
 * ```ts
 * import { bandGapVoltageAt } from "pv-to-grid/module";
 * bandGapVoltageAt({ cellTemperature: "25 °C" }).text; // "1.121"
 * ```
 */
export const bandGapVoltageAt = /* @__PURE__ */ formula({
  id: "module/band-gap-voltage-at",
  about: "band gap of silicon at a cell temperature, as a voltage",
  takes: {
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
    bandGapAtStc: { value: "1.121", unit: "V", symbol: "E_g,STC/q", about: "band gap of silicon at 25 °C over the elementary charge", source: [{ in: "De Soto:2006", clause: "band gap of silicon", grade: "copied", seen: "Solar engineering functions:undated" }, { in: "Solar cells textbook:2024", clause: "notebooks", grade: "copied" }] },
    bandGapCoefficient: { value: "-0.0002677", unit: "1/K", symbol: "C", about: "relative temperature coefficient of the band gap of silicon", source: [{ in: "De Soto:2006", clause: "band gap of silicon", grade: "copied", seen: "Solar engineering functions:undated" }, { in: "Solar cells textbook:2024", clause: "notebooks", grade: "copied" }] },
  },
  gives: { unit: "V", symbol: "E_g/q" },
  expression: "bandGapAtStc * (1 + bandGapCoefficient * (cellTemperature - stcTemperature))",
  source: [{ in: "De Soto:2006", clause: "band gap of silicon", grade: "copied", seen: "Solar engineering functions:undated" }],
  unproven: { because: "no publication found", sought: "printed band gaps at other temperatures" },
});
