import { formula } from "../../formula/index.js";

/**
 * Voltage of a module at a cell temperature, by an absolute coefficient.
 *
 * @function
 * @example
 * ```ts
 * import { voltageAt } from "pv-to-grid/module";
 * voltageAt({ stcVoltage: "36.4 V", absoluteVoltageCoefficient: "-0.17 V/K", cellTemperature: "70 °C" }).text; // "28.75"
 * ```
 */
export const voltageAt = /* @__PURE__ */ formula({
  id: "module/voltage-at",
  about: "voltage of a module at a cell temperature, by an absolute coefficient",
  takes: {
    stcVoltage: { unit: "V", symbol: "U_STC", about: "voltage at standard test conditions that the coefficient is stated for", above: 0, usual: [0.3, 200] },
    absoluteVoltageCoefficient: { unit: "V/K", symbol: "β_U", about: "absolute temperature coefficient of the voltage", above: -5, below: 1, usual: [-1, 0] },
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
  },
  gives: { unit: "V", symbol: "U" },
  expression: "stcVoltage + absoluteVoltageCoefficient * (cellTemperature - stcTemperature)",
  source: [
    { in: "GSES handout:2011", clause: "worked examples 1 to 3", grade: "original" },
  ],
  note: "the coefficient must belong to the same voltage",
});
