import { formula, table } from "../../formula/index.js";

/**
 * Rated current of a transformer's secondary side. @function
 *
 * @example
 * ```ts
 * import { transformerRatedCurrent } from "pv-to-grid/protection";
 * transformerRatedCurrent({ transformerPower: "400 kVA", noLoadVoltage: "420 V" }).show(); // "549.9 A"
 * ```
 */
export const transformerRatedCurrent = /* @__PURE__ */ formula({
  id: "protection/transformer-rated-current",
  about: "rated current of a transformer's secondary side",
  takes: {
    transformerPower: { unit: "VA", symbol: "S_n", about: "rated power of the transformer", above: 0, usual: [1000, 100000000] },
    noLoadVoltage: { unit: "V", symbol: "U_20", about: "no-load voltage between lines of the secondary side", above: 0, usual: [100, 1000] },
  },
  gives: { unit: "A", symbol: "I_n" },
  expression: "transformerPower / (sqrt(3) * noLoadVoltage)",
  source: [{ in: "Electrical Installation Guide wiki:2010", clause: "fig. G31 and its example", grade: "memory" }],
  unproven: { because: "no publication found", sought: "transformer current with legible results; the one example found has them in a picture" },
});

/**
 * Largest fault current at the terminals of a transformer on an infinite network. @function
 *
 * @example
 * ```ts
 * import { transformerFaultCurrent } from "pv-to-grid/protection";
 * transformerFaultCurrent({ transformerCurrent: "550 A", shortCircuitVoltage: "4 %" }).text; // "13750"
 * ```
 */
export const transformerFaultCurrent = /* @__PURE__ */ formula({
  id: "protection/transformer-fault-current",
  about: "largest fault current at the terminals of a transformer on an infinite network",
  takes: {
    transformerCurrent: { unit: "A", symbol: "I_n", about: "rated current of the transformer's secondary side", above: 0, usual: [1, 100000] },
    shortCircuitVoltage: { unit: "1", symbol: "u_k", about: "short-circuit voltage of the transformer over its rated voltage", above: 0, below: 0.3 },
  },
  gives: { unit: "A", symbol: "I_k" },
  expression: "transformerCurrent / shortCircuitVoltage",
  source: [{ in: "Electrical Installation Guide wiki:2010", clause: "fig. G31 and its example", grade: "memory" }],
  unproven: { because: "no publication found", sought: "transformer fault with legible results; the one example found has them in a picture" },
});

/**
 * Impedance of a transformer a phase, referred to a side. @function
 *
 * @example
 * ```ts
 * import { transformerImpedance } from "pv-to-grid/protection";
 * transformerImpedance({ shortCircuitVoltage: "5.75 %", referredVoltage: "380 V", transformerPower: "2000 kVA" }).text; // "0.0041515"
 * ```
 */
export const transformerImpedance = /* @__PURE__ */ formula({
  id: "protection/transformer-impedance",
  about: "impedance of a transformer a phase, referred to a side",
  takes: {
    shortCircuitVoltage: { unit: "1", symbol: "u_k", about: "short-circuit voltage of the transformer over its rated voltage", above: 0, below: 0.3 },
    referredVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage between lines, on the side to which the impedance is referred", above: 0, usual: [100, 500000] },
    transformerPower: { unit: "VA", symbol: "S_n", about: "rated power of the transformer", above: 0, usual: [1000, 100000000] },
  },
  gives: { unit: "Ω", symbol: "Z_T" },
  expression: "shortCircuitVoltage * referredVoltage ^ 2 / transformerPower",
  source: [{ in: "Short-circuit sheet 380 V:2025", clause: "rows HV source to DB-HVAC3", grade: "copied" }],
  unproven: { because: "no publication found", sought: "transformer impedance referred to a side; only an upload was found" },
});

/**
 * Resistance of a transformer a phase, from its load loss. @function
 *
 * @example
 * ```ts
 * import { transformerResistance } from "pv-to-grid/protection";
 * transformerResistance({ loadLoss: "4.8 kW", referredVoltage: "400 V", transformerPower: "400 kVA" }).text; // "0.0048"
 * ```
 */
