import { formula } from "../../formula/index.js";

/**
 * Relative voltage change at a connection point of known short-circuit power and impedance angle.
 *
 * @function
 * @example
 * ```ts
 * import { relativeVoltageChangeAtShortCircuitPower } from "pv-to-grid/grid";
 * relativeVoltageChangeAtShortCircuitPower({ activePower: "24 kW", reactivePower: "0 var", shortCircuitPower: "1.2 MVA", networkImpedanceAngle: "0 deg" }).number; // 0.02
 * ```
 */
export const relativeVoltageChangeAtShortCircuitPower = /* @__PURE__ */ formula({
  id: "grid/relative-voltage-change-at-short-circuit-power",
  about: "relative voltage change at a connection point of known short-circuit power and impedance angle",
  takes: {
    activePower: { unit: "W", symbol: "P", about: "active power, fed towards the grid where positive", usual: [-1e9, 1e9] },
    reactivePower: { unit: "var", symbol: "Q", about: "reactive power, injected where positive, absorbed where negative", usual: [-1e9, 1e9] },
    shortCircuitPower: { unit: "VA", symbol: "S_k", about: "short-circuit power at the connection point", above: 0, usual: [1e4, 1e12] },
    networkImpedanceAngle: { unit: "deg", symbol: "ψ_k", about: "angle of the network impedance", from: 0, below: 90, usual: [0, 90] },
  },
  constants: { halfTurn: { value: "180", unit: "deg", symbol: "180°", about: "half a turn", source: [{ in: "common practice", clause: "definition", grade: "common-practice" }] } },
  gives: { unit: "1", symbol: "d" },
  expression: "(activePower * cos(pi * networkImpedanceAngle / halfTurn) + reactivePower * sin(pi * networkImpedanceAngle / halfTurn)) / shortCircuitPower",
  source: [{ in: "VDE-AR-N 4105:2018", clause: "annex on voltage change", grade: "memory" }],
  note: "the same as (P R + Q X)/U², with R and X taken from short-circuit power and angle",
  unproven: { because: "no publication found", sought: "worked voltage change with short-circuit power and angle printed" },
});

/**
 * Largest relative voltage change that an apparent power can cause, whatever the angles.
 *
 * @function
 * @example
 * ```ts
 * import { voltageChangeBound } from "pv-to-grid/grid";
 * voltageChangeBound({ apparentPower: "24 kVA", shortCircuitPower: "1200 kVA" }).text; // "0.02"
 * ```
 */
export const voltageChangeBound = /* @__PURE__ */ formula({
  id: "grid/voltage-change-bound",
  about: "largest relative voltage change that an apparent power can cause, whatever the angles",
  takes: {
    apparentPower: { unit: "VA", symbol: "S_A", about: "apparent power of the plants", from: 0, usual: [0, 1e9] },
    shortCircuitPower: { unit: "VA", symbol: "S_k", about: "short-circuit power at the connection point", above: 0, usual: [1e4, 1e12] },
  },
  gives: { unit: "1", symbol: "d_max" },
  expression: "apparentPower / shortCircuitPower",
  source: [{ in: "VDEW guideline:2001", clause: "assessment scheme, p. 68 to 70", grade: "reproduced", seen: "SFV on the VDEW guideline:2001, body" }],
});

/**
 * Resistance of a network of known short-circuit power and impedance angle.
 *
 * @function
 * @example
 * ```ts
 * import { networkResistance } from "pv-to-grid/grid";
 * networkResistance({ nominalVoltage: "230 V", shortCircuitPower: "800 kVA", networkImpedanceAngle: "30 deg" }).show(); // "0.05727 Ω"
 * ```
 */
export const networkResistance = /* @__PURE__ */ formula({
  id: "grid/network-resistance",
  about: "resistance of a network of known short-circuit power and impedance angle",
  takes: {
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage, line to line", above: 0, usual: [50, 1000] },
    shortCircuitPower: { unit: "VA", symbol: "S_k", about: "short-circuit power at the connection point", above: 0, usual: [1e4, 1e12] },
    networkImpedanceAngle: { unit: "deg", symbol: "ψ_k", about: "angle of the network impedance", from: 0, below: 90, usual: [0, 90] },
  },
  constants: { halfTurn: { value: "180", unit: "deg", symbol: "180°", about: "half a turn", source: [{ in: "common practice", clause: "definition", grade: "common-practice" }] } },
  gives: { unit: "Ω", symbol: "R_k" },
  expression: "nominalVoltage ^ 2 / shortCircuitPower * cos(pi * networkImpedanceAngle / halfTurn)",
  source: [{ in: "common practice", clause: "definition of short-circuit power", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Reactance of a network of known short-circuit power and impedance angle.
 *
 * @function
 * @example
 * ```ts
 * import { networkReactance } from "pv-to-grid/grid";
 * networkReactance({ nominalVoltage: "230 V", shortCircuitPower: "800 kVA", networkImpedanceAngle: "30 deg" }).show(); // "0.03306 Ω"
 * ```
 */
export const networkReactance = /* @__PURE__ */ formula({
  id: "grid/network-reactance",
  about: "reactance of a network of known short-circuit power and impedance angle",
  takes: {
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage, line to line", above: 0, usual: [50, 1000] },
    shortCircuitPower: { unit: "VA", symbol: "S_k", about: "short-circuit power at the connection point", above: 0, usual: [1e4, 1e12] },
    networkImpedanceAngle: { unit: "deg", symbol: "ψ_k", about: "angle of the network impedance", from: 0, below: 90, usual: [0, 90] },
  },
  constants: { halfTurn: { value: "180", unit: "deg", symbol: "180°", about: "half a turn", source: [{ in: "common practice", clause: "definition", grade: "common-practice" }] } },
  gives: { unit: "Ω", symbol: "X_k" },
  expression: "nominalVoltage ^ 2 / shortCircuitPower * sin(pi * networkImpedanceAngle / halfTurn)",
  source: [{ in: "common practice", clause: "definition of short-circuit power", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Short-circuit power of a network of known resistance and reactance.
 *
 * @function
 * @example
 * ```ts
 * import { shortCircuitPowerOfNetwork } from "pv-to-grid/grid";
 * shortCircuitPowerOfNetwork({ nominalVoltage: "230 V", resistance: "0.2 ohm", reactance: "0.1 ohm" }).show(); // "236600 VA"
 * ```
 */
export const shortCircuitPowerOfNetwork = /* @__PURE__ */ formula({
  id: "grid/short-circuit-power-of-network",
  about: "short-circuit power of a network of known resistance and reactance",
  takes: {
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage, line to line", above: 0, usual: [50, 1000] },
    resistance: { unit: "Ω", symbol: "R", about: "resistance of one line conductor up to the source", from: 0, usual: [0, 100] },
    reactance: { unit: "Ω", symbol: "X", about: "reactance of one line conductor up to the source", from: 0, usual: [0, 100] },
  },
  requires: [{ that: "resistance + reactance > 0", because: "a network without impedance has no finite short-circuit power" }],
  gives: { unit: "VA", symbol: "S_k" },
  expression: "nominalVoltage ^ 2 / sqrt(resistance ^ 2 + reactance ^ 2)",
  source: [{ in: "common practice", clause: "definition of short-circuit power", grade: "common-practice" }],
  unproven: { because: "definition" },
});
