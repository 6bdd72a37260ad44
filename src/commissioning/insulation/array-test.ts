import { formula } from "../../formula/index.js";

/**
 * Voltage by which the insulation test of an array is chosen. @function
 *
 * @example
 * ```ts
 * import { insulationSystemVoltage } from "pv-to-grid/commissioning";
 * insulationSystemVoltage({ stcStringVoltage: "548.8 V" }).text; // "686"
 * ```
 */
export const insulationSystemVoltage = /* @__PURE__ */ formula({
  id: "commissioning/insulation-system-voltage",
  about: "voltage by which the insulation test of an array is chosen",
  takes: {
    stcStringVoltage: { unit: "V", symbol: "U_OC,string", about: "open-circuit voltage of the longest string at standard test conditions", above: 0, usual: [10, 1500] },
  },
  constants: {
    coldMargin: { value: "1.25", unit: "1", symbol: "1.25", about: "margin on the open-circuit voltage", source: [{ in: "IEC 62446:2009", clause: "5.4.7", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.7" }] },
  },
  gives: { unit: "V", symbol: "U_sys" },
  expression: "coldMargin * stcStringVoltage",
  source: [{ in: "IEC 62446:2009", clause: "5.4.7", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.7" }],
  unproven: { because: "definition" },
});

/**
 * Direct voltage of the insulation test of an array, up to 1000 V. @function
 *
 * @example
 * ```ts
 * import { arrayTestVoltage } from "pv-to-grid/commissioning";
 * arrayTestVoltage({ systemVoltage: "686 V" }).text; // "1000"
 * ```
 */
export const arrayTestVoltage = /* @__PURE__ */ formula({
  id: "commissioning/array-test-voltage",
  about: "direct voltage of the insulation test of an array, up to 1000 V",
  takes: {
    systemVoltage: { unit: "V", symbol: "U_sys", about: "system voltage: 1.25 times the open-circuit voltage at standard test conditions", above: 0, to: 1000, usual: [10, 1000] },
  },
  constants: {
    lowStep: { value: "120", unit: "V", symbol: "120 V", about: "system voltage from which the middle test applies", source: [{ in: "IEC 62446:2009", clause: "5.4.7", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.7" }] },
    lowTest: { value: "250", unit: "V", symbol: "250 V", about: "lowest test voltage", source: [{ in: "IEC 62446:2009", clause: "5.4.7", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.7" }] },
    middleStep: { value: "500", unit: "V", symbol: "500 V", about: "system voltage up to which the middle test applies", source: [{ in: "IEC 62446:2009", clause: "5.4.7", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.7" }] },
    middleTest: { value: "500", unit: "V", symbol: "500 V", about: "middle test voltage", source: [{ in: "IEC 62446:2009", clause: "5.4.7", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.7" }] },
    highTest: { value: "1000", unit: "V", symbol: "1000 V", about: "test voltage of systems above 500 V", source: [{ in: "IEC 62446:2009", clause: "5.4.7", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.7" }] },
  },
  gives: { unit: "V", symbol: "U_test" },
  expression: "systemVoltage < lowStep ? lowTest : systemVoltage <= middleStep ? middleTest : highTest",
  source: [{ in: "IEC 62446:2009", clause: "5.4.7", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.7" }, { in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEC 62446 insulation test worked example of an array" },
});

/**
 * Direct voltage of the insulation test of an array above 1000 V. @function
 *
 * @example
 * ```ts
 * import { arrayTestVoltageAbove1000 } from "pv-to-grid/commissioning";
 * arrayTestVoltageAbove1000({ systemVoltage: "1250 V" }).text; // "1500"
 * ```
 */
export const arrayTestVoltageAbove1000 = /* @__PURE__ */ formula({
  id: "commissioning/array-test-voltage-above1000",
  about: "direct voltage of the insulation test of an array above 1000 V",
  takes: {
    systemVoltage: { unit: "V", symbol: "U_sys", about: "system voltage: 1.25 times the open-circuit voltage at standard test conditions", above: 1000, to: 3000, usual: [1001, 1875] },
  },
  constants: {
    highestTest: { value: "1500", unit: "V", symbol: "1500 V", about: "test voltage of systems above 1000 V", source: [{ in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }] },
  },
  gives: { unit: "V", symbol: "U_test" },
  expression: "highestTest",
  source: [{ in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEC 62446-1 insulation test 1500 V" },
});

/**
 * Least insulation resistance of an array from 120 V. @function
 *
 * @example
 * ```ts
 * import { arrayInsulationMinimum } from "pv-to-grid/commissioning";
 * arrayInsulationMinimum({ systemVoltage: "686 V" }).text; // "1"
 * ```
 */
export const arrayInsulationMinimum = /* @__PURE__ */ formula({
  id: "commissioning/array-insulation-minimum",
  about: "least insulation resistance of an array from 120 V",
  takes: {
    systemVoltage: { unit: "V", symbol: "U_sys", about: "system voltage: 1.25 times the open-circuit voltage at standard test conditions", from: 120, to: 3000, usual: [120, 1875] },
  },
  constants: {
    leastResistance: { value: "1", unit: "MΩ", symbol: "1 MΩ", about: "least insulation resistance above 120 V", source: [{ in: "IEC 61557-2:undated", clause: "least insulation resistance", grade: "reproduced", seen: "HT PV tester manual:undated, p. 23" }, { in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }] },
  },
  gives: { unit: "MΩ", symbol: "R_iso,min" },
  expression: "leastResistance",
  source: [{ in: "IEC 61557-2:undated", clause: "least insulation resistance", grade: "reproduced", seen: "HT PV tester manual:undated, p. 23" }, { in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }],
  unproven: { because: "definition" },
  note: "the manual ascribes the value to IEC 61557-2",
});

/**
 * Least insulation resistance of an array below 120 V. @function
 *
 * @example
 * ```ts
 * import { arrayInsulationMinimumBelow120 } from "pv-to-grid/commissioning";
 * arrayInsulationMinimumBelow120({ systemVoltage: "100 V" }).text; // "0.5"
 * ```
 */
export const arrayInsulationMinimumBelow120 = /* @__PURE__ */ formula({
  id: "commissioning/array-insulation-minimum-below120",
  about: "least insulation resistance of an array below 120 V",
  takes: {
    systemVoltage: { unit: "V", symbol: "U_sys", about: "system voltage: 1.25 times the open-circuit voltage at standard test conditions", above: 0, below: 120, usual: [10, 119] },
  },
  constants: {
    lowLeastResistance: { value: "0.5", unit: "MΩ", symbol: "0.5 MΩ", about: "least insulation resistance below 120 V", source: [{ in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }] },
  },
  gives: { unit: "MΩ", symbol: "R_iso,min" },
  expression: "lowLeastResistance",
  source: [{ in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }],
  unproven: { because: "definition" },
});

/**
 * System voltage from which the 500 V test applies. @function
 *
 * @example
 * ```ts
 * import { middleTestStep } from "pv-to-grid/commissioning";
 * middleTestStep({}).text; // "120"
 * ```
 */
export const middleTestStep = /* @__PURE__ */ formula({
  id: "commissioning/middle-test-step",
  about: "system voltage from which the 500 V test applies",
  takes: {},
  constants: {
    lowStep: { value: "120", unit: "V", symbol: "120 V", about: "system voltage from which the middle test applies", source: [{ in: "IEC 62446:2009", clause: "5.4.7", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.7" }] },
  },
  gives: { unit: "V", symbol: "U_sys" },
  expression: "lowStep",
  source: [{ in: "IEC 62446:2009", clause: "5.4.7", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.7" }],
  unproven: { because: "definition" },
});

/**
 * System voltage up to which the 1000 V test applies. @function
 *
 * @example
 * ```ts
 * import { kilovoltStep } from "pv-to-grid/commissioning";
 * kilovoltStep({}).text; // "1000"
 * ```
 */
export const kilovoltStep = /* @__PURE__ */ formula({
  id: "commissioning/kilovolt-step",
  about: "system voltage up to which the 1000 V test applies",
  takes: {},
  constants: {
    highStep: { value: "1000", unit: "V", symbol: "1000 V", about: "system voltage up to which the 1000 V test applies", source: [{ in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }] },
  },
  gives: { unit: "V", symbol: "U_sys" },
  expression: "highStep",
  source: [{ in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }],
  unproven: { because: "definition" },
});

/**
 * Power of one of several equal sections of an array. @function
 *
 * @example
 * ```ts
 * import { sectionPower } from "pv-to-grid/commissioning";
 * sectionPower({ arrayPower: "24 kW", sections: 3 }).text; // "8"
 * ```
 */
export const sectionPower = /* @__PURE__ */ formula({
  id: "commissioning/section-power",
  about: "power of one of several equal sections of an array",
  takes: {
    arrayPower: { unit: "kW", symbol: "P_0", about: "power of the array at standard test conditions", above: 0, usual: [0.3, 100000] },
    sections: { unit: "1", symbol: "n_S", about: "sections that are tested apart", from: 1, usual: [1, 1000] },
  },
  gives: { unit: "kW", symbol: "P_S" },
  expression: "arrayPower / sections",
  source: [{ in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }],
  unproven: { because: "definition" },
});

/**
 * Power up to which an array is tested as one section. @function
 *
 * @example
 * ```ts
 * import { largestSection } from "pv-to-grid/commissioning";
 * largestSection({}).text; // "10"
 * ```
 */
export const largestSection = /* @__PURE__ */ formula({
  id: "commissioning/largest-section",
  about: "power up to which an array is tested as one section",
  takes: {},
  constants: {
    sectionLimit: { value: "10", unit: "kW", symbol: "10 kW", about: "power of one section", source: [{ in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }] },
  },
  gives: { unit: "kW", symbol: "P_S,max" },
  expression: "sectionLimit",
  source: [{ in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }],
  unproven: { because: "definition" },
});
