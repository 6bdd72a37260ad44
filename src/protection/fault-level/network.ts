import { formula } from "../../formula/index.js";

/**
 * Impedance of a network a phase, from its short-circuit power. @function
 *
 * @example
 * ```ts
 * import { networkImpedance } from "pv-to-grid/protection";
 * networkImpedance({ referredVoltage: "22 kV", shortCircuitPower: "500 MVA" }).text; // "0.968"
 * ```
 */
export const networkImpedance = /* @__PURE__ */ formula({
  id: "protection/network-impedance",
  about: "impedance of a network a phase, from its short-circuit power",
  takes: {
    referredVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage between lines, on the side to which the impedance is referred", above: 0, usual: [100, 500000] },
    shortCircuitPower: { unit: "VA", symbol: "S_k", about: "short-circuit power of the network", above: 0, usual: [10000, 100000000000] },
  },
  gives: { unit: "Ω", symbol: "Z_Q" },
  expression: "referredVoltage ^ 2 / shortCircuitPower",
  source: [{ in: "Short-circuit sheet 380 V:2025", clause: "rows HV source to DB-HVAC3", grade: "copied" }],
  unproven: { because: "no publication found", sought: "network impedance from short-circuit power; only an upload was found" },
  note: "IEC 60909 multiplies by the voltage factor; the sheet does not",
});

/**
 * Impedance a phase that a stated three-phase fault current stands for. @function
 *
 * @example
 * ```ts
 * import { impedanceFromFaultCurrent } from "pv-to-grid/protection";
 * impedanceFromFaultCurrent({ faultVoltage: "400 V", faultCurrentAt: "6 kA" }).show(); // "0.03849 Ω"
 * ```
 */
