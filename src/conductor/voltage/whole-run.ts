import { formula } from "../../formula/index.js";

/**
 * Line-to-line voltage change of a three-phase run as a share of the line voltage.
 *
 * @function
 * @example
 * ```ts
 * import { threePhaseChangeShare } from "pv-to-grid/conductor";
 * threePhaseChangeShare({ current: "65.82 A", resistance: "0.296 Ω", reactance: "0.0268 Ω", powerFactor: "0.85", reactiveFactor: "0.5268", lineVoltage: "415 V" }).in("%").show(); // "7.299 %"
 * ```
 */
export const threePhaseChangeShare = /* @__PURE__ */ formula({
  id: "conductor/three-phase-change-share", about: "line-to-line voltage change of a three-phase run as a share of the line voltage",
  takes: {
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    resistance: { unit: "Ω", symbol: "R", about: "resistance of one conductor of the run", from: 0, usual: [0, 10] },
    reactance: { unit: "Ω", symbol: "X", about: "reactance of one conductor of the run", from: 0, usual: [0, 5] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "share of the current that carries active power", from: 0, to: 1 },
    reactiveFactor: { unit: "1", symbol: "sin φ", about: "share of the current that carries reactive power, positive where reactive power flows the same way as active power", from: -1, to: 1 },
    lineVoltage: { unit: "V", symbol: "U", about: "line-to-line voltage", above: 0, usual: [100, 1000] },
  },
  gives: { unit: "1", symbol: "Δu" },
  expression: "sqrt(3) * current * (resistance * powerFactor + reactance * reactiveFactor) / lineVoltage",
  source: [{ in: "Sheldrake:2003", clause: "chapter 9, p. 239", grade: "original" }],
});

/**
 * Largest voltage change by a share of the nominal voltage.
 *
 * @function
 * @example
 * ```ts
 * import { voltageChangeAllowed } from "pv-to-grid/conductor";
 * voltageChangeAllowed({ dropLimit: "4 %", nominalVoltage: "240 V" }).text; // "9.6"
 * ```
 */
export const voltageChangeAllowed = /* @__PURE__ */ formula({
  id: "conductor/voltage-change-allowed", about: "largest voltage change by a share of the nominal voltage",
  takes: {
    dropLimit: { unit: "1", symbol: "ε", about: "largest change as a share of the nominal voltage", above: 0, to: 1, usual: [0.001, 0.2] },
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage between the same conductors", above: 0, usual: [12, 1500] },
  },
  gives: { unit: "V", symbol: "ΔU_max" },
  expression: "dropLimit * nominalVoltage",
  source: [{ in: "TLC wiring book:undated", clause: "4.3.11", grade: "original" }],
});

/**
 * Voltage at the far end of a run.
 *
 * @function
 * @example
 * ```ts
 * import { farEndVoltage } from "pv-to-grid/conductor";
 * farEndVoltage({ nominalVoltage: "240 V", voltageChange: "9.6 V" }).text; // "230.4"
 * ```
 */
export const farEndVoltage = /* @__PURE__ */ formula({
  id: "conductor/far-end-voltage", about: "voltage at the far end of a run",
  takes: {
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage between the same conductors", above: 0, usual: [12, 1500] },
    voltageChange: { unit: "V", symbol: "ΔU", about: "voltage change towards the far end", usual: [-200, 200] },
  },
  gives: { unit: "V", symbol: "U_far" },
  expression: "nominalVoltage - voltageChange",
  source: [{ in: "TLC wiring book:undated", clause: "4.3.11", grade: "original" }],
});

/**
 * Cross-section that a direct-current voltage change needs, by the length of both conductors.
 *
 * @function
 * @example
 * ```ts
 * import { sectionForDirectDrop } from "pv-to-grid/conductor";
 * sectionForDirectDrop({ serviceResistivity: "0.02314 Ω·mm²/m", cableLength: "56 m", current: "9.18 A", nominalVoltage: "409.6 V", dropLimit: "3 %" }).show(); // "0.9681 mm²"
 * ```
 */
export const sectionForDirectDrop = /* @__PURE__ */ formula({
  id: "conductor/section-for-direct-drop", about: "cross-section that a direct-current voltage change needs, by the length of both conductors",
  takes: {
    serviceResistivity: { unit: "Ω·mm²/m", symbol: "ρ_1", about: "resistivity in normal service", above: 0, usual: [0.015, 0.05] },
    cableLength: { unit: "m", symbol: "L_c", about: "length of both conductors together", above: 0, usual: [0.1, 20000] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage between the same conductors", above: 0, usual: [12, 1500] },
    dropLimit: { unit: "1", symbol: "ε", about: "largest change as a share of the voltage", above: 0, to: 1, usual: [0.001, 0.2] },
  },
  gives: { unit: "mm²", symbol: "S" },
  expression: "serviceResistivity * cableLength * current / (dropLimit * nominalVoltage)",
  source: [{ in: "GuidEnR course:2011", clause: "d.c. cable example", grade: "original" }],
});
