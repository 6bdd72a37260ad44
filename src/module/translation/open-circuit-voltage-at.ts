import { formula } from "../../formula/index.js";

/**
 * Open-circuit voltage of a module at a cell temperature.
 *
 * @function
 * @example
 * ```ts
 * import { openCircuitVoltageAt } from "pv-to-grid/module";
 * openCircuitVoltageAt({ openCircuitVoltage: "49.8 V", openCircuitVoltageCoefficient: "-0.27 %/K", cellTemperature: "-10 °C" }).text; // "54.5061"
 * ```
 */
export const openCircuitVoltageAt = /* @__PURE__ */ formula({
  id: "module/open-circuit-voltage-at",
  about: "open-circuit voltage of a module at a cell temperature",
  takes: {
    openCircuitVoltage: { unit: "V", symbol: "U_OC,STC", about: "open-circuit voltage at standard test conditions", above: 0, usual: [0.5, 200] },
    openCircuitVoltageCoefficient: { unit: "1/K", symbol: "β_UOC", about: "relative temperature coefficient of the open-circuit voltage", above: -0.01, below: 0, usual: [-0.006, -0.001] },
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
  gives: { unit: "V", symbol: "U_OC" },
  expression: "openCircuitVoltage * (1 + openCircuitVoltageCoefficient * (cellTemperature - stcTemperature))",
  source: [
    { in: "Oscaro Power note:undated", clause: "detailed calculation", grade: "original" },
    { in: "IEC 62548-1:2023", clause: "maximum voltage of the PV array", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "worked examples that print the coefficient in %/K and every other input; those found are recalled or wrong; the absolute form is proven as module/voltage-at" },
  note: "linear; for crystalline silicon within about −40 °C to 85 °C of cell temperature",
});