export const impedanceFromFaultCurrent = /* @__PURE__ */ formula({
  id: "protection/impedance-from-fault-current",
  about: "impedance a phase that a stated three-phase fault current stands for",
  takes: {
    faultVoltage: { unit: "V", symbol: "c U", about: "driving voltage between lines during the fault", above: 0, usual: [50, 1200] },
    faultCurrentAt: { unit: "A", symbol: "I_k", about: "symmetrical fault current", above: 0, usual: [1, 500000] },
  },
  gives: { unit: "Ω", symbol: "Z" },
  expression: "faultVoltage / (sqrt(3) * faultCurrentAt)",
  source: [{ in: "common practice", clause: "definition of the fault current", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Resistance of a length of cable a phase. @function
 *
 * @example
 * ```ts
 * import { cablePhaseResistance } from "pv-to-grid/protection";
 * cablePhaseResistance({ resistancePerLength: "0.0812 mΩ/m", length: "5 m", parallelConductorsOfPhase: "4" }).text; // "0.0001015"
 * ```
 */
export const cablePhaseResistance = /* @__PURE__ */ formula({
  id: "protection/cable-phase-resistance",
  about: "resistance of a length of cable a phase",
  takes: {
    resistancePerLength: { unit: "Ω/m", symbol: "r", about: "resistance of one conductor a metre", from: 0, usual: [0.000001, 0.2] },
    length: { unit: "m", symbol: "L", about: "one-way length of the route", from: 0, usual: [0, 5000] },
    parallelConductorsOfPhase: { unit: "1", symbol: "n", about: "conductors in parallel a phase", from: 1, to: 20 },
  },
  gives: { unit: "Ω", symbol: "R" },
  expression: "resistancePerLength * length / parallelConductorsOfPhase",
  source: [{ in: "Short-circuit sheet 380 V:2025", clause: "rows HV source to DB-HVAC3", grade: "copied" }],
  unproven: { because: "no publication found", sought: "fault chain with resistance a metre; only an upload was found" },
});

/**
 * Reactance of a length of cable a phase. @function
 *
 * @example
 * ```ts
 * import { cablePhaseReactance } from "pv-to-grid/protection";
 * cablePhaseReactance({ reactancePerLength: "0.09 mΩ/m", length: "5 m", parallelConductorsOfPhase: "4" }).text; // "0.0001125"
 * ```
 */
export const cablePhaseReactance = /* @__PURE__ */ formula({
  id: "protection/cable-phase-reactance",
  about: "reactance of a length of cable a phase",
  takes: {
    reactancePerLength: { unit: "Ω/m", symbol: "x", about: "reactance of one conductor a metre", from: 0, usual: [0, 0.005] },
    length: { unit: "m", symbol: "L", about: "one-way length of the route", from: 0, usual: [0, 5000] },
    parallelConductorsOfPhase: { unit: "1", symbol: "n", about: "conductors in parallel a phase", from: 1, to: 20 },
  },
  gives: { unit: "Ω", symbol: "X" },
  expression: "reactancePerLength * length / parallelConductorsOfPhase",
  source: [{ in: "Short-circuit sheet 380 V:2025", clause: "rows HV source to DB-HVAC3", grade: "copied" }],
  unproven: { because: "no publication found", sought: "fault chain with reactance a metre; only an upload was found" },
});

/**
 * Resistance of the path from the source to a fault, a phase. @function
 *
 * @example
 * ```ts
 * import { pathResistance } from "pv-to-grid/protection";
 * pathResistance({ phaseResistances: ["0 mΩ", "0.1015 mΩ"] }).text; // "0.0001015"
 * ```
 */
export const pathResistance = /* @__PURE__ */ formula({
  id: "protection/path-resistance",
  about: "resistance of the path from the source to a fault, a phase",
  takes: {
    phaseResistances: { each: "Ω", symbol: "R_i", about: "resistance of each part of the path, a phase", from: 0 },
  },
  gives: { unit: "Ω", symbol: "R" },
  expression: "sum(phaseResistances)",
  source: [{ in: "Short-circuit sheet 380 V:2025", clause: "rows HV source to DB-HVAC3", grade: "copied" }],
  unproven: { because: "no publication found", sought: "fault chain; only an upload was found" },
});

/**
 * Reactance of the path from the source to a fault, a phase. @function
 *
 * @example
 * ```ts
 * import { pathReactance } from "pv-to-grid/protection";
 * pathReactance({ phaseReactances: ["4.4403 mΩ", "0.1125 mΩ"] }).text; // "0.0045528"
 * ```
 */
export const pathReactance = /* @__PURE__ */ formula({
  id: "protection/path-reactance",
  about: "reactance of the path from the source to a fault, a phase",
  takes: {
    phaseReactances: { each: "Ω", symbol: "X_i", about: "reactance of each part of the path, a phase", from: 0 },
  },
  gives: { unit: "Ω", symbol: "X" },
  expression: "sum(phaseReactances)",
  source: [{ in: "Short-circuit sheet 380 V:2025", clause: "rows HV source to DB-HVAC3", grade: "copied" }],
  unproven: { because: "no publication found", sought: "fault chain; only an upload was found" },
});

/**
 * Impedance of the path from the source to a fault, a phase. @function
 *
 * @example
 * ```ts
 * import { pathImpedance } from "pv-to-grid/protection";
 * pathImpedance({ phaseResistance: "0.1015 mΩ", phaseReactance: "4.5528 mΩ" }).show(); // "0.004554 Ω"
 * ```
 */
export const pathImpedance = /* @__PURE__ */ formula({
  id: "protection/path-impedance",
  about: "impedance of the path from the source to a fault, a phase",
  takes: {
    phaseResistance: { unit: "Ω", symbol: "R", about: "resistance of the path, a phase", from: 0, usual: [0, 100] },
    phaseReactance: { unit: "Ω", symbol: "X", about: "reactance of the path, a phase", from: 0, usual: [0, 100] },
  },
  requires: [{ that: "phaseResistance + phaseReactance > 0", because: "a path without any impedance would carry a current without limit" }],
  gives: { unit: "Ω", symbol: "Z" },
  expression: "sqrt(phaseResistance ^ 2 + phaseReactance ^ 2)",
  source: [{ in: "Short-circuit sheet 380 V:2025", clause: "rows HV source to DB-HVAC3", grade: "copied" }],
  unproven: { because: "no publication found", sought: "fault chain; only an upload was found" },
});
