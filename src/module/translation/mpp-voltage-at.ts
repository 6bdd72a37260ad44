import { formula } from "../../formula/index.js";

/**
 * Voltage at the maximum power point of a module at a cell temperature.
 *
 * @function
 * @example
 * ```ts
 * import { mppVoltageAt } from "pv-to-grid/module";
 * mppVoltageAt({ mppVoltage: "36.4 V", mppVoltageCoefficient: "-0.4 %/K", cellTemperature: "70 °C" }).text; // "29.848"
 * ```
 */
export const mppVoltageAt = /* @__PURE__ */ formula({
  id: "module/mpp-voltage-at",
  about: "voltage at the maximum power point of a module at a cell temperature",
  takes: {
    mppVoltage: { unit: "V", symbol: "U_MPP,STC", about: "voltage at the maximum power point at standard test conditions", above: 0, usual: [0.3, 180] },
    mppVoltageCoefficient: { unit: "1/K", symbol: "β_UMPP", about: "relative temperature coefficient of the voltage at the maximum power point", above: -0.02, below: 0, usual: [-0.01, -0.001] },
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
  gives: { unit: "V", symbol: "U_MPP" },
  expression: "mppVoltage * (1 + mppVoltageCoefficient * (cellTemperature - stcTemperature))",
  source: [
    { in: "GSES handout:2011", clause: "worked example 1, with the coefficient in V/K", grade: "original" },
  ],
  unproven: { because: "no publication found", sought: "worked examples that print the coefficient of U_MPP in %/K; the absolute form is proven as module/voltage-at" },
  note: "linear; the coefficient must be that of U_MPP, never that of U_OC",
});
