import { formula } from "../../formula/index.js";

/**
 * Line-to-line voltage change of a three-phase circuit by the power that flows.
 *
 * @function
 * @example
 * ```ts
 * import { threePhaseChangeByPower } from "pv-to-grid/conductor";
 * threePhaseChangeByPower({ activePower: "30 kW", reactivePower: "-10 kvar", resistance: "0.1 Ω", reactance: "0.05 Ω", lineVoltage: "400 V" }).text; // "6.25"
 * ```
 */
export const threePhaseChangeByPower = /* @__PURE__ */ formula({
  id: "conductor/three-phase-change-by-power", about: "line-to-line voltage change of a three-phase circuit by the power that flows",
  takes: {
    activePower: { unit: "W", symbol: "P", about: "active power of all phases", usual: [-10000000, 10000000] },
    reactivePower: { unit: "var", symbol: "Q", about: "reactive power of all phases, positive where it flows the same way as active power", usual: [-10000000, 10000000] },
    resistance: { unit: "Ω", symbol: "R", about: "resistance of one conductor", from: 0, usual: [0, 10] },
    reactance: { unit: "Ω", symbol: "X", about: "reactance of one conductor", from: 0, usual: [0, 5] },
    lineVoltage: { unit: "V", symbol: "U", about: "line-to-line voltage", above: 0, usual: [100, 1000] },
  },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "(activePower * resistance + reactivePower * reactance) / lineVoltage",
  source: [{ in: "VDE-AR-N 4105:2018", clause: "annex on voltage change", grade: "memory" }],
  note: "an inverter that injects both has both positive: voltage rises; one that absorbs reactive power has Q below zero",
  unproven: { because: "no publication found", sought: "worked voltage changes by active and reactive power with their resistance and reactance" },
});

/**
 * Voltage change of a circuit of two conductors by the power that flows.
 *
 * @function
 * @example
 * ```ts
 * import { twoConductorChangeByPower } from "pv-to-grid/conductor";
 * twoConductorChangeByPower({ activePower: "4.6 kW", reactivePower: 0, resistance: "0.1 Ω", reactance: "0.01 Ω", nominalVoltage: "230 V" }).text; // "4"
 * ```
 */
export const twoConductorChangeByPower = /* @__PURE__ */ formula({
  id: "conductor/two-conductor-change-by-power", about: "voltage change of a circuit of two conductors by the power that flows",
  takes: {
    activePower: { unit: "W", symbol: "P", about: "active power", usual: [-1000000, 1000000] },
    reactivePower: { unit: "var", symbol: "Q", about: "reactive power, positive where it flows the same way as active power", usual: [-1000000, 1000000] },
    resistance: { unit: "Ω", symbol: "R", about: "resistance of one conductor", from: 0, usual: [0, 10] },
    reactance: { unit: "Ω", symbol: "X", about: "reactance of one conductor", from: 0, usual: [0, 5] },
    nominalVoltage: { unit: "V", symbol: "U_n", about: "voltage between the conductors", above: 0, usual: [12, 1500] },
  },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "2 * (activePower * resistance + reactivePower * reactance) / nominalVoltage",
  source: [{ in: "VDE-AR-N 4105:2018", clause: "annex on voltage change", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked voltage changes by active and reactive power with their resistance and reactance" },
});
