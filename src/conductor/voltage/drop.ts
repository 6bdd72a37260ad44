import { formula } from "../../formula/index.js";

/**
 * Voltage change along a direct-current circuit of two conductors.
 *
 * @function
 * @example
 * ```ts
 * import { directCurrentDrop } from "pv-to-grid/conductor";
 * directCurrentDrop({ length: "20 m", current: "10 A", resistancePerLength: "5 Ω/km" }).show(); // "2 V"
 * ```
 */
export const directCurrentDrop = /* @__PURE__ */ formula({
  id: "conductor/direct-current-drop", about: "voltage change along a direct-current circuit of two conductors",
  takes: {
    length: { unit: "m", symbol: "L", about: "length one way", from: 0, usual: [0, 5000] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    resistancePerLength: { unit: "Ω/m", symbol: "R", about: "resistance per length of one conductor at its temperature", from: 0, usual: [0.00001, 0.1] },
  },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "2 * length * current * resistancePerLength",
  source: [{ in: "Hi-Tech Controls formulas:undated", clause: "voltage drop", grade: "original" }],
});

/**
 * Voltage change along an alternating-current circuit of two conductors.
 *
 * @function
 * @example
 * ```ts
 * import { twoConductorDrop } from "pv-to-grid/conductor";
 * twoConductorDrop({ length: "20 m", current: "10 A", resistancePerLength: "5 Ω/km", reactancePerLength: "0.08 Ω/km", powerFactor: 1, reactiveFactor: 0 }).show(); // "2 V"
 * ```
 */
export const twoConductorDrop = /* @__PURE__ */ formula({
  id: "conductor/two-conductor-drop", about: "voltage change along an alternating-current circuit of two conductors",
  takes: {
    length: { unit: "m", symbol: "L", about: "length one way", from: 0, usual: [0, 5000] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    resistancePerLength: { unit: "Ω/m", symbol: "R", about: "resistance per length of one conductor at its temperature", from: 0, usual: [0.00001, 0.1] },
    reactancePerLength: { unit: "Ω/m", symbol: "X", about: "reactance per length of one conductor", from: 0, usual: [0, 0.001] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "share of the current that carries active power", from: 0, to: 1 },
    reactiveFactor: { unit: "1", symbol: "sin φ", about: "share of the current that carries reactive power, positive where reactive power flows the same way as active power", from: -1, to: 1 },
  },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "2 * length * current * (resistancePerLength * powerFactor + reactancePerLength * reactiveFactor)",
  source: [{ in: "Electrical Installation Guide:undated", clause: "chapter G, figure G29", grade: "original" }],
  unproven: { because: "no publication found", sought: "drops by resistance and reactance per length; whole runs are proven" },
});

/**
 * Line-to-line voltage change along a balanced three-phase circuit.
 *
 * @function
 * @example
 * ```ts
 * import { threePhaseDrop } from "pv-to-grid/conductor";
 * threePhaseDrop({ length: "150 m", current: "100 A", resistancePerLength: "0.5 Ω/km", reactancePerLength: "0.08 Ω/km", powerFactor: 1, reactiveFactor: 0 }).show(); // "12.99 V"
 * ```
 */
export const threePhaseDrop = /* @__PURE__ */ formula({
  id: "conductor/three-phase-drop", about: "line-to-line voltage change along a balanced three-phase circuit",
  takes: {
    length: { unit: "m", symbol: "L", about: "length one way", from: 0, usual: [0, 5000] },
    current: { unit: "A", symbol: "I", about: "line current", from: 0, usual: [0, 5000] },
    resistancePerLength: { unit: "Ω/m", symbol: "R", about: "resistance per length of one conductor at its temperature", from: 0, usual: [0.00001, 0.1] },
    reactancePerLength: { unit: "Ω/m", symbol: "X", about: "reactance per length of one conductor", from: 0, usual: [0, 0.001] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "share of the current that carries active power", from: 0, to: 1 },
    reactiveFactor: { unit: "1", symbol: "sin φ", about: "share of the current that carries reactive power, positive where reactive power flows the same way as active power", from: -1, to: 1 },
  },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "sqrt(3) * length * current * (resistancePerLength * powerFactor + reactancePerLength * reactiveFactor)",
  source: [{ in: "Electrical Installation Guide:undated", clause: "chapter G, figure G29", grade: "original" }],
  unproven: { because: "no publication found", sought: "drops by resistance and reactance per length; whole runs are proven" },
});
