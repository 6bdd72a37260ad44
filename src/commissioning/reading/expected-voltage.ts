import { formula } from "../../formula/index.js";

/**
 * Open-circuit voltage that a string should read at a cell temperature. @function
 *
 * @example
 * ```ts
 * import { expectedOpenCircuitVoltage } from "pv-to-grid/commissioning";
 * expectedOpenCircuitVoltage({ modules: 14, openCircuitVoltage: "39.2 V", openCircuitVoltageCoefficient: "-0.26 %/K", cellTemperature: "45 °C" }).text; // "520.2624"
 * ```
 */
export const expectedOpenCircuitVoltage = /* @__PURE__ */ formula({
  id: "commissioning/expected-open-circuit-voltage",
  about: "open-circuit voltage that a string should read at a cell temperature",
  takes: {
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 1, usual: [1, 200] },
    openCircuitVoltage: { unit: "V", symbol: "U_OC,STC", about: "open-circuit voltage at standard test conditions", above: 0, usual: [0.5, 200] },
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
  gives: { unit: "V", symbol: "U_OC" },
  expression: "modules * openCircuitVoltage * (1 + openCircuitVoltageCoefficient * (cellTemperature - stcTemperature))",
  source: [{ in: "Open-circuit voltage clause:undated", clause: "items d and e", grade: "copied" }],
  unproven: { because: "no publication found", sought: "commissioning open-circuit voltage test string expected voltage worked example" },
  note: "near full irradiance; in weaker light the voltage is lower, by about 1.4 % at 800 W/m² where a = 0.06",
});

/**
 * Open-circuit voltage that a string should read at a cell temperature and an irradiance. @function
 *
 * @example
 * ```ts
 * import { expectedOpenCircuitVoltageInLight } from "pv-to-grid/commissioning";
 * expectedOpenCircuitVoltageInLight({ modules: 14, openCircuitVoltage: "39.2 V", openCircuitVoltageCoefficient: "-0.26 %/K", cellTemperature: "45 °C", irradiance: "600 W/m2", irradianceFactor: "0.06" }).show(); // "503.4 V"
 * ```
 */
export const expectedOpenCircuitVoltageInLight = /* @__PURE__ */ formula({
  id: "commissioning/expected-open-circuit-voltage-in-light",
  about: "open-circuit voltage that a string should read at a cell temperature and an irradiance",
  takes: {
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 1, usual: [1, 200] },
    openCircuitVoltage: { unit: "V", symbol: "U_OC,STC", about: "open-circuit voltage at standard test conditions", above: 0, usual: [0.5, 200] },
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
  gives: { unit: "V", symbol: "U_OC" },
  expression: "modules * openCircuitVoltage * (1 + openCircuitVoltageCoefficient * (cellTemperature - stcTemperature) + irradianceFactor * log(irradiance / stcIrradiance))",
  source: [{ in: "IEC 60891:2009", clause: "correction procedure 2, open-circuit voltage", grade: "reproduced", seen: "Metrel MI 3115 manual:undated, p. 73" }],
  unproven: { because: "no publication found", sought: "IEC 60891 irradiance correction factor open-circuit voltage worked example" },
  note: "the standard states the form between two measurements; here the first is the datasheet",
});

/**
 * Irradiance correction factor of the open-circuit voltage that is typical of crystalline silicon. @function
 *
 * @example
 * ```ts
 * import { typicalIrradianceFactor } from "pv-to-grid/commissioning";
 * typicalIrradianceFactor({}).text; // "0.06"
 * ```
 */
export const typicalIrradianceFactor = /* @__PURE__ */ formula({
  id: "commissioning/typical-irradiance-factor",
  about: "irradiance correction factor of the open-circuit voltage that is typical of crystalline silicon",
  takes: {},
  constants: {
    typicalFactor: { value: "0.06", unit: "1", symbol: "a", about: "typical irradiance correction factor", source: [{ in: "Metrel MI 3115 manual:undated", clause: "appendix D, p. 73", grade: "original" }] },
  },
  gives: { unit: "1", symbol: "a" },
  expression: "typicalFactor",
  source: [{ in: "Metrel MI 3115 manual:undated", clause: "appendix D, p. 73", grade: "original" }],
  unproven: { because: "definition" },
  note: "a value of the module type itself is better",
});

/**
 * Voltage that a string should read at its maximum power point. @function
 *
 * @example
 * ```ts
 * import { expectedMppVoltage } from "pv-to-grid/commissioning";
 * expectedMppVoltage({ modules: 14, mppVoltage: "32.8 V", mppVoltageCoefficient: "-0.33 %/K", cellTemperature: "45 °C" }).text; // "428.8928"
 * ```
 */
export const expectedMppVoltage = /* @__PURE__ */ formula({
  id: "commissioning/expected-mpp-voltage",
  about: "voltage that a string should read at its maximum power point",
  takes: {
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 1, usual: [1, 200] },
    mppVoltage: { unit: "V", symbol: "U_MPP,STC", about: "voltage at the maximum power point at standard test conditions", above: 0, usual: [0.3, 180] },
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
  gives: { unit: "V", symbol: "U_MPP" },
  expression: "modules * mppVoltage * (1 + mppVoltageCoefficient * (cellTemperature - stcTemperature))",
  source: [{ in: "common practice", clause: "linear temperature correction of the datasheet value", grade: "common-practice" }],
  unproven: { because: "composition only" },
  note: "while the inverter tracks; a clipping or throttled inverter works above it",
});
