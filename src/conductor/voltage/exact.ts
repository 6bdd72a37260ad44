import { formula } from "../../formula/index.js";

/**
 * Exact line-to-neutral voltage change from the voltage at the sending end.
 *
 * @function
 * @example
 * ```ts
 * import { exactDropFromSending } from "pv-to-grid/conductor";
 * exactDropFromSending({ sendingVoltage: "230 V", current: "100 A", resistance: "0.05 Ω", reactance: "0.01 Ω", powerFactor: "0.8", reactiveFactor: "0.6" }).show(); // "4.611 V"
 * ```
 */
export const exactDropFromSending = /* @__PURE__ */ formula({
  id: "conductor/exact-drop-from-sending", about: "exact line-to-neutral voltage change from the voltage at the sending end",
  takes: {
    sendingVoltage: { unit: "V", symbol: "U_s", about: "line-to-neutral voltage at the sending end", above: 0, usual: [12, 1000] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    resistance: { unit: "Ω", symbol: "R", about: "resistance of one conductor", from: 0, usual: [0, 10] },
    reactance: { unit: "Ω", symbol: "X", about: "reactance of one conductor", from: 0, usual: [0, 5] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "share of the current that carries active power", from: 0, to: 1 },
    reactiveFactor: { unit: "1", symbol: "sin φ", about: "share of the current that carries reactive power, positive where reactive power flows the same way as active power", from: -1, to: 1 },
  },
  requires: [{ that: "sendingVoltage > abs(current * reactance * powerFactor - current * resistance * reactiveFactor)", because: "beyond this current no voltage is left at the far end" }],
  gives: { unit: "V", symbol: "ΔU" },
  expression: "sendingVoltage + current * resistance * powerFactor + current * reactance * reactiveFactor - sqrt(sendingVoltage ^ 2 - (current * reactance * powerFactor - current * resistance * reactiveFactor) ^ 2)",
  source: [{ in: "IEEE 141:1993", clause: "3.11.1", grade: "memory" }],
  note: "power factor and reactive factor at the receiving end",
  unproven: { because: "no publication found", sought: "worked examples of the exact voltage drop" },
});

/**
 * Exact line-to-neutral voltage change from the voltage at the receiving end.
 *
 * @function
 * @example
 * ```ts
 * import { exactDropFromReceiving } from "pv-to-grid/conductor";
 * exactDropFromReceiving({ receivingVoltage: "225 V", current: "100 A", resistance: "0.05 Ω", reactance: "0.01 Ω", powerFactor: "0.8", reactiveFactor: "0.6" }).show(); // "4.611 V"
 * ```
 */
export const exactDropFromReceiving = /* @__PURE__ */ formula({
  id: "conductor/exact-drop-from-receiving", about: "exact line-to-neutral voltage change from the voltage at the receiving end",
  takes: {
    receivingVoltage: { unit: "V", symbol: "U_r", about: "line-to-neutral voltage at the receiving end", above: 0, usual: [12, 1000] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    resistance: { unit: "Ω", symbol: "R", about: "resistance of one conductor", from: 0, usual: [0, 10] },
    reactance: { unit: "Ω", symbol: "X", about: "reactance of one conductor", from: 0, usual: [0, 5] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "share of the current that carries active power", from: 0, to: 1 },
    reactiveFactor: { unit: "1", symbol: "sin φ", about: "share of the current that carries reactive power, positive where reactive power flows the same way as active power", from: -1, to: 1 },
  },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "sqrt((receivingVoltage + current * resistance * powerFactor + current * reactance * reactiveFactor) ^ 2 + (current * reactance * powerFactor - current * resistance * reactiveFactor) ^ 2) - receivingVoltage",
  source: [{ in: "IEEE 141:1993", clause: "3.11.1", grade: "memory" }],
  note: "power factor and reactive factor at the receiving end",
  unproven: { because: "no publication found", sought: "worked examples of the exact voltage drop" },
});
