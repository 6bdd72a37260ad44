import { condition, formula } from "../../formula/index.js";

/**
 * Current that a busbar may carry when supply and inverters feed it together. @function
 *
 * @example
 * ```ts
 * import { bothFeeds } from "pv-to-grid/protection";
 * bothFeeds({ supplyDevice: "35 A", sourceCurrents: ["8 A"] }).text; // "43"
 * ```
 */
export const bothFeeds = /* @__PURE__ */ formula({
  id: "protection/both-feeds",
  about: "current that a busbar may carry when supply and inverters feed it together",
  takes: {
    supplyDevice: { unit: "A", symbol: "I_n,s", about: "rated current of the device that feeds the board from the supply", above: 0, usual: [1, 10000] },
    sourceCurrents: { each: "A", symbol: "I_g", about: "largest output current of each inverter that feeds the board", from: 0 },
  },
  gives: { unit: "A", symbol: "I_n,s + Σ I_g" },
  expression: "supplyDevice + sum(sourceCurrents)",
  source: [{ in: "IEC 60364-5-55:2011", clause: "551.7.2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEC 60364-5-551 board fed from two sides worked in numbers" },
});

/**
 * Largest current of all inverters of a board together. @function
 *
 * @example
 * ```ts
 * import { sourcesTogether } from "pv-to-grid/protection";
 * sourcesTogether({ sourceCurrents: ["8 A", "22 A"] }).text; // "30"
 * ```
 */
export const sourcesTogether = /* @__PURE__ */ formula({
  id: "protection/sources-together",
  about: "largest current of all inverters of a board together",
  takes: {
    sourceCurrents: { each: "A", symbol: "I_g", about: "largest output current of each inverter that feeds the board", from: 0 },
  },
  gives: { unit: "A", symbol: "Σ I_g" },
  expression: "sum(sourceCurrents)",
  source: [{ in: "IEC 60364-5-55:2011", clause: "551.7.2", grade: "memory" }],
  unproven: { because: "composition only" },
});

/**
 * Does the busbar carry supply device and inverters together? @function
 *
 * @example
 * ```ts
 * import { busbarCarriesBothFeeds } from "pv-to-grid/protection";
 * busbarCarriesBothFeeds({ value: "43 A", limit: "63 A" }).verdict; // "met"
 * ```
 */
export const busbarCarriesBothFeeds = /* @__PURE__ */ condition({
  id: "protection/busbar-carries-both-feeds",
  asks: "Does the busbar carry supply device and inverters together?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n,s + Σ I_g", about: "supply device and inverter currents together" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_nA", about: "rated current of the busbar" },
  source: [{ in: "IEC 60364-5-55:2011", clause: "551.7.2", grade: "memory" }],
  worse: { "boards[].supplyDevice": "up", "inverters[].maximumAcCurrent": "up", "boards[].busbarRating": "down" },
});

/**
 * Does the supply device carry what the inverters feed out? @function
 *
 * @example
 * ```ts
 * import { supplyDeviceCarriesExport } from "pv-to-grid/protection";
 * supplyDeviceCarriesExport({ value: "8 A", limit: "35 A" }).verdict; // "met"
 * ```
 */
export const supplyDeviceCarriesExport = /* @__PURE__ */ condition({
  id: "protection/supply-device-carries-export",
  asks: "Does the supply device carry what the inverters feed out?",
  force: "requirement",
  value: { unit: "A", symbol: "Σ I_g", about: "inverter currents together" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_n,s", about: "rated current of the supply device" },
  source: [{ in: "IEC 60364-5-55:2011", clause: "551.7.2", grade: "memory" }],
  worse: { "inverters[].maximumAcCurrent": "up", "boards[].supplyDevice": "down" },
});

/**
 * Does the main switch carry the larger of both feeds? @function
 *
 * @example
 * ```ts
 * import { mainSwitchCarries } from "pv-to-grid/protection";
 * mainSwitchCarries({ value: "35 A", limit: "63 A" }).verdict; // "met"
 * ```
 */
export const mainSwitchCarries = /* @__PURE__ */ condition({
  id: "protection/main-switch-carries",
  asks: "Does the main switch carry the larger of both feeds?",
  force: "requirement",
  value: { unit: "A", symbol: "max(I_n,s, Σ I_g)", about: "larger of supply device and inverter currents" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_e", about: "rated current of the main switch" },
  source: [{ in: "IEC 60364-5-55:2011", clause: "551.7.2", grade: "memory" }],
  worse: { "boards[].supplyDevice": "up", "inverters[].maximumAcCurrent": "up", "boards[].mainSwitch": "down" },
});

/**
 * Larger of the two feeds of a board. @function
 *
 * @example
 * ```ts
 * import { largerFeed } from "pv-to-grid/protection";
 * largerFeed({ supplyDevice: "35 A", sourceCurrents: ["8 A"] }).text; // "35"
 * ```
 */
export const largerFeed = /* @__PURE__ */ formula({
  id: "protection/larger-feed",
  about: "larger of the two feeds of a board",
  takes: {
    supplyDevice: { unit: "A", symbol: "I_n,s", about: "rated current of the device that feeds the board from the supply", above: 0, usual: [1, 10000] },
    sourceCurrents: { each: "A", symbol: "I_g", about: "largest output current of each inverter that feeds the board", from: 0 },
  },
  gives: { unit: "A", symbol: "max(I_n,s, Σ I_g)" },
  expression: "max(supplyDevice, sum(sourceCurrents))",
  source: [{ in: "IEC 60364-5-55:2011", clause: "551.7.2", grade: "memory" }],
  unproven: { because: "composition only" },
});
