import { formula } from "../../formula/index.js";

/**
 * Active power that remains under a limit given as a share of the installed power.
 *
 * @function
 * @example
 * ```ts
 * import { activePowerLimitOfShare } from "pv-to-grid/grid";
 * activePowerLimitOfShare({ installedPower: "12 kW", limitShare: "60 %" }).text; // "7200"
 * ```
 */
export const activePowerLimitOfShare = /* @__PURE__ */ formula({
  id: "grid/active-power-limit-of-share",
  about: "active power that remains under a limit given as a share of the installed power",
  takes: {
    installedPower: { unit: "W", symbol: "P_inst", about: "installed power that the share refers to", from: 0, usual: [0, 1e9] },
    limitShare: { unit: "1", symbol: "k", about: "share of the installed power that may be fed in", from: 0, to: 1, usual: [0, 1] },
  },
  gives: { unit: "W", symbol: "P_lim" },
  expression: "installedPower * limitShare",
  source: [{ in: "EKS notice:undated", clause: "example, 70 % of 10 kWp", grade: "original" }],
});

/**
 * Active power that flows out of the site after its own loads.
 *
 * @function
 * @example
 * ```ts
 * import { exportedPower } from "pv-to-grid/grid";
 * exportedPower({ activePower: "10 kW", loadPower: "2 kW" }).text; // "8000"
 * ```
 */
export const exportedPower = /* @__PURE__ */ formula({
  id: "grid/exported-power",
  about: "active power that flows out of the site after its own loads",
  takes: {
    activePower: { unit: "W", symbol: "P", about: "active power of the plant", from: 0, usual: [0, 1e9] },
    loadPower: { unit: "W", symbol: "P_load", about: "active power that the site takes at that moment", from: 0, usual: [0, 1e9] },
  },
  gives: { unit: "W", symbol: "P_exp" },
  expression: "activePower - loadPower",
  source: [{ in: "common practice", clause: "balance at the meter", grade: "common-practice" }],
  note: "negative where the site still draws from the grid; the whole-site rating is taken with the loads at zero",
  unproven: { because: "definition" },
});

/**
 * Ratio of the rated d.c. power of the array to the rated a.c. power of the inverters.
 *
 * @function
 * @example
 * ```ts
 * import { dcToAcRatio } from "pv-to-grid/grid";
 * dcToAcRatio({ arrayPower: "12 kW", inverterPower: "10 kW" }).text; // "1.2"
 * ```
 */
export const dcToAcRatio = /* @__PURE__ */ formula({
  id: "grid/dc-to-ac-ratio",
  about: "ratio of the rated d.c. power of the array to the rated a.c. power of the inverters",
  takes: {
    arrayPower: { unit: "W", symbol: "P_dc", about: "power of the array at standard test conditions", above: 0, usual: [1, 1e12] },
    inverterPower: { unit: "W", symbol: "P_ac", about: "rated active power of the inverters", above: 0, usual: [1, 1e12] },
  },
  gives: { unit: "1", symbol: "r" },
  expression: "arrayPower / inverterPower",
  source: [{ in: "EIA Today in Energy 35372:2018", clause: "text", grade: "original" }],
});
