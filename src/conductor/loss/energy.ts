import { formula } from "../../formula/index.js";

/**
 * Energy lost at a constant current.
 *
 * @function
 * @example
 * ```ts
 * import { energyLost } from "pv-to-grid/conductor";
 * energyLost({ loss: "50 W", duration: "1000 h" }).show(); // "50 kWh"
 * ```
 */
export const energyLost = /* @__PURE__ */ formula({
  id: "conductor/energy-lost", about: "energy lost at a constant current",
  takes: {
    loss: { unit: "kW", symbol: "P_loss", about: "power lost", from: 0, usual: [0, 1000] },
    duration: { unit: "h", symbol: "t", about: "duration", from: 0, usual: [0, 8784] },
  },
  gives: { unit: "kWh", symbol: "E_loss" },
  expression: "loss * duration",
  source: [{ in: "common practice", clause: "arithmetic of loss and price", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Hours of a load step, weighted with the square of its share of the maximum current.
 *
 * @function
 * @example
 * ```ts
 * import { lossHoursOfBin } from "pv-to-grid/conductor";
 * lossHoursOfBin({ loadShare: "0.5", duration: "1000 h" }).text; // "250"
 * ```
 */
export const lossHoursOfBin = /* @__PURE__ */ formula({
  id: "conductor/loss-hours-of-bin", about: "hours of a load step, weighted with the square of its share of the maximum current",
  takes: {
    loadShare: { unit: "1", symbol: "λ", about: "current as a share of the maximum current", from: 0, to: 1.5 },
    duration: { unit: "h", symbol: "t", about: "hours at this share", from: 0, to: 8784 },
  },
  gives: { unit: "h", symbol: "t_λ" },
  expression: "loadShare ^ 2 * duration",
  source: [{ in: "PVPMC d.c. wiring losses:undated", clause: "loss with the square of the current", grade: "original" }],
  unproven: { because: "definition" },
});

/**
 * Hours at the maximum current that lose as much as all load steps together.
 *
 * @function
 * @example
 * ```ts
 * import { lossHours } from "pv-to-grid/conductor";
 * lossHours({ weightedHours: ["250 h", "90 h"] }).text; // "340"
 * ```
 */
export const lossHours = /* @__PURE__ */ formula({
  id: "conductor/loss-hours", about: "hours at the maximum current that lose as much as all load steps together",
  takes: {
    weightedHours: { each: "h", symbol: "t_λ", about: "weighted hours of each load step", from: 0 },
  },
  gives: { unit: "h", symbol: "T" },
  expression: "sum(weightedHours)",
  source: [{ in: "common practice", clause: "arithmetic of loss and price", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Cost of energy.
 *
 * @function
 * @example
 * ```ts
 * import { energyCost } from "pv-to-grid/conductor";
 * energyCost({ energy: "50 kWh", energyPrice: "0.1 money/kWh" }).text; // "5"
 * ```
 */
export const energyCost = /* @__PURE__ */ formula({
  id: "conductor/energy-cost", about: "cost of energy",
  takes: {
    energy: { unit: "kWh", symbol: "E", about: "energy", from: 0, usual: [0, 10000000] },
    energyPrice: { unit: "money/kWh", symbol: "p", about: "price of energy", from: 0, usual: [0, 2] },
  },
  gives: { unit: "money", symbol: "C" },
  expression: "energy * energyPrice",
  source: [{ in: "Electrical Business upsizing article:2018", clause: "opening test case", grade: "original" }],
  unproven: { because: "no publication found", sought: "energy costs with their last digit certain" },
});
