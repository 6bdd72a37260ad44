import { formula } from "../../formula/index.js";

/**
 * Current at the maximum power point of a module at a cell temperature.
 *
 * @function
 * @example
 * ```ts
 * import { mppCurrentAt } from "pv-to-grid/module";
 * mppCurrentAt({ mppCurrent: "13.42 A", mppCurrentCoefficient: "0.02 %/K", cellTemperature: "75 °C" }).text; // "13.5542"
 * ```
 */
export const mppCurrentAt = /* @__PURE__ */ formula({
  id: "module/mpp-current-at",
  about: "current at the maximum power point of a module at a cell temperature",
  takes: {
    mppCurrent: { unit: "A", symbol: "I_MPP,STC", about: "current at the maximum power point at standard test conditions", above: 0, usual: [0.05, 40] },
    mppCurrentCoefficient: { unit: "1/K", symbol: "α_IMPP", about: "relative temperature coefficient of the current at the maximum power point", above: -0.01, below: 0.01, usual: [-0.003, 0.003] },
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
  gives: { unit: "A", symbol: "I_MPP" },
  expression: "mppCurrent * (1 + mppCurrentCoefficient * (cellTemperature - stcTemperature))",
  source: [
    { in: "IEC 60891:2021", clause: "linear temperature correction", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "worked examples of the current at the maximum power point at a cell temperature" },
  note: "linear",
});
