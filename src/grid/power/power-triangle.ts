import { formula } from "../../formula/index.js";

/**
 * Apparent power of an active and a reactive power.
 *
 * @function
 * @example
 * ```ts
 * import { apparentPowerOf } from "pv-to-grid/grid";
 * apparentPowerOf({ activePower: "3 kW", reactivePower: "-4 kvar" }).in("kVA").show(); // "5 kVA"
 * ```
 */
export const apparentPowerOf = /* @__PURE__ */ formula({
  id: "grid/apparent-power-of",
  about: "apparent power of an active and a reactive power",
  takes: {
    activePower: { unit: "W", symbol: "P", about: "active power", usual: [-1e9, 1e9] },
    reactivePower: { unit: "var", symbol: "Q", about: "reactive power, injected where positive, absorbed where negative", usual: [-1e9, 1e9] },
  },
  gives: { unit: "VA", symbol: "S" },
  expression: "sqrt(activePower ^ 2 + reactivePower ^ 2)",
  source: [{ in: "Manhire basic EE:undated", clause: "example 5-3, slide 49", grade: "original" }],
});

/**
 * Apparent power that an active power needs at a power factor.
 *
 * @function
 * @example
 * ```ts
 * import { apparentPowerForPowerFactor } from "pv-to-grid/grid";
 * apparentPowerForPowerFactor({ activePower: "4.5 kW", powerFactor: "0.9" }).text; // "5000"
 * ```
 */
export const apparentPowerForPowerFactor = /* @__PURE__ */ formula({
  id: "grid/apparent-power-for-power-factor",
  about: "apparent power that an active power needs at a power factor",
  takes: {
    activePower: { unit: "W", symbol: "P", about: "active power", from: 0, usual: [0, 1e9] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "displacement power factor", above: 0, to: 1, usual: [0.1, 1] },
  },
  gives: { unit: "VA", symbol: "S" },
  expression: "activePower / powerFactor",
  source: [
    { in: "EKS notice:undated", clause: "example", grade: "original" },
    { in: "Elmeasure on capacitors:undated", clause: "example", grade: "original" },
  ],
});

/**
 * Active power of an apparent power at a power factor.
 *
 * @function
 * @example
 * ```ts
 * import { activePowerAtPowerFactor } from "pv-to-grid/grid";
 * activePowerAtPowerFactor({ apparentPower: "10 kVA", powerFactor: "0.95" }).text; // "9500"
 * ```
 */
export const activePowerAtPowerFactor = /* @__PURE__ */ formula({
  id: "grid/active-power-at-power-factor",
  about: "active power of an apparent power at a power factor",
  takes: {
    apparentPower: { unit: "VA", symbol: "S", about: "apparent power", from: 0, usual: [0, 1e9] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "displacement power factor", from: 0, to: 1, usual: [0.1, 1] },
  },
  gives: { unit: "W", symbol: "P" },
  expression: "apparentPower * powerFactor",
  source: [{ in: "Elmeasure on capacitors:undated", clause: "example, S = P/cos φ", grade: "original" }],
});

/**
 * Magnitude of the reactive power of an active power at a power factor.
 *
 * @function
 * @example
 * ```ts
 * import { reactivePowerAtPowerFactor } from "pv-to-grid/grid";
 * reactivePowerAtPowerFactor({ activePower: "10 kW", powerFactor: "0.95" }).show(); // "3287 var"
 * ```
 */
export const reactivePowerAtPowerFactor = /* @__PURE__ */ formula({
  id: "grid/reactive-power-at-power-factor",
  about: "magnitude of the reactive power of an active power at a power factor",
  takes: {
    activePower: { unit: "W", symbol: "P", about: "active power", from: 0, usual: [0, 1e9] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "displacement power factor", above: 0, to: 1, usual: [0.1, 1] },
  },
  gives: { unit: "var", symbol: "|Q|" },
  expression: "activePower * sqrt(1 - powerFactor ^ 2) / powerFactor",
  source: [{ in: "Elmeasure on capacitors:undated", clause: "example, factor in kvar per kW", grade: "original" }],
});

/**
 * Displacement power factor of an active and a reactive power.
 *
 * @function
 * @example
 * ```ts
 * import { powerFactorOf } from "pv-to-grid/grid";
 * powerFactorOf({ activePower: "10 kW", reactivePower: "-3 kvar" }).show(); // "0.9578"
 * ```
 */
