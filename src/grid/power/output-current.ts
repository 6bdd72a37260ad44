import { formula } from "../../formula/index.js";

/**
 * Line current of a three-phase apparent power.
 *
 * @function
 * @example
 * ```ts
 * import { outputCurrentThreePhase } from "pv-to-grid/grid";
 * outputCurrentThreePhase({ apparentPower: "10 kVA", lineVoltage: "400 V" }).show(); // "14.43 A"
 * ```
 */
export const outputCurrentThreePhase = /* @__PURE__ */ formula({
  id: "grid/output-current-three-phase",
  about: "line current of a three-phase apparent power",
  takes: {
    apparentPower: { unit: "VA", symbol: "S", about: "apparent power of all phases", from: 0, usual: [0, 1e9] },
    lineVoltage: { unit: "V", symbol: "U_LL", about: "line-to-line voltage", above: 0, usual: [50, 1000] },
  },
  gives: { unit: "A", symbol: "I" },
  expression: "apparentPower / (sqrt(3) * lineVoltage)",
  source: [{ in: "Electrical Business:2018", clause: "opening test case, P = √3 U I cos φ", grade: "original" }],
  unproven: { because: "no publication found", sought: "three-phase rated current with apparent power and line voltage printed" },
});

/**
 * Current of a single-phase apparent power.
 *
 * @function
 * @example
 * ```ts
 * import { outputCurrentSinglePhase } from "pv-to-grid/grid";
 * outputCurrentSinglePhase({ apparentPower: "10 kVA", voltage: "230 V" }).show(); // "43.48 A"
 * ```
 */
export const outputCurrentSinglePhase = /* @__PURE__ */ formula({
  id: "grid/output-current-single-phase",
  about: "current of a single-phase apparent power",
  takes: {
    apparentPower: { unit: "VA", symbol: "S", about: "apparent power", from: 0, usual: [0, 1e9] },
    voltage: { unit: "V", symbol: "U", about: "voltage between the two conductors", above: 0, usual: [50, 1000] },
  },
  gives: { unit: "A", symbol: "I" },
  expression: "apparentPower / voltage",
  source: [
    { in: "SEANZ on 4777.2:2016", clause: "list of major differences", grade: "original" },
    { in: "EnergySafe 51:2018", clause: "p. 18, voltage rise question", grade: "original" },
  ],
});

/**
 * Current of a single-phase active power at unity power factor.
 *
 * @function
 * @example
 * ```ts
 * import { currentAtUnityPowerFactor } from "pv-to-grid/grid";
 * currentAtUnityPowerFactor({ activePower: "10 kW", voltage: "230 V" }).show(); // "43.48 A"
 * ```
 */
export const currentAtUnityPowerFactor = /* @__PURE__ */ formula({
  id: "grid/current-at-unity-power-factor",
  about: "current of a single-phase active power at unity power factor",
  takes: {
    activePower: { unit: "W", symbol: "P", about: "active power", from: 0, usual: [0, 1e9] },
    voltage: { unit: "V", symbol: "U", about: "voltage between the two conductors", above: 0, usual: [50, 1000] },
  },
  gives: { unit: "A", symbol: "I" },
  expression: "activePower / voltage",
  source: [{ in: "Energyhero 6 kW:2024", clause: "calculation paragraphs", grade: "original" }],
});

/**
 * Active power per phase, at unity power factor, that a limit on the current allows.
 *
 * @function
 * @example
 * ```ts
 * import { activePowerWithinCurrentLimit } from "pv-to-grid/grid";
 * activePowerWithinCurrentLimit({ currentLimit: "16 A", voltage: "230 V" }).text; // "3680"
 * ```
 */
export const activePowerWithinCurrentLimit = /* @__PURE__ */ formula({
  id: "grid/active-power-within-current-limit",
  about: "active power per phase, at unity power factor, that a limit on the current allows",
  takes: {
    currentLimit: { unit: "A", symbol: "I_lim", about: "limit of the current per phase", from: 0, usual: [0, 10000] },
    voltage: { unit: "V", symbol: "U", about: "voltage between line and neutral", above: 0, usual: [50, 1000] },
  },
  gives: { unit: "W", symbol: "P_lim" },
  expression: "currentLimit * voltage",
  source: [
    { in: "EREC G98:2022", clause: "scope", grade: "reproduced", seen: "Western Power Distribution G98:undated, rating example" },
    { in: "Energyhero 6 kW:2024", clause: "calculation paragraphs", grade: "original" },
  ],
});

/**
 * Active power of a three-phase current at a power factor.
 *
 * @function
 * @example
 * ```ts
 * import { activePowerThreePhase } from "pv-to-grid/grid";
 * activePowerThreePhase({ lineVoltage: "400 V", current: "16 A", powerFactor: "0.95" }).show(); // "10530 W"
 * ```
 */
export const activePowerThreePhase = /* @__PURE__ */ formula({
  id: "grid/active-power-three-phase",
  about: "active power of a three-phase current at a power factor",
  takes: {
    lineVoltage: { unit: "V", symbol: "U_LL", about: "line-to-line voltage", above: 0, usual: [50, 1000] },
    current: { unit: "A", symbol: "I", about: "line current", from: 0, usual: [0, 10000] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "displacement power factor", from: 0, to: 1, usual: [0.1, 1] },
  },
  gives: { unit: "W", symbol: "P" },
  expression: "sqrt(3) * lineVoltage * current * powerFactor",
  source: [{ in: "Electrical Business:2018", clause: "opening test case", grade: "original" }],
});
