import { formula } from "../../formula/index.js";

/**
 * Voltage change that a plant causes across the impedance of a stretch.
 *
 * @function
 * @example
 * ```ts
 * import { voltageChange } from "pv-to-grid/grid";
 * voltageChange({ activePower: "10 kW", reactivePower: "0 var", resistance: "0.2 ohm", reactance: "0.1 ohm", nominalVoltage: "400 V" }).text; // "5"
 * ```
 */
export const voltageChange = /* @__PURE__ */ formula({
  id: "grid/voltage-change",
  about: "voltage change that a plant causes across the impedance of a stretch",
  takes: {
    activePower: { unit: "W", symbol: "P", about: "active power, fed towards the grid where positive", usual: [-1e9, 1e9] },
    reactivePower: { unit: "var", symbol: "Q", about: "reactive power, fed towards the grid (injected) where positive, absorbed where negative", usual: [-1e9, 1e9] },
    resistance: { unit: "Ω", symbol: "R", about: "resistance of one line conductor, or of the loop where the connection is single-phase", from: 0, usual: [0, 100] },
    reactance: { unit: "Ω", symbol: "X", about: "reactance of one line conductor, or of the loop where the connection is single-phase", usual: [-100, 100] },
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage, line to line, or line to neutral where the connection is single-phase", above: 0, usual: [50, 1000] },
  },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "(activePower * resistance + reactivePower * reactance) / nominalVoltage",
  source: [
    { in: "VDE-AR-N 4105:2018", clause: "annex on voltage change", grade: "memory" },
    { in: "common practice", clause: "in-phase part of the voltage drop of a short line", grade: "common-practice" },
  ],
  note: "in-phase part only; the exact form is voltageAtInfeed",
  unproven: { because: "no publication found", sought: "worked voltage rise with P, Q, R and X printed" },
});

/**
 * Voltage change that a plant causes across the impedance of a stretch, as a share of the nominal voltage.
 *
 * @function
 * @example
 * ```ts
 * import { relativeVoltageChange } from "pv-to-grid/grid";
 * relativeVoltageChange({ activePower: "10 kW", reactivePower: "-4 kvar", resistance: "0.2 ohm", reactance: "0.1 ohm", nominalVoltage: "400 V" }).text; // "0.01"
 * ```
 */
export const relativeVoltageChange = /* @__PURE__ */ formula({
  id: "grid/relative-voltage-change",
  about: "voltage change that a plant causes across the impedance of a stretch, as a share of the nominal voltage",
  takes: {
    activePower: { unit: "W", symbol: "P", about: "active power, fed towards the grid where positive", usual: [-1e9, 1e9] },
    reactivePower: { unit: "var", symbol: "Q", about: "reactive power, fed towards the grid (injected) where positive, absorbed where negative", usual: [-1e9, 1e9] },
    resistance: { unit: "Ω", symbol: "R", about: "resistance of one line conductor, or of the loop where the connection is single-phase", from: 0, usual: [0, 100] },
    reactance: { unit: "Ω", symbol: "X", about: "reactance of one line conductor, or of the loop where the connection is single-phase", usual: [-100, 100] },
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage, line to line, or line to neutral where the connection is single-phase", above: 0, usual: [50, 1000] },
  },
  gives: { unit: "1", symbol: "Δu" },
  expression: "(activePower * resistance + reactivePower * reactance) / nominalVoltage ^ 2",
  source: [
    { in: "VDE-AR-N 4105:2018", clause: "annex on voltage change", grade: "memory" },
    { in: "common practice", clause: "in-phase part of the voltage drop of a short line", grade: "common-practice" },
  ],
  unproven: { because: "no publication found", sought: "worked voltage rise with P, Q, R and X printed" },
});

/**
 * Share of the nominal voltage that a voltage change is.
 *
 * @function
 * @example
 * ```ts
 * import { shareOfNominalVoltage } from "pv-to-grid/grid";
 * shareOfNominalVoltage({ voltageChange: "5 V", nominalVoltage: "230 V" }).show(); // "0.02174"
 * ```
 */
export const shareOfNominalVoltage = /* @__PURE__ */ formula({
  id: "grid/share-of-nominal-voltage",
  about: "share of the nominal voltage that a voltage change is",
  takes: {
    voltageChange: { unit: "V", symbol: "ΔU", about: "voltage change", usual: [-500, 500] },
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] },
  },
  gives: { unit: "1", symbol: "Δu" },
  expression: "voltageChange / nominalVoltage",
  source: [{ in: "common practice", clause: "definition", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Voltage change along stretches in series.
 *
 * @function
 * @example
 * ```ts
 * import { voltageChangeAlongPath } from "pv-to-grid/grid";
 * voltageChangeAlongPath({ voltageChanges: ["2 V", "3 V"] }).text; // "5"
 * ```
 */
export const voltageChangeAlongPath = /* @__PURE__ */ formula({
  id: "grid/voltage-change-along-path",
  about: "voltage change along stretches in series",
  takes: { voltageChanges: { each: "V", symbol: "ΔU_i", about: "voltage change of each stretch, or of each plant", usual: [-500, 500] } },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "sum(voltageChanges)",
  source: [{ in: "common practice", clause: "sum along the path", grade: "common-practice" }],
  note: "changes of several plants across one stretch add in the same way",
  unproven: { because: "composition only" },
});

/**
 * Voltage at a point with the plant feeding in.
 *
 * @function
 * @example
 * ```ts
 * import { voltageWithInfeed } from "pv-to-grid/grid";
 * voltageWithInfeed({ voltageWithoutPlant: "405 V", voltageChange: "5 V" }).text; // "410"
 * ```
 */
export const voltageWithInfeed = /* @__PURE__ */ formula({
  id: "grid/voltage-with-infeed",
  about: "voltage at a point with the plant feeding in",
  takes: {
    voltageWithoutPlant: { unit: "V", symbol: "U_0", about: "voltage at the head of the path without the plant", above: 0, usual: [50, 1000] },
    voltageChange: { unit: "V", symbol: "ΔU", about: "voltage change up to the point", usual: [-500, 500] },
  },
  gives: { unit: "V", symbol: "U" },
  expression: "voltageWithoutPlant + voltageChange",
  source: [{ in: "common practice", clause: "sum along the path", grade: "common-practice" }],
  unproven: { because: "composition only" },
});

/**
 * Reactance of stretches in series.
 *
 * @function
 * @example
 * ```ts
 * import { reactanceOfPath } from "pv-to-grid/grid";
 * reactanceOfPath({ reactances: ["0.1 ohm", "0.02 ohm"] }).text; // "0.12"
 * ```
 */
export const reactanceOfPath = /* @__PURE__ */ formula({
  id: "grid/reactance-of-path",
  about: "reactance of stretches in series",
  takes: { reactances: { each: "Ω", symbol: "X_i", about: "reactance of each stretch", usual: [-100, 100] } },
  gives: { unit: "Ω", symbol: "X" },
  expression: "sum(reactances)",
  source: [{ in: "common practice", clause: "sum along the path", grade: "common-practice" }],
  unproven: { because: "composition only" },
});