export const transformerResistance = /* @__PURE__ */ formula({
  id: "protection/transformer-resistance",
  about: "resistance of a transformer a phase, from its load loss",
  takes: {
    loadLoss: { unit: "W", symbol: "P_k", about: "load loss of the transformer at its rated current", above: 0, usual: [10, 1000000] },
    referredVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage between lines, on the side to which the impedance is referred", above: 0, usual: [100, 500000] },
    transformerPower: { unit: "VA", symbol: "S_n", about: "rated power of the transformer", above: 0, usual: [1000, 100000000] },
  },
  constants: {
    oneWatt: {
      value: "1", unit: "W", symbol: "1 W", about: "unit of the loss",
      source: [{ in: "common practice", clause: "active power of a resistance is its apparent power", grade: "common-practice" }],
    },
    oneVoltAmpere: {
      value: "1", unit: "VA", symbol: "1 VA", about: "unit of the apparent power",
      source: [{ in: "common practice", clause: "active power of a resistance is its apparent power", grade: "common-practice" }],
    },
  },
  gives: { unit: "Ω", symbol: "R_T" },
  expression: "loadLoss / oneWatt * oneVoltAmpere * referredVoltage ^ 2 / transformerPower ^ 2",
  source: [{ in: "IEC 60909-0:2016", clause: "equation 8", grade: "memory" }],
  unproven: { because: "no publication found", sought: "transformer resistance from load loss worked in numbers" },
});

/**
 * Reactance of a transformer a phase, from its impedance and resistance. @function
 *
 * @example
 * ```ts
 * import { transformerReactance } from "pv-to-grid/protection";
 * transformerReactance({ transformerImpedanceValue: "24 mΩ", transformerResistanceValue: "4.8 mΩ" }).show(); // "0.02352 Ω"
 * ```
 */
export const transformerReactance = /* @__PURE__ */ formula({
  id: "protection/transformer-reactance",
  about: "reactance of a transformer a phase, from its impedance and resistance",
  takes: {
    transformerImpedanceValue: { unit: "Ω", symbol: "Z_T", about: "impedance of the transformer a phase", above: 0, usual: [0.0001, 10] },
    transformerResistanceValue: { unit: "Ω", symbol: "R_T", about: "resistance of the transformer a phase", from: 0, usual: [0, 10] },
  },
  requires: [{ that: "transformerResistanceValue <= transformerImpedanceValue", because: "the resistance is part of the impedance" }],
  gives: { unit: "Ω", symbol: "X_T" },
  expression: "sqrt(transformerImpedanceValue ^ 2 - transformerResistanceValue ^ 2)",
  source: [{ in: "IEC 60909-0:2016", clause: "equation 9", grade: "memory" }],
  unproven: { because: "no publication found", sought: "transformer reactance from load loss worked in numbers" },
});

/**
 * Correction factor of the impedance of a two-winding transformer. @function
 *
 * @example
 * ```ts
 * import { transformerCorrection } from "pv-to-grid/protection";
 * transformerCorrection({ highestVoltageFactor: "1.05", relativeReactance: "0.0588" }).show(); // "0.9635"
 * ```
 */
export const transformerCorrection = /* @__PURE__ */ formula({
  id: "protection/transformer-correction",
  about: "correction factor of the impedance of a two-winding transformer",
  takes: {
    highestVoltageFactor: { unit: "1", symbol: "c_max", about: "highest voltage factor of the low-voltage side", from: 1, to: 1.1 },
    relativeReactance: { unit: "1", symbol: "x_T", about: "reactance of the transformer over its rated impedance", above: 0, below: 0.3 },
  },
  constants: {
    correctionBase: {
      value: "0.95", unit: "1", symbol: "0.95", about: "number of the correction",
      source: [{ in: "IEC 60909-0:2016", clause: "equation 12a", grade: "memory" }],
    },
    correctionShare: {
      value: "0.6", unit: "1", symbol: "0.6", about: "number of the correction",
      source: [{ in: "IEC 60909-0:2016", clause: "equation 12a", grade: "memory" }],
    },
  },
  gives: { unit: "1", symbol: "K_T" },
  expression: "correctionBase * highestVoltageFactor / (1 + correctionShare * relativeReactance)",
  source: [{ in: "IEC 60909-0:2016", clause: "equation 12a", grade: "memory" }],
  unproven: { because: "no publication found", sought: "K_T of a distribution transformer worked in numbers" },
});

/**
 * Usual short-circuit voltage of distribution transformers with a primary of up to 20 kV. @function
 *
 * @example
 * ```ts
 * import { eig2010_short_circuit_voltage } from "pv-to-grid/protection";
 * eig2010_short_circuit_voltage({ transformerPower: "400 kVA", kind: "oil-immersed" }).text; // "4"
 * ```
 */
export const eig2010_short_circuit_voltage = /* @__PURE__ */ table({
  id: "protection/eig2010-short-circuit-voltage",
  about: "usual short-circuit voltage of distribution transformers with a primary of up to 20 kV",
  rows: { name: "transformerPower", unit: "kVA", symbol: "S_n", from: 50, to: 3200 },
  rowRule: "next above",
  columns: { kind: ["oil-immersed", "cast-resin"] },
  gives: { unit: "%", symbol: "u_k" },
  source: [{ in: "Electrical Installation Guide wiki:2010", clause: "fig. G31", grade: "original" }],
  note: "a guide only: public networks often use 6 % from 250 kVA; the nameplate decides",
  cells: `
    750   4  6
    3200  6  6
  `,
});
