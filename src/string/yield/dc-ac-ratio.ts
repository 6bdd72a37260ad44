import { condition, formula } from "../../formula/index.js";

/**
 * Ratio of array power to inverter power. @function
 *
 * @example
 * ```ts
 * import { dcAcRatio } from "pv-to-grid/string";
 * dcAcRatio({ arrayPower: "18 kW", ratedPower: "15 kW" }).text; // "1.2"
 * ```
 */
export const dcAcRatio = /* @__PURE__ */ formula({
  id: "string/dc-ac-ratio",
  about: "ratio of array power to inverter power",
  takes: {
    arrayPower: { unit: "W", symbol: "P_DC", about: "power of the array at standard test conditions", above: 0, usual: [100, 20000000] },
    ratedPower: { unit: "W", symbol: "P_AC", about: "rated active power of the inverter", above: 0, usual: [100, 20000000] },
  },
  gives: { unit: "1", symbol: "r" },
  expression: "arrayPower / ratedPower",
  source: [{ in: "common practice", clause: "ratio of array to inverter", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/** Is the array's power within the largest that the inverter's maker allows? @function */
export const arrayPowerWithinInverter = /* @__PURE__ */ condition({
  id: "string/array-power-within-inverter",
  asks: "Is the array's power within the largest that the inverter's maker allows?",
  force: "requirement",
  value: { unit: "W", symbol: "P_DC", about: "power of the array at standard test conditions" },
  relation: "≤",
  limit: { unit: "W", symbol: "P_DC,max", about: "largest array power by the maker" },
  source: [{ in: "common practice", clause: "the maker's instructions prevail", grade: "common-practice" }],
  worse: { "moduleTypes[].maximumPower": "up", "strings[].modules": "up", "inverters[].maximumDcPower": "down" },
});

/**
 * Power of the array at an irradiance, after its losses. @function
 *
 * @example
 * ```ts
 * import { arrayPowerAt } from "pv-to-grid/string";
 * arrayPowerAt({ arrayPower: "18 kW", irradiance: "900 W/m²", performance: "0.9" }).text; // "14580"
 * ```
 */
export const arrayPowerAt = /* @__PURE__ */ formula({
  id: "string/array-power-at",
  about: "power of the array at an irradiance, after its losses",
  takes: {
    arrayPower: { unit: "W", symbol: "P_DC", about: "power of the array at standard test conditions", above: 0, usual: [100, 20000000] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the array", from: 0, usual: [0, 1400] },
    performance: { unit: "1", symbol: "η", about: "share that is left after heat, dirt and cables", above: 0, to: 1.2, usual: [0.6, 1.05] },
  },
  constants: {
    standardIrradiance: { value: "1000", unit: "W/m²", symbol: "G_STC", about: "irradiance at standard test conditions", source: [{ in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" }] },
  },
  gives: { unit: "W", symbol: "P" },
  expression: "arrayPower * irradiance / standardIrradiance * performance",
  source: [{ in: "common practice", clause: "power in proportion to irradiance", grade: "common-practice" }],
  unproven: { because: "composition only" },
});

/**
 * Energy of one class of power over its time. @function
 *
 * @example
 * ```ts
 * import { energyOver } from "pv-to-grid/string";
 * energyOver({ power: "14580 W", duration: "200 h" }).text; // "2916000"
 * ```
 */
export const energyOver = /* @__PURE__ */ formula({
  id: "string/energy-over",
  about: "energy of one class of power over its time",
  takes: {
    power: { unit: "W", symbol: "P", about: "power of the class", from: 0, usual: [0, 20000000] },
    duration: { unit: "h", symbol: "t", about: "time of the class", from: 0, usual: [0, 8784] },
  },
  gives: { unit: "Wh", symbol: "E" },
  expression: "power * duration",
  source: [{ in: "common practice", clause: "energy is power times time", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Energy above a limit of power, which is cut off. @function
 *
 * @example
 * ```ts
 * import { energyAbove } from "pv-to-grid/string";
 * energyAbove({ power: "16 kW", powerLimit: "15 kW", duration: "100 h" }).text; // "100000"
 * ```
 */
export const energyAbove = /* @__PURE__ */ formula({
  id: "string/energy-above",
  about: "energy above a limit of power, which is cut off",
  takes: {
    power: { unit: "W", symbol: "P", about: "power of the class", from: 0, usual: [0, 20000000] },
    powerLimit: { unit: "W", symbol: "P_lim", about: "largest power that the inverter takes on its d.c. side", above: 0, usual: [100, 20000000] },
    duration: { unit: "h", symbol: "t", about: "time of the class", from: 0, usual: [0, 8784] },
  },
  gives: { unit: "Wh", symbol: "E_cut" },
  expression: "(max(power, powerLimit) - powerLimit) * duration",
  source: [{ in: "common practice", clause: "power above the limit is cut off", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Share of the energy that is cut off. @function
 *
 * @example
 * ```ts
 * import { clippingShare } from "pv-to-grid/string";
 * clippingShare({ cutEnergies: ["0 kWh", "100 kWh"], availableEnergies: ["8000 kWh", "2000 kWh"] }).text; // "0.01"
 * ```
 */
export const clippingShare = /* @__PURE__ */ formula({
  id: "string/clipping-share",
  about: "share of the energy that is cut off",
  takes: {
    cutEnergies: { each: "Wh", symbol: "E_cut,i", about: "energy that is cut off in each class", from: 0, usual: [0, 1000000000] },
    availableEnergies: { each: "Wh", symbol: "E_i", about: "energy of each class before the cut", from: 0, usual: [0, 1000000000] },
  },
  requires: [{ that: "sum(availableEnergies) > 0", because: "a share needs some energy" }],
  gives: { unit: "1", symbol: "c" },
  expression: "sum(cutEnergies) / sum(availableEnergies)",
  source: [{ in: "common practice", clause: "share of the year's energy", grade: "common-practice" }],
  unproven: { because: "definition" },
});
