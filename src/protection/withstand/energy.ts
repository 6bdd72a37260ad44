import { condition, formula } from "../../formula/index.js";

/**
 * Energy of a fault that a conductor withstands. @function
 *
 * @example
 * ```ts
 * import { withstandEnergy } from "pv-to-grid/protection";
 * withstandEnergy({ adiabaticFactor: "115", section: "4 mm²" }).text; // "211600"
 * ```
 */
export const withstandEnergy = /* @__PURE__ */ formula({
  id: "protection/withstand-energy",
  about: "energy of a fault that a conductor withstands",
  takes: {
    adiabaticFactor: { unit: "A·√s/mm²", symbol: "k", about: "factor of material and insulation", above: 0, usual: [20, 250] },
    section: { unit: "mm²", symbol: "S", about: "cross-section of the conductor", above: 0, usual: [0.5, 2500] },
  },
  gives: { unit: "A²s", symbol: "k² S²" },
  expression: "adiabaticFactor ^ 2 * section ^ 2",
  source: [{ in: "IEC 60364-4-43:2008", clause: "434.5.2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "I²t withstand k²S² of a cable printed as a number" },
});

/**
 * Energy of a fault of a current and a duration. @function
 *
 * @example
 * ```ts
 * import { faultEnergy } from "pv-to-grid/protection";
 * faultEnergy({ faultCurrent: "800 A", disconnectionTime: "0.1 s" }).text; // "64000"
 * ```
 */
export const faultEnergy = /* @__PURE__ */ formula({
  id: "protection/fault-energy",
  about: "energy of a fault of a current and a duration",
  takes: {
    faultCurrent: { unit: "A", symbol: "I", about: "fault current of negligible fault impedance", above: 0, usual: [1, 200000] },
    disconnectionTime: { unit: "s", symbol: "t", about: "time until the device has disconnected", above: 0, to: 5 },
  },
  gives: { unit: "A²s", symbol: "I² t" },
  expression: "faultCurrent ^ 2 * disconnectionTime",
  source: [{ in: "IEC 60364-4-43:2008", clause: "434.5.2", grade: "memory" }],
  unproven: { because: "definition" },
});

/**
 * Time for which a conductor withstands a fault current. @function
 *
 * @example
 * ```ts
 * import { longestFaultTime } from "pv-to-grid/protection";
 * longestFaultTime({ adiabaticFactor: "115", section: "4 mm²", faultCurrent: "800 A" }).show(); // "0.3306 s"
 * ```
 */
export const longestFaultTime = /* @__PURE__ */ formula({
  id: "protection/longest-fault-time",
  about: "time for which a conductor withstands a fault current",
  takes: {
    adiabaticFactor: { unit: "A·√s/mm²", symbol: "k", about: "factor of material and insulation", above: 0, usual: [20, 250] },
    section: { unit: "mm²", symbol: "S", about: "cross-section of the conductor", above: 0, usual: [0.5, 2500] },
    faultCurrent: { unit: "A", symbol: "I", about: "fault current of negligible fault impedance", above: 0, usual: [1, 200000] },
  },
  gives: { unit: "s", symbol: "t" },
  expression: "(adiabaticFactor * section / faultCurrent) ^ 2",
  source: [{ in: "IEC 60364-4-43:2008", clause: "434.5.2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "longest time of a fault for a cable printed as a number" },
});

/**
 * Does the conductor withstand the smallest fault until the device has tripped? @function
 *
 * @example
 * ```ts
 * import { conductorWithstandsFault } from "pv-to-grid/protection";
 * conductorWithstandsFault({ value: "64000", limit: "211600" }).verdict; // "met"
 * ```
 */
export const conductorWithstandsFault = /* @__PURE__ */ condition({
  id: "protection/conductor-withstands-fault",
  asks: "Does the conductor withstand the smallest fault until the device has tripped?",
  force: "requirement",
  value: { unit: "A²s", symbol: "I² t", about: "energy of the fault" },
  relation: "≤",
  limit: { unit: "A²s", symbol: "k² S²", about: "energy that the conductor withstands" },
  source: [{ in: "IEC 60364-4-43:2008", clause: "434.5.2", grade: "memory" }],
  worse: { "routes[].cable.size": "down", "routes[].breaker.rating": "up" },
});

/**
 * Does the conductor withstand what the device lets through of the largest fault? @function
 *
 * @example
 * ```ts
 * import { conductorWithstandsLetThrough } from "pv-to-grid/protection";
 * conductorWithstandsLetThrough({ value: "35000", limit: "211600" }).verdict; // "met"
 * ```
 */
export const conductorWithstandsLetThrough = /* @__PURE__ */ condition({
  id: "protection/conductor-withstands-let-through",
  asks: "Does the conductor withstand what the device lets through of the largest fault?",
  force: "requirement",
  value: { unit: "A²s", symbol: "I² t", about: "let-through energy of the device" },
  relation: "≤",
  limit: { unit: "A²s", symbol: "k² S²", about: "energy that the conductor withstands" },
  source: [{ in: "IEC 60364-4-43:2008", clause: "434.5.2", grade: "memory" }],
  worse: { "routes[].cable.size": "down", "routes[].breaker.letThrough": "up" },
});
