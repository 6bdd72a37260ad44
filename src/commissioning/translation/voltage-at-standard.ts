import { formula } from "../../formula/index.js";

/**
 * Measured open-circuit voltage, brought to standard test conditions by its cell temperature. @function
 *
 * @example
 * ```ts
 * import { openCircuitVoltageAtStandard } from "pv-to-grid/commissioning";
 * openCircuitVoltageAtStandard({ measuredVoltage: "520.2624 V", openCircuitVoltageCoefficient: "-0.26 %/K", cellTemperature: "45 °C" }).show(); // "548.8 V"
 * ```
 */
export const openCircuitVoltageAtStandard = /* @__PURE__ */ formula({
  id: "commissioning/open-circuit-voltage-at-standard",
  about: "measured open-circuit voltage, brought to standard test conditions by its cell temperature",
  takes: {
    measuredVoltage: { unit: "V", symbol: "U_1", about: "measured voltage", above: 0, to: 3000, usual: [0.3, 1500] },
    openCircuitVoltageCoefficient: { unit: "1/K", symbol: "β_UOC", about: "relative temperature coefficient of the open-circuit voltage", above: -0.01, below: 0, usual: [-0.006, -0.001] },
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
  },
  gives: { unit: "V", symbol: "U_OC,STC" },
  expression: "measuredVoltage / (1 + openCircuitVoltageCoefficient * (cellTemperature - stcTemperature))",
  source: [{ in: "Open-circuit voltage clause:undated", clause: "items d and e", grade: "copied" }],
  unproven: { because: "no publication found", sought: "measured string open-circuit voltage corrected to STC worked example" },
  note: "inverse of the expected voltage",
});

/**
 * Measured open-circuit voltage, brought to standard test conditions by its cell temperature and irradiance. @function
 *
 * @example
 * ```ts
 * import { openCircuitVoltageInLightAtStandard } from "pv-to-grid/commissioning";
 * openCircuitVoltageInLightAtStandard({ measuredVoltage: "503.4 V", openCircuitVoltageCoefficient: "-0.26 %/K", cellTemperature: "45 °C", irradiance: "600 W/m2", irradianceFactor: "0.06" }).show(); // "548.8 V"
 * ```
 */
export const openCircuitVoltageInLightAtStandard = /* @__PURE__ */ formula({
  id: "commissioning/open-circuit-voltage-in-light-at-standard",
  about: "measured open-circuit voltage, brought to standard test conditions by its cell temperature and irradiance",
  takes: {
    measuredVoltage: { unit: "V", symbol: "U_1", about: "measured voltage", above: 0, to: 3000, usual: [0.3, 1500] },
    openCircuitVoltageCoefficient: { unit: "1/K", symbol: "β_UOC", about: "relative temperature coefficient of the open-circuit voltage", above: -0.01, below: 0, usual: [-0.006, -0.001] },
    cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", above: -100, to: 120, usual: [-50, 95] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", above: 0, to: 2000, usual: [50, 1500] },
    irradianceFactor: { unit: "1", symbol: "a", about: "irradiance correction factor of the open-circuit voltage", from: 0, to: 0.3 },
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
  requires: [{ that: "1 + openCircuitVoltageCoefficient * (cellTemperature - stcTemperature) + irradianceFactor * log(irradiance / stcIrradiance) > 0", because: "the voltage would vanish in this light" }],
  gives: { unit: "V", symbol: "U_OC,STC" },
  expression: "measuredVoltage / (1 + openCircuitVoltageCoefficient * (cellTemperature - stcTemperature) + irradianceFactor * log(irradiance / stcIrradiance))",
  source: [{ in: "IEC 60891:2009", clause: "correction procedure 2, open-circuit voltage", grade: "reproduced", seen: "Metrel MI 3115 manual:undated, p. 73" }],
  unproven: { because: "no publication found", sought: "measured string open-circuit voltage corrected to STC worked example" },
  note: "inverse of the expected voltage",
});

/**
 * Measured voltage at the maximum power point, brought to standard test conditions. @function
 *
 * @example
 * ```ts
 * import { mppVoltageAtStandard } from "pv-to-grid/commissioning";
 * mppVoltageAtStandard({ measuredVoltage: "428.8928 V", mppVoltageCoefficient: "-0.33 %/K", cellTemperature: "45 °C" }).show(); // "459.2 V"
 * ```
 */
export const mppVoltageAtStandard = /* @__PURE__ */ formula({
  id: "commissioning/mpp-voltage-at-standard",
  about: "measured voltage at the maximum power point, brought to standard test conditions",
  takes: {
    measuredVoltage: { unit: "V", symbol: "U_1", about: "measured voltage", above: 0, to: 3000, usual: [0.3, 1500] },
    mppVoltageCoefficient: { unit: "1/K", symbol: "β_UMPP", about: "relative temperature coefficient of the voltage at the maximum power point", above: -0.01, below: 0, usual: [-0.009, -0.001] },
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
  },
  gives: { unit: "V", symbol: "U_MPP,STC" },
  expression: "measuredVoltage / (1 + mppVoltageCoefficient * (cellTemperature - stcTemperature))",
  source: [{ in: "common practice", clause: "linear temperature correction of the datasheet value", grade: "common-practice" }],
  unproven: { because: "composition only" },
  note: "inverse of the expected voltage",
});
