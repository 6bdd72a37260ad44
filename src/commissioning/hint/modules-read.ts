import { formula } from "../../formula/index.js";

/**
 * How many modules in series a voltage reads like. @function
 *
 * @example
 * ```ts
 * import { modulesRead } from "pv-to-grid/commissioning";
 * modulesRead({ measuredVoltage: "483.1 V", moduleVoltage: "37.16 V" }).show({ digits: 3 }); // "13"
 * ```
 */
export const modulesRead = /* @__PURE__ */ formula({
  id: "commissioning/modules-read",
  about: "how many modules in series a voltage reads like",
  takes: {
    measuredVoltage: { unit: "V", symbol: "U_1", about: "measured voltage", above: 0, to: 3000, usual: [0.3, 1500] },
    moduleVoltage: { unit: "V", symbol: "U_mod", about: "voltage of one module at the temperature in question", above: 0, usual: [0.5, 200] },
  },
  gives: { unit: "1", symbol: "n_read" },
  expression: "measuredVoltage / moduleVoltage",
  source: [{ in: "common practice", clause: "string voltage over module voltage", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Expected voltage of one module of a string. @function
 *
 * @example
 * ```ts
 * import { voltageOfModule } from "pv-to-grid/commissioning";
 * voltageOfModule({ expectedVoltage: "520.24 V", modules: 14 }).text; // "37.16"
 * ```
 */
export const voltageOfModule = /* @__PURE__ */ formula({
  id: "commissioning/voltage-of-module",
  about: "expected voltage of one module of a string",
  takes: {
    expectedVoltage: { unit: "V", symbol: "U", about: "voltage that is expected", from: 0 },
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 1, usual: [1, 200] },
  },
  gives: { unit: "V", symbol: "U_mod" },
  expression: "expectedVoltage / modules",
  source: [{ in: "common practice", clause: "string voltage over the number of modules", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Voltage that so many modules in series would read. @function
 *
 * @example
 * ```ts
 * import { voltageOfModules } from "pv-to-grid/commissioning";
 * voltageOfModules({ modules: 13, moduleVoltage: "37.16 V" }).text; // "483.08"
 * ```
 */
export const voltageOfModules = /* @__PURE__ */ formula({
  id: "commissioning/voltage-of-modules",
  about: "voltage that so many modules in series would read",
  takes: {
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 1, usual: [1, 200] },
    moduleVoltage: { unit: "V", symbol: "U_mod", about: "voltage of one module at the temperature in question", above: 0, usual: [0.5, 200] },
  },
  gives: { unit: "V", symbol: "U" },
  expression: "modules * moduleVoltage",
  source: [{ in: "common practice", clause: "string voltage", grade: "common-practice" }],
});

/**
 * Modules between the positive end of a string and a single earth fault. @function
 *
 * @example
 * ```ts
 * import { earthFaultPosition } from "pv-to-grid/commissioning";
 * earthFaultPosition({ modules: 14, positiveToEarth: "148.6 V", negativeToEarth: "371.6 V" }).show({ digits: 2 }); // "4"
 * ```
 */
export const earthFaultPosition = /* @__PURE__ */ formula({
  id: "commissioning/earth-fault-position",
  about: "modules between the positive end of a string and a single earth fault",
  takes: {
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 1, usual: [1, 200] },
    positiveToEarth: { unit: "V", symbol: "U_+E", about: "voltage of the positive pole to earth", from: 0, usual: [1, 1500] },
    negativeToEarth: { unit: "V", symbol: "U_-E", about: "size of the voltage of the negative pole to earth", from: 0, usual: [1, 1500] },
  },
  requires: [{ that: "positiveToEarth + negativeToEarth > 0", because: "without a voltage to earth there is no single earth fault to find" }],
  gives: { unit: "1", symbol: "n_F" },
  expression: "modules * positiveToEarth / (positiveToEarth + negativeToEarth)",
  source: [{ in: "common practice", clause: "voltages of both poles to earth, disconnected from the inverter", grade: "common-practice" }],
  unproven: { because: "no publication found", sought: "PV string earth fault location by voltages to earth worked example" },
});
