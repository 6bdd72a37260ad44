import { formula } from "../../formula/index.js";

/**
 * Voltage change of two conductors by their effective impedance.
 *
 * @function
 * @example
 * ```ts
 * import { twoConductorDropByImpedance } from "pv-to-grid/conductor";
 * twoConductorDropByImpedance({ length: "50 ft", current: "16 A", effectiveImpedance: "1.2 Ω/kft" }).text; // "1.92"
 * ```
 */
export const twoConductorDropByImpedance = /* @__PURE__ */ formula({
  id: "conductor/two-conductor-drop-by-impedance", about: "voltage change of two conductors by their effective impedance",
  takes: {
    length: { unit: "m", symbol: "L", about: "length one way", above: 0, usual: [0.1, 10000] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    effectiveImpedance: { unit: "Ω/m", symbol: "Z", about: "effective impedance per length at the power factor", above: 0, usual: [0.00001, 0.1] },
  },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "2 * length * current * effectiveImpedance",
  source: [{ in: "Electrician practice tests:undated", clause: "voltage drop calculations 1", grade: "original" }],
});

/**
 * Line-to-line voltage change of a three-phase circuit by its effective impedance.
 *
 * @function
 * @example
 * ```ts
 * import { threePhaseDropByImpedance } from "pv-to-grid/conductor";
 * threePhaseDropByImpedance({ length: "200 ft", current: "20 A", effectiveImpedance: "1.7 Ω/kft" }).show(); // "11.78 V"
 * ```
 */
export const threePhaseDropByImpedance = /* @__PURE__ */ formula({
  id: "conductor/three-phase-drop-by-impedance", about: "line-to-line voltage change of a three-phase circuit by its effective impedance",
  takes: {
    length: { unit: "m", symbol: "L", about: "length one way", above: 0, usual: [0.1, 10000] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    effectiveImpedance: { unit: "Ω/m", symbol: "Z", about: "effective impedance per length at the power factor", above: 0, usual: [0.00001, 0.1] },
  },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "sqrt(3) * length * current * effectiveImpedance",
  source: [{ in: "EC&M voltage drop article:undated", clause: "examples", grade: "original" }],
});

/**
 * Longest three-phase run for a line-to-line voltage change by the effective impedance.
 *
 * @function
 * @example
 * ```ts
 * import { longestRunByImpedance } from "pv-to-grid/conductor";
 * longestRunByImpedance({ voltageChange: "14.4 V", current: "20 A", effectiveImpedance: "1.1 Ω/kft" }).in("ft").show(); // "377.9 ft"
 * ```
 */
export const longestRunByImpedance = /* @__PURE__ */ formula({
  id: "conductor/longest-run-by-impedance", about: "longest three-phase run for a line-to-line voltage change by the effective impedance",
  takes: {
    voltageChange: { unit: "V", symbol: "ΔU", about: "voltage change", above: 0, usual: [0.01, 500] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    effectiveImpedance: { unit: "Ω/m", symbol: "Z", about: "effective impedance per length at the power factor", above: 0, usual: [0.00001, 0.1] },
  },
  requires: [{ that: "current > 0", because: "without current nothing drops" }],
  gives: { unit: "m", symbol: "L_max" },
  expression: "voltageChange / (sqrt(3) * current * effectiveImpedance)",
  source: [{ in: "EC&M voltage drop article:undated", clause: "examples", grade: "original" }],
});

/**
 * Effective impedance per length at a power factor.
 *
 * @function
 * @example
 * ```ts
 * import { effectiveImpedancePerLength } from "pv-to-grid/conductor";
 * effectiveImpedancePerLength({ resistancePerLength: "0.054 Ω/kft", reactancePerLength: "0.052 Ω/kft", powerFactor: "0.85", reactiveFactor: "0.5268" }).in("Ω/kft").show({ digits: 2 }); // "0.073 Ω/kft"
 * ```
 */
export const effectiveImpedancePerLength = /* @__PURE__ */ formula({
  id: "conductor/effective-impedance-per-length", about: "effective impedance per length at a power factor",
  takes: {
    resistancePerLength: { unit: "Ω/m", symbol: "R", about: "resistance per length", from: 0, usual: [0.00001, 0.1] },
    reactancePerLength: { unit: "Ω/m", symbol: "X", about: "reactance per length", from: 0, usual: [0, 0.001] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "share of the current that carries active power", from: 0, to: 1 },
    reactiveFactor: { unit: "1", symbol: "sin φ", about: "share of the current that carries reactive power, positive where reactive power flows the same way as active power", from: -1, to: 1 },
  },
  gives: { unit: "Ω/m", symbol: "Z" },
  expression: "resistancePerLength * powerFactor + reactancePerLength * reactiveFactor",
  source: [{ in: "NFPA 70:2017", clause: "chapter 9, table 9, note 2", grade: "copied" }],
  unproven: { because: "no publication found", sought: "effective impedances with resistance, reactance and both factors" },
});
