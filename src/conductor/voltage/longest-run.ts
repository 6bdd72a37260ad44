import { formula } from "../../formula/index.js";

/**
 * Longest run of two direct-current conductors for a voltage change.
 *
 * @function
 * @example
 * ```ts
 * import { longestDirectRun } from "pv-to-grid/conductor";
 * longestDirectRun({ voltageChange: "7.2 V", current: "42 A", resistancePerLength: "2.551 Ω/km" }).show(); // "33.6 m"
 * ```
 */
export const longestDirectRun = /* @__PURE__ */ formula({
  id: "conductor/longest-direct-run", about: "longest run of two direct-current conductors for a voltage change",
  takes: {
    voltageChange: { unit: "V", symbol: "ΔU", about: "voltage change", above: 0, usual: [0.01, 500] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    resistancePerLength: { unit: "Ω/m", symbol: "R", about: "resistance per length of one conductor at its temperature", from: 0, usual: [0.00001, 0.1] },
  },
  requires: [{ that: "current * resistancePerLength > 0", because: "without current or resistance nothing drops" }],
  gives: { unit: "m", symbol: "L_max" },
  expression: "voltageChange / (2 * current * resistancePerLength)",
  source: [{ in: "Hi-Tech Controls formulas:undated", clause: "voltage drop, solved for the length", grade: "original" }],
  unproven: { because: "no publication found", sought: "longest direct-current runs by resistance per length" },
});

/**
 * Longest run of two alternating-current conductors for a voltage change.
 *
 * @function
 * @example
 * ```ts
 * import { longestTwoConductorRun } from "pv-to-grid/conductor";
 * longestTwoConductorRun({ voltageChange: "2.3 V", current: "16 A", resistancePerLength: "5.52 Ω/km", reactancePerLength: "0.08 Ω/km", powerFactor: 1, reactiveFactor: 0 }).show(); // "13.02 m"
 * ```
 */
export const longestTwoConductorRun = /* @__PURE__ */ formula({
  id: "conductor/longest-two-conductor-run", about: "longest run of two alternating-current conductors for a voltage change",
  takes: {
    voltageChange: { unit: "V", symbol: "ΔU", about: "voltage change", above: 0, usual: [0.01, 500] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    resistancePerLength: { unit: "Ω/m", symbol: "R", about: "resistance per length of one conductor at its temperature", from: 0, usual: [0.00001, 0.1] },
    reactancePerLength: { unit: "Ω/m", symbol: "X", about: "reactance per length of one conductor", from: 0, usual: [0, 0.001] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "share of the current that carries active power", from: 0, to: 1 },
    reactiveFactor: { unit: "1", symbol: "sin φ", about: "share of the current that carries reactive power, positive where reactive power flows the same way as active power", from: -1, to: 1 },
  },
  requires: [{ that: "current * (resistancePerLength * powerFactor + reactancePerLength * reactiveFactor) > 0", because: "the voltage does not fall along this circuit" }],
  gives: { unit: "m", symbol: "L_max" },
  expression: "voltageChange / (2 * current * (resistancePerLength * powerFactor + reactancePerLength * reactiveFactor))",
  source: [{ in: "Electrical Installation Guide:undated", clause: "chapter G, figure G29", grade: "original" }],
  unproven: { because: "no publication found", sought: "longest runs by resistance and reactance" },
});

/**
 * Longest run of a three-phase circuit for a line-to-line voltage change.
 *
 * @function
 * @example
 * ```ts
 * import { longestThreePhaseRun } from "pv-to-grid/conductor";
 * longestThreePhaseRun({ voltageChange: "8 V", current: "32 A", resistancePerLength: "2.19 Ω/km", reactancePerLength: "0.08 Ω/km", powerFactor: 1, reactiveFactor: 0 }).show(); // "65.91 m"
 * ```
 */
export const longestThreePhaseRun = /* @__PURE__ */ formula({
  id: "conductor/longest-three-phase-run", about: "longest run of a three-phase circuit for a line-to-line voltage change",
  takes: {
    voltageChange: { unit: "V", symbol: "ΔU", about: "voltage change", above: 0, usual: [0.01, 500] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    resistancePerLength: { unit: "Ω/m", symbol: "R", about: "resistance per length of one conductor at its temperature", from: 0, usual: [0.00001, 0.1] },
    reactancePerLength: { unit: "Ω/m", symbol: "X", about: "reactance per length of one conductor", from: 0, usual: [0, 0.001] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "share of the current that carries active power", from: 0, to: 1 },
    reactiveFactor: { unit: "1", symbol: "sin φ", about: "share of the current that carries reactive power, positive where reactive power flows the same way as active power", from: -1, to: 1 },
  },
  requires: [{ that: "current * (resistancePerLength * powerFactor + reactancePerLength * reactiveFactor) > 0", because: "the voltage does not fall along this circuit" }],
  gives: { unit: "m", symbol: "L_max" },
  expression: "voltageChange / (sqrt(3) * current * (resistancePerLength * powerFactor + reactancePerLength * reactiveFactor))",
  source: [{ in: "EC&M voltage drop article:undated", clause: "length examples", grade: "original" }],
  unproven: { because: "no publication found", sought: "longest runs by resistance and reactance" },
});
