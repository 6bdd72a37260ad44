import { formula } from "../../formula/index.js";

/**
 * Power of equal strings at standard test conditions. @function
 *
 * @example
 * ```ts
 * import { powerOfStrings } from "pv-to-grid/plant";
 * powerOfStrings({ modules: 13, strings: 2, maximumPower: "430 W" }).text; // "11180"
 * ```
 */
export const powerOfStrings = /* @__PURE__ */ formula({
  id: "plant/power-of-strings",
  about: "power of equal strings at standard test conditions",
  takes: {
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 0, usual: [1, 60] },
    strings: { unit: "1", symbol: "N", about: "equal strings", from: 0, usual: [1, 10000] },
    maximumPower: { unit: "W", symbol: "P_max", about: "maximum power of one module", above: 0, usual: [5, 1000] },
  },
  gives: { unit: "W", symbol: "P_STC" },
  expression: "modules * strings * maximumPower",
  source: [{ in: "common practice", clause: "sum over the modules", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Power of an array at standard test conditions. @function
 *
 * @example
 * ```ts
 * import { powerOfArray } from "pv-to-grid/plant";
 * powerOfArray({ stringPowers: ["5590 W", "6020 W"] }).text; // "11610"
 * ```
 */
export const powerOfArray = /* @__PURE__ */ formula({
  id: "plant/power-of-array",
  about: "power of an array at standard test conditions",
  takes: { stringPowers: { each: "W", symbol: "P_i", about: "power of each group of strings", from: 0, usual: [5, 1e8] } },
  gives: { unit: "W", symbol: "P_arr" },
  expression: "sum(stringPowers)",
  source: [{ in: "common practice", clause: "sum over the strings", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Highest voltage among the strings of an inverter. @function
 *
 * @example
 * ```ts
 * import { highestVoltage } from "pv-to-grid/plant";
 * highestVoltage({ voltages: ["557.5 V", "600.4 V"] }).text; // "600.4"
 * ```
 */
export const highestVoltage = /* @__PURE__ */ formula({
  id: "plant/highest-voltage",
  about: "highest voltage among the strings of an inverter",
  takes: { voltages: { each: "V", symbol: "U_i", about: "voltage of each string", from: 0, usual: [10, 2000] } },
  gives: { unit: "V", symbol: "U_OC,max" },
  expression: "max(voltages)",
  source: [{ in: "common practice", clause: "the highest of several", grade: "common-practice" }],
  unproven: { because: "definition" },
});
