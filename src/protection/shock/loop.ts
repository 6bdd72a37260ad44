import { formula } from "../../formula/index.js";

/**
 * Resistance of a fault loop: the source, and line and protective conductor of each stretch. @function
 *
 * @example
 * ```ts
 * import { loopResistance } from "pv-to-grid/protection";
 * loopResistance({ sourceResistance: "0.4 Ω", lineResistances: ["0.1 Ω"], protectiveResistances: ["0.1 Ω"] }).text; // "0.6"
 * ```
 */
export const loopResistance = /* @__PURE__ */ formula({
  id: "protection/loop-resistance",
  about: "resistance of a fault loop: the source, and line and protective conductor of each stretch",
  takes: {
    sourceResistance: { unit: "Ω", symbol: "R_e", about: "resistance of the loop up to the origin", from: 0, usual: [0, 100] },
    lineResistances: { each: "Ω", symbol: "R_1,i", about: "line conductor of each stretch, at its temperature during the fault", from: 0 },
    protectiveResistances: {
      each: "Ω",
      symbol: "R_2,i",
      about: "protective conductor of each stretch, at its temperature during the fault",
      from: 0,
    },
  },
  gives: { unit: "Ω", symbol: "R_s" },
  expression: "sourceResistance + sum(lineResistances) + sum(protectiveResistances)",
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.4.4, definition of the fault loop", grade: "memory" }],
});

/**
 * Reactance of a fault loop: the source, and each stretch. @function
 *
 * @example
 * ```ts
 * import { loopReactance } from "pv-to-grid/protection";
 * loopReactance({ sourceReactance: "0.12 Ω", loopReactances: ["0.004 Ω"] }).text; // "0.124"
 * ```
 */
export const loopReactance = /* @__PURE__ */ formula({
  id: "protection/loop-reactance",
  about: "reactance of a fault loop: the source, and each stretch",
  takes: {
    sourceReactance: { unit: "Ω", symbol: "X_e", about: "reactance of the loop up to the origin", from: 0, usual: [0, 10] },
    loopReactances: { each: "Ω", symbol: "X_i", about: "line and protective conductor of each stretch together", from: 0 },
  },
  gives: { unit: "Ω", symbol: "X_s" },
  expression: "sourceReactance + sum(loopReactances)",
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.4.4, definition of the fault loop", grade: "memory" }],
});

/**
 * Impedance of a fault loop from its resistance and reactance. @function
 *
 * @example
 * ```ts
 * import { loopImpedance } from "pv-to-grid/protection";
 * loopImpedance({ loopResistance: "0.3 Ω", loopReactance: "0.4 Ω" }).show(); // "0.5 Ω"
 * ```
 */
export const loopImpedance = /* @__PURE__ */ formula({
  id: "protection/loop-impedance",
  about: "impedance of a fault loop from its resistance and reactance",
  takes: {
    loopResistance: { unit: "Ω", symbol: "R_s", about: "resistance of the loop", from: 0, usual: [0, 2000] },
    loopReactance: { unit: "Ω", symbol: "X_s", about: "reactance of the loop", from: 0, usual: [0, 100] },
  },
  requires: [{ that: "loopResistance + loopReactance > 0", because: "a loop without any impedance would carry a current without limit" }],
  gives: { unit: "Ω", symbol: "Z_s" },
  expression: "sqrt(loopResistance ^ 2 + loopReactance ^ 2)",
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.4.4, definition of the fault loop", grade: "memory" }],
});

/**
 * Impedance of a fault loop by plain addition, at most this much. @function
 *
 * @example
 * ```ts
 * import { loopImpedanceByAddition } from "pv-to-grid/protection";
 * loopImpedanceByAddition({ externalImpedance: "0.45 Ω", loopResistancePerLength: "36.2 mΩ/m", length: "100 m" }).text; // "4.07"
 * ```
 */
export const loopImpedanceByAddition = /* @__PURE__ */ formula({
  id: "protection/loop-impedance-by-addition",
  about: "impedance of a fault loop by plain addition, at most this much",
  takes: {
    externalImpedance: { unit: "Ω", symbol: "Z_e", about: "impedance of the loop outside the circuit", from: 0, usual: [0, 200] },
    loopResistancePerLength: {
      unit: "Ω/m",
      symbol: "r_1 + r_2",
      about: "line and protective conductor together, a metre of route",
      above: 0,
      usual: [0.00001, 0.2],
    },
    length: { unit: "m", symbol: "L", about: "one-way length of the circuit", from: 0, usual: [0, 5000] },
  },
  gives: { unit: "Ω", symbol: "Z_s" },
  expression: "externalImpedance + loopResistancePerLength * length",
  source: [{ in: "BS 7671:2018", clause: "411.4.4 (Z_s = Z_e + R_1 + R_2)", grade: "memory" }],
  unproven: { because: "no publication found", sought: "Z_e plus R_1 + R_2 worked in numbers in an edited publication" },
});
