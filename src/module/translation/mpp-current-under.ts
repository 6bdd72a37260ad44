import { formula } from "../../formula/index.js";

/**
 * Current at the maximum power point of a module at an irradiance and a cell temperature.
 *
 * @function
 * @example
 * ```ts
 * import { mppCurrentUnder } from "pv-to-grid/module";
 * mppCurrentUnder({ mppCurrent: "13.42 A", mppCurrentCoefficient: "0.02 %/K", cellTemperature: "75 °C", irradiance: "500 W/m2" }).text; // "6.7771"
 * ```
 */
export const mppCurrentUnder = /* @__PURE__ */ formula({
  id: "module/mpp-current-under",
  about: "current at the maximum power point of a module at an irradiance and a cell temperature",
  takes: {
    mppCurrent: { unit: "A", symbol: "I_MPP,STC", about: "current at the maximum power point at standard test conditions", above: 0, usual: [0.05, 40] },
    mppCurrentCoefficient: { unit: "1/K", symbol: "α_IMPP", about: "relative temperature coefficient of the current at the maximum power point", above: -0.01, below: 0.01, usual: [-0.003, 0.003] },
    cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", above: -273.15, to: 150, usual: [-50, 95] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", from: 0, to: 2000, usual: [1, 1500] },
  },
  constants: {
    stcTemperature: {
      value: "25", unit: "°C", symbol: "T_STC", about: "cell temperature at standard test conditions",
      source: [
        { in: "GSES handout:2011", clause: "worked examples 1 to 3", grade: "original" },
        { in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" },
      ],
    },
    stcIrradiance: {
      value: "1000", unit: "W/m²", symbol: "G_STC", about: "irradiance at standard test conditions",
      source: [{ in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" }],
    },
  },
  gives: { unit: "A", symbol: "I_MPP" },
  expression: "mppCurrent * irradiance / stcIrradiance * (1 + mppCurrentCoefficient * (cellTemperature - stcTemperature))",
  source: [
    { in: "IEC 60891:2021", clause: "linear temperature correction", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "worked examples of the current at the maximum power point at an irradiance" },
  note: "linear in irradiance and temperature; at low light the series resistance shifts the maximum power point",
});
