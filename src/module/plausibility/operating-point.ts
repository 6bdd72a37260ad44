import { condition } from "../../formula/index.js";

/**
 * Is the voltage at the maximum power point below the open-circuit voltage?
 *
 * @function
 */
export const mppVoltageBelowOpenCircuit = /* @__PURE__ */ condition({
  id: "module/mpp-voltage-below-open-circuit",
  asks: "Is the voltage at the maximum power point below the open-circuit voltage?",
  force: "requirement",
  value: { unit: "V", symbol: "U_MPP", about: "voltage at the maximum power point" },
  relation: "<",
  limit: { unit: "V", symbol: "U_OC", about: "open-circuit voltage" },
  source: [{ in: "common practice", clause: "the maximum power point lies inside the curve", grade: "common-practice" }],
});

/**
 * Is the current at the maximum power point below the short-circuit current?
 *
 * @function
 */
export const mppCurrentBelowShortCircuit = /* @__PURE__ */ condition({
  id: "module/mpp-current-below-short-circuit",
  asks: "Is the current at the maximum power point below the short-circuit current?",
  force: "requirement",
  value: { unit: "A", symbol: "I_MPP", about: "current at the maximum power point" },
  relation: "<",
  limit: { unit: "A", symbol: "I_SC", about: "short-circuit current" },
  source: [{ in: "common practice", clause: "the maximum power point lies inside the curve", grade: "common-practice" }],
});

/**
 * Does the stated power agree with the product of its voltage and current?
 *
 * @function
 */
export const powerMatchesOperatingPoint = /* @__PURE__ */ condition({
  id: "module/power-matches-operating-point",
  asks: "Does the stated power agree with the product of its voltage and current?",
  force: "recommendation",
  value: { unit: "1", symbol: "δ_P", about: "share by which they differ" },
  relation: "≤",
  limit: { unit: "1", symbol: "δ_max", about: "share that rounding explains" },
  source: [{ in: "common practice", clause: "rounding of the three values of a datasheet", grade: "common-practice" }],
});

/**
 * Is the fill factor high enough for a module?
 *
 * @function
 */
export const fillFactorHighEnough = /* @__PURE__ */ condition({
  id: "module/fill-factor-high-enough",
  asks: "Is the fill factor high enough for a module?",
  force: "recommendation",
  value: { unit: "1", symbol: "FF", about: "fill factor" },
  relation: "≥",
  limit: { unit: "1", symbol: "FF_low", about: "lowest fill factor of modules" },
  source: [{ in: "common practice", clause: "fill factors of modules", grade: "common-practice" }],
});

/**
 * Is the fill factor low enough for a module?
 *
 * @function
 */
export const fillFactorLowEnough = /* @__PURE__ */ condition({
  id: "module/fill-factor-low-enough",
  asks: "Is the fill factor low enough for a module?",
  force: "recommendation",
  value: { unit: "1", symbol: "FF", about: "fill factor" },
  relation: "≤",
  limit: { unit: "1", symbol: "FF_high", about: "highest fill factor of modules" },
  source: [{ in: "common practice", clause: "fill factors of modules", grade: "common-practice" }],
});
