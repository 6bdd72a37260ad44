import { formula } from "../../formula/index.js";

/**
 * Longest circuit by plain addition of impedances. @function
 *
 * @example
 * ```ts
 * import { longestCircuitByAddition } from "pv-to-grid/protection";
 * longestCircuitByAddition({ largestLoop: "7.17 Ω", externalImpedance: "0.45 Ω", loopResistancePerLength: "36.2 mΩ/m" }).show(); // "185.6 m"
 * ```
 */
export const longestCircuitByAddition = /* @__PURE__ */ formula({
  id: "protection/longest-circuit-by-addition",
  about: "longest circuit by plain addition of impedances",
  takes: {
    largestLoop: { unit: "Ω", symbol: "Z_s,max", about: "largest impedance of the fault loop for the device", above: 0, usual: [0.0001, 2000] },
    externalImpedance: { unit: "Ω", symbol: "Z_e", about: "impedance of the loop outside the circuit", from: 0, usual: [0, 200] },
    loopResistancePerLength: { unit: "Ω/m", symbol: "r_1 + r_2", about: "line and protective conductor together, a metre of route", above: 0, usual: [0.00001, 0.2] },
  },
  requires: [{ that: "largestLoop > externalImpedance", because: "the loop outside the circuit already exceeds what the device needs" }],
  gives: { unit: "m", symbol: "L_max" },
  expression: "(largestLoop - externalImpedance) / loopResistancePerLength",
  source: [{ in: "BS 7671:2018", clause: "411.4.4", grade: "copied", seen: "Electricians forum 5646:undated, posts 1 to 3" }],
  unproven: { because: "no publication found", sought: "longest circuit from loop impedances; only a forum thread was found" },
});

/**
 * Longest circuit with resistance and reactance apart. @function
 *
 * @example
 * ```ts
 * import { longestCircuit } from "pv-to-grid/protection";
 * longestCircuit({ largestLoop: "1.366 Ω", sourceResistance: "0.4 Ω", sourceReactance: "0.12 Ω", loopResistancePerLength: "12 mΩ/m", loopReactancePerLength: "0.2 mΩ/m" }).show(); // "79.93 m"
 * ```
 */
export const longestCircuit = /* @__PURE__ */ formula({
  id: "protection/longest-circuit",
  about: "longest circuit with resistance and reactance apart",
  takes: {
    largestLoop: { unit: "Ω", symbol: "Z_s,max", about: "largest impedance of the fault loop for the device", above: 0, usual: [0.0001, 2000] },
    sourceResistance: { unit: "Ω", symbol: "R_e", about: "resistance of the loop up to the origin", from: 0, usual: [0, 100] },
    sourceReactance: { unit: "Ω", symbol: "X_e", about: "reactance of the loop up to the origin", from: 0, usual: [0, 10] },
    loopResistancePerLength: { unit: "Ω/m", symbol: "r_1 + r_2", about: "line and protective conductor together, a metre of route", above: 0, usual: [0.00001, 0.2] },
    loopReactancePerLength: { unit: "Ω/m", symbol: "x_1 + x_2", about: "reactance of line and protective conductor together, a metre of route", from: 0, usual: [0, 0.01] },
  },
  requires: [{ that: "sourceResistance ^ 2 + sourceReactance ^ 2 < largestLoop ^ 2", because: "the loop outside the circuit already exceeds what the device needs" }],
  gives: { unit: "m", symbol: "L_max" },
  expression: "(sqrt((sourceResistance * loopResistancePerLength + sourceReactance * loopReactancePerLength) ^ 2 - (loopResistancePerLength ^ 2 + loopReactancePerLength ^ 2) * (sourceResistance ^ 2 + sourceReactance ^ 2 - largestLoop ^ 2)) - (sourceResistance * loopResistancePerLength + sourceReactance * loopReactancePerLength)) / (loopResistancePerLength ^ 2 + loopReactancePerLength ^ 2)",
  source: [{ in: "BS 7671:2018", clause: "411.4.4, solved for the length", grade: "memory" }],
  unproven: { because: "composition only" },
  note: "the inverse of the loop impedance along a route of one cable",
});
