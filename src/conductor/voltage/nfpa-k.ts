import { formula } from "../../formula/index.js";

/**
 * Voltage change by the resistance of a mil-foot of wire.
 *
 * @function
 * @example
 * ```ts
 * import { dropByK } from "pv-to-grid/conductor";
 * dropByK({ conductorFactor: 2, milFootResistance: "0.02144 Ω·mm²/m", current: "24 A", length: "160 ft", area: "10380 cmil" }).show(); // "9.542 V"
 * ```
 */
export const dropByK = /* @__PURE__ */ formula({
  id: "conductor/drop-by-k", about: "voltage change by the resistance of a mil-foot of wire",
  takes: {
    conductorFactor: { unit: "1", symbol: "m", about: "2 for two conductors, √3 for three phases", from: 1, to: 2 },
    milFootResistance: { unit: "Ω·mm²/m", symbol: "K", about: "resistivity of the conductor metal in service", above: 0, usual: [0.015, 0.05] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    length: { unit: "m", symbol: "L", about: "length one way", above: 0, usual: [0.1, 10000] },
    area: { unit: "mm²", symbol: "A", about: "area of the conductor", above: 0, usual: [0.5, 1100] },
  },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "conductorFactor * milFootResistance * current * length / area",
  source: [{ in: "EC&M voltage drop article:undated", clause: "size example", grade: "original" }],
  note: "12.9 Ω·cmil/ft of copper are 0.02144 Ω·mm²/m, 21.2 of aluminium 0.03524 Ω·mm²/m",
  unproven: { because: "no publication found", sought: "examples that state the resistance of a mil-foot in a unit of ours" },
});

/**
 * Share of the current that carries reactive power, from the power factor.
 *
 * @function
 * @example
 * ```ts
 * import { reactiveFactorOf } from "pv-to-grid/conductor";
 * reactiveFactorOf({ powerFactor: "0.85" }).show(); // "0.5268"
 * ```
 */
export const reactiveFactorOf = /* @__PURE__ */ formula({
  id: "conductor/reactive-factor-of", about: "share of the current that carries reactive power, from the power factor",
  takes: {
    powerFactor: { unit: "1", symbol: "cos φ", about: "share of the current that carries active power", from: 0, to: 1 },
  },
  gives: { unit: "1", symbol: "sin φ" },
  expression: "sqrt(1 - powerFactor ^ 2)",
  source: [{ in: "Sheldrake:2003", clause: "p. 239", grade: "original" }],
  note: "positive; the caller gives it the sign of the reactive power",
});
