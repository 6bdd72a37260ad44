import { condition, formula } from "../../formula/index.js";

/**
 * Largest loop impedance at which a device still disconnects in time. @function
 *
 * @example
 * ```ts
 * import { largestLoopImpedance } from "pv-to-grid/protection";
 * largestLoopImpedance({ lineToEarth: "230 V", voltageFactor: "0.95", operatingCurrent: "160 A" }).text; // "1.365625"
 * ```
 */
export const largestLoopImpedance = /* @__PURE__ */ formula({
  id: "protection/largest-loop-impedance",
  about: "largest loop impedance at which a device still disconnects in time",
  takes: {
    lineToEarth: { unit: "V", symbol: "U_0", about: "nominal voltage between line and earth", above: 0, usual: [50, 700] },
    voltageFactor: { unit: "1", symbol: "C_min", about: "lowest voltage during the fault over the nominal one", above: 0, to: 1 },
    operatingCurrent: { unit: "A", symbol: "I_a", about: "current at which the device disconnects in time", above: 0, usual: [1, 100000] },
  },
  gives: { unit: "Ω", symbol: "Z_s,max" },
  expression: "voltageFactor * lineToEarth / operatingCurrent",
  source: [
    { in: "IEC 60364-4-41:2017", clause: "411.4.4", grade: "copied", seen: "REBT:2002, ITC-BT-24, 4.1.1" },
    { in: "BS 7671:2018", clause: "411.4.4", grade: "memory" },
  ],
});

/**
 * Is the fault loop small enough for disconnection in time? @function
 *
 * @example
 * ```ts
 * import { loopDisconnects } from "pv-to-grid/protection";
 * loopDisconnects({ value: "0.6 Ω", limit: "1.36 Ω" }).verdict; // "met"
 * ```
 */
export const loopDisconnects = /* @__PURE__ */ condition({
  id: "protection/loop-disconnects",
  asks: "Is the fault loop small enough for disconnection in time?",
  force: "requirement",
  value: { unit: "Ω", symbol: "Z_s", about: "impedance of the fault loop" },
  relation: "≤",
  limit: { unit: "Ω", symbol: "C_min U_0 / I_a", about: "largest loop impedance for the device" },
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.4.4", grade: "copied", seen: "REBT:2002, ITC-BT-24, 4.1.1" }],
  worse: {
    "supply.loop.lineToProtective.r": "up",
    "supply.loop.lineToProtective.x": "up",
    "routes[].stretches[].length": "up",
    "routes[].breaker.rating": "up",
    "supply.lineToNeutral": "down",
  },
});

/**
 * Current of a fault to earth at the nominal voltage lowered by its factor. @function
 *
 * @example
 * ```ts
 * import { earthFaultCurrent } from "pv-to-grid/protection";
 * earthFaultCurrent({ lineToEarth: "230 V", voltageFactor: "1", loopImpedance: "1.15 Ω" }).text; // "200"
 * ```
 */
export const earthFaultCurrent = /* @__PURE__ */ formula({
  id: "protection/earth-fault-current",
  about: "current of a fault to earth at the nominal voltage lowered by its factor",
  takes: {
    lineToEarth: { unit: "V", symbol: "U_0", about: "nominal voltage between line and earth", above: 0, usual: [50, 700] },
    voltageFactor: { unit: "1", symbol: "C", about: "voltage during the fault over the nominal one", above: 0, to: 1.1 },
    loopImpedance: { unit: "Ω", symbol: "Z_s", about: "impedance of the fault loop", above: 0, usual: [0.0001, 2000] },
  },
  gives: { unit: "A", symbol: "I_f" },
  expression: "voltageFactor * lineToEarth / loopImpedance",
  source: [{ in: "Linsley:undated", clause: "p. 251, fault current from the loop impedance", grade: "original" }],
});
