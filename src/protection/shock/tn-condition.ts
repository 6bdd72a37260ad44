import { condition, formula } from "../../formula/index.js";

/**
 * Largest loop impedance at which a device disconnects in time at the nominal voltage. @function
 *
 * @example
 * ```ts
 * import { largestLoopImpedance } from "pv-to-grid/protection";
 * largestLoopImpedance({ lineToEarth: "230 V", operatingCurrent: "275 A" }).show(); // "0.8364 Ω"
 * ```
 */
export const largestLoopImpedance = /* @__PURE__ */ formula({
  id: "protection/largest-loop-impedance",
  about: "largest loop impedance at which a device disconnects in time at the nominal voltage",
  takes: {
    lineToEarth: { unit: "V", symbol: "U_0", about: "nominal voltage between line and earth", above: 0, usual: [50, 700] },
    operatingCurrent: { unit: "A", symbol: "I_a", about: "current at which the device disconnects in time", above: 0, usual: [1, 100000] },
  },
  gives: { unit: "Ω", symbol: "Z_s,max" },
  expression: "lineToEarth / operatingCurrent",
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.4.4", grade: "copied", seen: "REBT:2002, ITC-BT-24, 4.1.1" }],
});

/**
 * Largest loop impedance at which a device disconnects in time at the lowest voltage. @function
 *
 * @example
 * ```ts
 * import { largestLoopImpedanceAtLowVoltage } from "pv-to-grid/protection";
 * largestLoopImpedanceAtLowVoltage({ lineToEarth: "230 V", faultVoltageFactor: "0.95", operatingCurrent: "160 A" }).show(); // "1.366 Ω"
 * ```
 */
export const largestLoopImpedanceAtLowVoltage = /* @__PURE__ */ formula({
  id: "protection/largest-loop-impedance-at-low-voltage",
  about: "largest loop impedance at which a device disconnects in time at the lowest voltage",
  takes: {
    lineToEarth: { unit: "V", symbol: "U_0", about: "nominal voltage between line and earth", above: 0, usual: [50, 700] },
    faultVoltageFactor: { unit: "1", symbol: "C_min", about: "voltage during the fault over the nominal one", above: 0, to: 1.1 },
    operatingCurrent: { unit: "A", symbol: "I_a", about: "current at which the device disconnects in time", above: 0, usual: [1, 100000] },
  },
  gives: { unit: "Ω", symbol: "Z_s,max" },
  expression: "faultVoltageFactor * lineToEarth / operatingCurrent",
  source: [{ in: "BS 7671:2018", clause: "411.4.4", grade: "memory" }],
  unproven: { because: "no publication found", sought: "BS 7671:2018 table 41.3 seen in print; it is recalled only" },
});

/**
 * Largest loop impedance at which a device disconnects in time, from the voltage between lines. @function
 *
 * @example
 * ```ts
 * import { largestLoopImpedanceOfLineVoltage } from "pv-to-grid/protection";
 * largestLoopImpedanceOfLineVoltage({ lineToLine: "415 V", operatingCurrent: "370 A" }).show(); // "0.6476 Ω"
 * ```
 */
export const largestLoopImpedanceOfLineVoltage = /* @__PURE__ */ formula({
  id: "protection/largest-loop-impedance-of-line-voltage",
  about: "largest loop impedance at which a device disconnects in time, from the voltage between lines",
  takes: {
    lineToLine: { unit: "V", symbol: "U_n", about: "nominal voltage between lines", above: 0, usual: [100, 1000] },
    operatingCurrent: { unit: "A", symbol: "I_a", about: "current at which the device disconnects in time", above: 0, usual: [1, 100000] },
  },
  gives: { unit: "Ω", symbol: "Z_s,max" },
  expression: "lineToLine / (sqrt(3) * operatingCurrent)",
  source: [{ in: "Sheldrake:2003", clause: "chapter 9, p. 241, table 9.36", grade: "original" }],
});

/**
 * Current of a fault to earth at the nominal voltage. @function
 *
 * @example
 * ```ts
 * import { earthFaultCurrent } from "pv-to-grid/protection";
 * earthFaultCurrent({ lineToEarth: "230 V", loopImpedance: "1.15 Ω" }).text; // "200"
 * ```
 */
export const earthFaultCurrent = /* @__PURE__ */ formula({
  id: "protection/earth-fault-current",
  about: "current of a fault to earth at the nominal voltage",
  takes: {
    lineToEarth: { unit: "V", symbol: "U_0", about: "nominal voltage between line and earth", above: 0, usual: [50, 700] },
    loopImpedance: { unit: "Ω", symbol: "Z_s", about: "impedance of the fault loop", above: 0, usual: [0.0001, 2000] },
  },
  gives: { unit: "A", symbol: "I_f" },
  expression: "lineToEarth / loopImpedance",
  source: [{ in: "Linsley:undated", clause: "p. 251, fault current from the loop impedance", grade: "original" }],
});

/**
 * Smallest current of a fault to earth, at the lowest voltage. @function
 *
 * @example
 * ```ts
 * import { smallestEarthFaultCurrent } from "pv-to-grid/protection";
 * smallestEarthFaultCurrent({ lineToEarth: "230 V", faultVoltageFactor: "0.95", loopImpedance: "0.6 Ω" }).show(); // "364.2 A"
 * ```
 */
export const smallestEarthFaultCurrent = /* @__PURE__ */ formula({
  id: "protection/smallest-earth-fault-current",
  about: "smallest current of a fault to earth, at the lowest voltage",
  takes: {
    lineToEarth: { unit: "V", symbol: "U_0", about: "nominal voltage between line and earth", above: 0, usual: [50, 700] },
    faultVoltageFactor: { unit: "1", symbol: "C_min", about: "voltage during the fault over the nominal one", above: 0, to: 1.1 },
    loopImpedance: { unit: "Ω", symbol: "Z_s", about: "impedance of the fault loop", above: 0, usual: [0.0001, 2000] },
  },
  gives: { unit: "A", symbol: "I_f,min" },
  expression: "faultVoltageFactor * lineToEarth / loopImpedance",
  source: [{ in: "BS 7671:2018", clause: "appendix 14", grade: "memory" }],
  unproven: { because: "composition only" },
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
  worse: { "supply.loop.lineToProtective.r": "up", "supply.loop.lineToProtective.x": "up", "routes[].stretches[].length": "up", "routes[].breaker.rating": "up", "supply.lineToNeutral": "down" },
});

/**
 * Is the measured, cold loop small enough? @function
 *
 * @example
 * ```ts
 * import { measuredLoopLowEnough } from "pv-to-grid/protection";
 * measuredLoopLowEnough({ value: "1.0 Ω", limit: "1.09 Ω" }).verdict; // "met"
 * ```
 */
export const measuredLoopLowEnough = /* @__PURE__ */ condition({
  id: "protection/measured-loop-low-enough",
  asks: "Is the measured, cold loop small enough?",
  force: "requirement",
  value: { unit: "Ω", symbol: "Z_m", about: "measured loop impedance" },
  relation: "≤",
  limit: { unit: "Ω", symbol: "Z_m,max", about: "limit for measured values" },
  source: [{ in: "NICEIC Connections:2015", clause: "p. 61", grade: "original" }],
});
