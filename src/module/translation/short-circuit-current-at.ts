import { formula } from "../../formula/index.js";

/**
 * Short-circuit current of a module at a cell temperature.
 *
 * @function
 * @example
 * ```ts
 * import { shortCircuitCurrentAt } from "pv-to-grid/module";
 * shortCircuitCurrentAt({ shortCircuitCurrent: "14.1 A", shortCircuitCurrentCoefficient: "0.05 %/K", cellTemperature: "65 °C" }).text; // "14.382"
 * ```
 */
export const shortCircuitCurrentAt = /* @__PURE__ */ formula({
  id: "module/short-circuit-current-at",
  about: "short-circuit current of a module at a cell temperature",
  takes: {
    shortCircuitCurrent: { unit: "A", symbol: "I_SC,STC", about: "short-circuit current at standard test conditions", above: 0, usual: [0.05, 40] },
    shortCircuitCurrentCoefficient: { unit: "1/K", symbol: "α_ISC", about: "relative temperature coefficient of the short-circuit current", above: -0.01, below: 0.01, usual: [-0.002, 0.003] },
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
  gives: { unit: "A", symbol: "I_SC" },
  expression: "shortCircuitCurrent * (1 + shortCircuitCurrentCoefficient * (cellTemperature - stcTemperature))",
  source: [
    { in: "IEC 60891:2021", clause: "linear temperature correction", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "worked examples of the short-circuit current at a cell temperature" },
  note: "linear",
});
