import { formula } from "../../formula/index.js";

/**
 * Measured short-circuit current, brought to standard test conditions. @function
 *
 * @example
 * ```ts
 * import { shortCircuitCurrentAtStandard } from "pv-to-grid/commissioning";
 * shortCircuitCurrentAtStandard({ measuredCurrent: "11.3928 A", irradiance: "800 W/m2", shortCircuitCurrentCoefficient: "0.05 %/K", cellTemperature: "45 °C" }).show(); // "14.1 A"
 * ```
 */
export const shortCircuitCurrentAtStandard = /* @__PURE__ */ formula({
  id: "commissioning/short-circuit-current-at-standard",
  about: "measured short-circuit current, brought to standard test conditions",
  takes: {
    measuredCurrent: { unit: "A", symbol: "I_1", about: "measured current", from: 0, to: 1000, usual: [0, 100] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", above: 0, to: 2000, usual: [50, 1500] },
    shortCircuitCurrentCoefficient: { unit: "1/K", symbol: "α_ISC", about: "relative temperature coefficient of the short-circuit current", above: -0.005, below: 0.005, usual: [-0.002, 0.003] },
    cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", above: -100, to: 120, usual: [-50, 95] },
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
  gives: { unit: "A", symbol: "I_SC,STC" },
  expression: "measuredCurrent * stcIrradiance / irradiance / (1 + shortCircuitCurrentCoefficient * (cellTemperature - stcTemperature))",
  source: [{ in: "IEC 60891:2021", clause: "linear correction, short-circuit current", grade: "memory" }],
  unproven: { because: "no publication found", sought: "measured string current corrected to STC irradiance worked example" },
  note: "inverse of the expected current",
});

/**
 * Measured current at the maximum power point, brought to standard test conditions. @function
 *
 * @example
 * ```ts
 * import { mppCurrentAtStandard } from "pv-to-grid/commissioning";
 * mppCurrentAtStandard({ measuredCurrent: "6.7771 A", irradiance: "500 W/m2", mppCurrentCoefficient: "0.02 %/K", cellTemperature: "75 °C" }).show(); // "13.42 A"
 * ```
 */
export const mppCurrentAtStandard = /* @__PURE__ */ formula({
  id: "commissioning/mpp-current-at-standard",
  about: "measured current at the maximum power point, brought to standard test conditions",
  takes: {
    measuredCurrent: { unit: "A", symbol: "I_1", about: "measured current", from: 0, to: 1000, usual: [0, 100] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", above: 0, to: 2000, usual: [50, 1500] },
    mppCurrentCoefficient: { unit: "1/K", symbol: "α_IMPP", about: "relative temperature coefficient of the current at the maximum power point", above: -0.005, below: 0.005, usual: [-0.003, 0.003] },
    cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", above: -100, to: 120, usual: [-50, 95] },
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
  gives: { unit: "A", symbol: "I_MPP,STC" },
  expression: "measuredCurrent * stcIrradiance / irradiance / (1 + mppCurrentCoefficient * (cellTemperature - stcTemperature))",
  source: [{ in: "IEC 60891:2021", clause: "linear correction", grade: "memory" }],
  unproven: { because: "no publication found", sought: "measured string current corrected to STC irradiance worked example" },
  note: "inverse of the expected current",
});

/**
 * Measured power, brought to standard test conditions. @function
 *
 * @example
 * ```ts
 * import { maximumPowerAtStandard } from "pv-to-grid/commissioning";
 * maximumPowerAtStandard({ measuredPower: "4622.464 W", irradiance: "800 W/m2", maximumPowerCoefficient: "-0.31 %/K", cellTemperature: "45 °C" }).show(); // "6160 W"
 * ```
 */
export const maximumPowerAtStandard = /* @__PURE__ */ formula({
  id: "commissioning/maximum-power-at-standard",
  about: "measured power, brought to standard test conditions",
  takes: {
    measuredPower: { unit: "W", symbol: "P_1", about: "measured power", from: 0 },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", above: 0, to: 2000, usual: [50, 1500] },
    maximumPowerCoefficient: { unit: "1/K", symbol: "γ_Pmax", about: "relative temperature coefficient of the maximum power", above: -0.01, below: 0, usual: [-0.009, -0.0005] },
    cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", above: -100, to: 120, usual: [-50, 95] },
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
  gives: { unit: "W", symbol: "P_max,STC" },
  expression: "measuredPower * stcIrradiance / irradiance / (1 + maximumPowerCoefficient * (cellTemperature - stcTemperature))",
  source: [{ in: "IEC 60891:2021", clause: "linear correction", grade: "memory" }],
  unproven: { because: "no publication found", sought: "measured array power corrected to STC worked example" },
  note: "inverse of the expected power",
});
