import { condition } from "../../formula/index.js";

/**
 * Is the temperature coefficient no lower than those of modules on the market?
 *
 * @function
 */
export const coefficientNotBelowPlausible = /* @__PURE__ */ condition({
  id: "module/coefficient-not-below-plausible",
  asks: "Is the temperature coefficient no lower than those of modules on the market?",
  force: "recommendation",
  value: { unit: "1/K", symbol: "c", about: "coefficient of the datasheet" },
  relation: "≥",
  limit: { unit: "1/K", symbol: "c_low", about: "lowest coefficient of modules" },
  source: [{ in: "common practice", clause: "coefficients of modules", grade: "common-practice" }],
});

/**
 * Is the temperature coefficient no higher than those of modules on the market?
 *
 * @function
 */
export const coefficientNotAbovePlausible = /* @__PURE__ */ condition({
  id: "module/coefficient-not-above-plausible",
  asks: "Is the temperature coefficient no higher than those of modules on the market?",
  force: "recommendation",
  value: { unit: "1/K", symbol: "c", about: "coefficient of the datasheet" },
  relation: "≤",
  limit: { unit: "1/K", symbol: "c_high", about: "highest coefficient of modules" },
  source: [{ in: "common practice", clause: "coefficients of modules", grade: "common-practice" }],
});

/**
 * Does the power fall faster with temperature than the open-circuit voltage?
 *
 * @function
 */
export const powerFallsFasterThanVoltage = /* @__PURE__ */ condition({
  id: "module/power-falls-faster-than-voltage",
  asks: "Does the power fall faster with temperature than the open-circuit voltage?",
  force: "recommendation",
  value: { unit: "1/K", symbol: "γ_Pmax", about: "coefficient of the maximum power" },
  relation: "≤",
  limit: { unit: "1/K", symbol: "β_UOC", about: "coefficient of the open-circuit voltage" },
  source: [{ in: "common practice", clause: "the fill factor falls with temperature as well", grade: "common-practice" }],
  note: "otherwise the two coefficients may be swapped",
});

/**
 * Does the voltage at the maximum power point fall faster with temperature than the open-circuit voltage?
 *
 * @function
 */
export const mppVoltageFallsFasterThanOpenCircuit = /* @__PURE__ */ condition({
  id: "module/mpp-voltage-falls-faster-than-open-circuit",
  asks: "Does the voltage at the maximum power point fall faster with temperature than the open-circuit voltage?",
  force: "recommendation",
  value: { unit: "1/K", symbol: "β_UMPP", about: "coefficient of the voltage at the maximum power point" },
  relation: "≤",
  limit: { unit: "1/K", symbol: "β_UOC", about: "coefficient of the open-circuit voltage" },
  source: [{ in: "common practice", clause: "the voltage at the maximum power point falls faster than the open-circuit voltage", grade: "common-practice" }],
  note: "otherwise the coefficient of the open-circuit voltage may have been taken in its place",
});
