import { condition, formula, table } from "../../formula/index.js";

/**
 * Largest resistance of an earth electrode for a residual current device. @function
 *
 * @example
 * ```ts
 * import { largestElectrodeResistance } from "pv-to-grid/protection";
 * largestElectrodeResistance({ touchVoltageLimit: "50 V", ratedResidualCurrent: "30 mA" }).show(); // "1667 Ω"
 * ```
 */
export const largestElectrodeResistance = /* @__PURE__ */ formula({
  id: "protection/largest-electrode-resistance",
  about: "largest resistance of an earth electrode for a residual current device",
  takes: {
    touchVoltageLimit: { unit: "V", symbol: "U_L", about: "touch voltage that may persist", above: 0, to: 120 },
    ratedResidualCurrent: { unit: "A", symbol: "I_Δn", about: "rated residual operating current of the device", above: 0, usual: [0.005, 10] },
  },
  gives: { unit: "Ω", symbol: "R_A,max" },
  expression: "touchVoltageLimit / ratedResidualCurrent",
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.5.3", grade: "copied", seen: "Kewtech KT64 manual:undated, p. 24" }],
});

/**
 * Largest rated residual current for an earth electrode. @function
 *
 * @example
 * ```ts
 * import { largestResidualCurrent } from "pv-to-grid/protection";
 * largestResidualCurrent({ touchVoltageLimit: "50 V", electrodeResistance: "200 Ω" }).text; // "0.25"
 * ```
 */
export const largestResidualCurrent = /* @__PURE__ */ formula({
  id: "protection/largest-residual-current",
  about: "largest rated residual current for an earth electrode",
  takes: {
    touchVoltageLimit: { unit: "V", symbol: "U_L", about: "touch voltage that may persist", above: 0, to: 120 },
    electrodeResistance: { unit: "Ω", symbol: "R_A", about: "resistance of the earth electrode and its conductor", above: 0, usual: [0.1, 20000] },
  },
  gives: { unit: "A", symbol: "I_Δn,max" },
  expression: "touchVoltageLimit / electrodeResistance",
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.5.3", grade: "copied", seen: "Kewtech KT64 manual:undated, p. 24" }],
  unproven: { because: "no publication found", sought: "largest residual current for an electrode; only a forum quotation was found" },
});

/**
 * Is the earth electrode good enough for the residual current device? @function
 *
 * @example
 * ```ts
 * import { electrodeDisconnects } from "pv-to-grid/protection";
 * electrodeDisconnects({ value: "120 Ω", limit: "1666 Ω" }).verdict; // "met"
 * ```
 */
export const electrodeDisconnects = /* @__PURE__ */ condition({
  id: "protection/electrode-disconnects",
  asks: "Is the earth electrode good enough for the residual current device?",
  force: "requirement",
  value: { unit: "Ω", symbol: "R_A", about: "resistance of the electrode" },
  relation: "≤",
  limit: { unit: "Ω", symbol: "U_L / I_Δn", about: "largest resistance for the device" },
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.5.3", grade: "copied", seen: "Kewtech KT64 manual:undated, p. 24" }],
  worse: { "electrode.resistance": "up", "routes[].rcd.ratedResidualCurrent": "up" },
});

/**
 * Is the resistance of the electrode so low that it stays stable? @function
 *
 * @example
 * ```ts
 * import { electrodeStable } from "pv-to-grid/protection";
 * electrodeStable({ value: "120 Ω", limit: "200 Ω" }).verdict; // "met"
 * ```
 */
export const electrodeStable = /* @__PURE__ */ condition({
  id: "protection/electrode-stable",
  asks: "Is the resistance of the electrode so low that it stays stable?",
  force: "recommendation",
  value: { unit: "Ω", symbol: "R_A", about: "resistance of the electrode" },
  relation: "≤",
  limit: { unit: "Ω", symbol: "200 Ω", about: "resistance up to which an electrode counts as stable" },
  source: [{ in: "BS 7671:2018", clause: "table 41.5, note", grade: "copied", seen: "DIYnot forum 108875:undated, post 1" }],
  worse: { "electrode.resistance": "up" },
});

/**
 * Touch voltage that may persist. @function
 *
 * @example
 * ```ts
 * import { touchVoltageLimits } from "pv-to-grid/protection";
 * touchVoltageLimits({ place: "ordinary" }).text; // "50"
 * ```
 */
export const touchVoltageLimits = /* @__PURE__ */ table({
  id: "protection/touch-voltage-limits",
  about: "touch voltage that may persist",
  rows: { name: "place", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "V", symbol: "U_L" },
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.5.3", grade: "copied", seen: "Kewtech KT64 manual:undated, p. 24" }],
  cells: `
    ordinary          50
    special location  25
  `,
});

/**
 * Resistance up to which an earth electrode counts as stable. @function
 *
 * @example
 * ```ts
 * import { stableElectrodeLimit } from "pv-to-grid/protection";
 * stableElectrodeLimit({ rule: "stable up to" }).text; // "200"
 * ```
 */
export const stableElectrodeLimit = /* @__PURE__ */ table({
  id: "protection/stable-electrode-limit",
  about: "resistance up to which an earth electrode counts as stable",
  rows: { name: "rule", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "Ω", symbol: "R_A" },
  source: [{ in: "BS 7671:2018", clause: "table 41.5, note", grade: "copied", seen: "DIYnot forum 108875:undated, post 1" }],
  cells: `
    stable up to  200
  `,
});
