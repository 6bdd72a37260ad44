import { formula } from "../../formula/index.js";

/**
 * Reactive power that a watt-var curve asks for.
 *
 * @function
 * @example
 * ```ts
 * import { wattVarResponse } from "pv-to-grid/grid";
 * const points = { active1: "0.2", active2: "0.5", active3: 1, reactive1: 0, reactive2: 0, reactive3: "-0.44" };
 * wattVarResponse({ activeShare: "0.7", ...points }).text; // "-0.176"
 * ```
 */
export const wattVarResponse = /* @__PURE__ */ formula({
  id: "grid/watt-var-response",
  about: "reactive power that a watt-var curve asks for",
  takes: {
    activeShare: { unit: "1", symbol: "p", about: "active power as a share of the rated active power", from: 0, to: 1, usual: [0, 1] },
    active1: { unit: "1", symbol: "p_1", about: "active power of the first point", from: 0, to: 1, usual: [0, 1] },
    active2: { unit: "1", symbol: "p_2", about: "active power of the second point", from: 0, to: 1, usual: [0, 1] },
    active3: { unit: "1", symbol: "p_3", about: "active power of the third point", from: 0, to: 1, usual: [0, 1] },
    reactive1: { unit: "1", symbol: "q_1", about: "reactive power of the first point, injected where positive", from: -1, to: 1, usual: [-1, 1] },
    reactive2: { unit: "1", symbol: "q_2", about: "reactive power of the second point, injected where positive", from: -1, to: 1, usual: [-1, 1] },
    reactive3: { unit: "1", symbol: "q_3", about: "reactive power of the third point, injected where positive", from: -1, to: 1, usual: [-1, 1] },
  },
  requires: [{ that: "active1 < active2 and active2 < active3", because: "the points of the curve must stand in the order of their powers" }],
  gives: { unit: "1", symbol: "q" },
  expression:
    "activeShare <= active1 ? reactive1 : activeShare < active2 ? reactive1 + (reactive2 - reactive1) * (activeShare - active1) / (active2 - active1) : activeShare < active3 ? reactive2 + (reactive3 - reactive2) * (activeShare - active2) / (active3 - active2) : reactive3",
  source: [{ in: "IEEE 1547:2018", clause: "5.3.4, active power-reactive power mode", grade: "copied", seen: "UL1741SB test scripts:2026, VoltReg/wv.py" }],
  unproven: { because: "no publication found", sought: "tables 38 and 39 of IEEE 1547.1 in an edited publication; they were seen in copies only" },
});

/**
 * Power factor that a cos φ(P) curve asks for.
 *
 * @function
 * @example
 * ```ts
 * import { powerFactorOfPowerResponse } from "pv-to-grid/grid";
 * powerFactorOfPowerResponse({ activeShare: "0.75", active1: "0.5", active2: 1, powerFactor1: 1, powerFactor2: "0.9" }).text; // "0.95"
 * ```
 */
export const powerFactorOfPowerResponse = /* @__PURE__ */ formula({
  id: "grid/power-factor-of-power-response",
  about: "power factor that a cos φ(P) curve asks for",
  takes: {
    activeShare: { unit: "1", symbol: "p", about: "active power as a share of the rated active power", from: 0, to: 1, usual: [0, 1] },
    active1: { unit: "1", symbol: "p_1", about: "active power of the first point", from: 0, to: 1, usual: [0, 1] },
    active2: { unit: "1", symbol: "p_2", about: "active power of the second point", from: 0, to: 1, usual: [0, 1] },
    powerFactor1: { unit: "1", symbol: "cos φ_1", about: "power factor of the first point", above: 0, to: 1, usual: [0.5, 1] },
    powerFactor2: { unit: "1", symbol: "cos φ_2", about: "power factor of the second point, absorbing", above: 0, to: 1, usual: [0.5, 1] },
  },
  requires: [{ that: "active1 < active2", because: "the points of the curve must stand in the order of their powers" }],
  gives: { unit: "1", symbol: "cos φ" },
  expression:
    "activeShare <= active1 ? powerFactor1 : activeShare < active2 ? powerFactor1 + (powerFactor2 - powerFactor1) * (activeShare - active1) / (active2 - active1) : powerFactor2",
  source: [{ in: "VDE-AR-N 4105:2018", clause: "5.7.2.4", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked point of a cos φ(P) curve with its ends printed" },
});