export const powerFactorOf = /* @__PURE__ */ formula({
  id: "grid/power-factor-of",
  about: "displacement power factor of an active and a reactive power",
  takes: {
    activePower: { unit: "W", symbol: "P", about: "active power", from: 0, usual: [0, 1e9] },
    reactivePower: { unit: "var", symbol: "Q", about: "reactive power, injected where positive, absorbed where negative", usual: [-1e9, 1e9] },
  },
  requires: [{ that: "activePower ^ 2 + reactivePower ^ 2 > 0", because: "a power factor needs a power" }],
  gives: { unit: "1", symbol: "cos φ" },
  expression: "activePower / sqrt(activePower ^ 2 + reactivePower ^ 2)",
  source: [{ in: "common practice", clause: "definition", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Active power that an apparent power leaves beside a reactive power.
 *
 * @function
 * @example
 * ```ts
 * import { activePowerBesideReactive } from "pv-to-grid/grid";
 * activePowerBesideReactive({ apparentPower: "10 kVA", reactivePower: "-3 kvar" }).show(); // "9539 W"
 * ```
 */
export const activePowerBesideReactive = /* @__PURE__ */ formula({
  id: "grid/active-power-beside-reactive",
  about: "active power that an apparent power leaves beside a reactive power",
  takes: {
    apparentPower: { unit: "VA", symbol: "S", about: "apparent power of the inverter", from: 0, usual: [0, 1e9] },
    reactivePower: { unit: "var", symbol: "Q", about: "reactive power, injected where positive, absorbed where negative", usual: [-1e9, 1e9] },
  },
  requires: [{ that: "abs(reactivePower) <= apparentPower", because: "the reactive power must not exceed the apparent power" }],
  gives: { unit: "W", symbol: "P_max" },
  expression: "sqrt(apparentPower ^ 2 - reactivePower ^ 2)",
  source: [{ in: "common practice", clause: "P² + Q² = S²", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Reactive power that moves a site from one power factor to a better one.
 *
 * @function
 * @example
 * ```ts
 * import { reactivePowerBetweenPowerFactors } from "pv-to-grid/grid";
 * reactivePowerBetweenPowerFactors({ activePower: "10 kW", powerFactorBefore: "0.8", powerFactorAfter: "0.95" }).show(); // "4213 var"
 * ```
 */
export const reactivePowerBetweenPowerFactors = /* @__PURE__ */ formula({
  id: "grid/reactive-power-between-power-factors",
  about: "reactive power that moves a site from one power factor to a better one",
  takes: {
    activePower: { unit: "W", symbol: "P", about: "active power taken by the site", from: 0, usual: [0, 1e9] },
    powerFactorBefore: { unit: "1", symbol: "cos φ_1", about: "power factor as it is", above: 0, to: 1, usual: [0.1, 1] },
    powerFactorAfter: { unit: "1", symbol: "cos φ_2", about: "power factor that is wanted", above: 0, to: 1, usual: [0.1, 1] },
  },
  requires: [{ that: "powerFactorAfter >= powerFactorBefore", because: "the power factor that is wanted must be the better one" }],
  gives: { unit: "var", symbol: "Q" },
  expression: "activePower * (sqrt(1 - powerFactorBefore ^ 2) / powerFactorBefore - sqrt(1 - powerFactorAfter ^ 2) / powerFactorAfter)",
  source: [
    { in: "Elmeasure on capacitors:undated", clause: "example", grade: "original" },
    { in: "ElectricalWiki capacitors:undated", clause: "example with four loads", grade: "original" },
  ],
  note: "a site whose active power is met by the plant shows a poorer power factor at its meter: the reactive power is still drawn",
});

/**
 * Reactive power as a share of the apparent power.
 *
 * @function
 * @example
 * ```ts
 * import { reactivePowerOfShare } from "pv-to-grid/grid";
 * reactivePowerOfShare({ apparentPower: "10 kVA", reactiveShare: "-0.44" }).text; // "-4400"
 * ```
 */
export const reactivePowerOfShare = /* @__PURE__ */ formula({
  id: "grid/reactive-power-of-share",
  about: "reactive power as a share of the apparent power",
  takes: {
    apparentPower: { unit: "VA", symbol: "S_r", about: "rated apparent power", from: 0, usual: [0, 1e9] },
    reactiveShare: { unit: "1", symbol: "q", about: "share, injecting where positive, absorbing where negative", from: -1, to: 1, usual: [-1, 1] },
  },
  gives: { unit: "var", symbol: "Q" },
  expression: "apparentPower * reactiveShare",
  source: [{ in: "IEEE 1547:2018", clause: "5.2, share of the nameplate apparent power", grade: "copied", seen: "UL1741SB test scripts:2026, VoltReg/vv.py" }],
  unproven: { because: "definition" },
});
