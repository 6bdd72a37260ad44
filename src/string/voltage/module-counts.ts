import { formula } from "../../formula/index.js";

/**
 * Largest number of modules in series whose voltage stays within a limit. @function
 *
 * @example
 * ```ts
 * import { longestString } from "pv-to-grid/string";
 * longestString({ voltageLimit: "400 V", moduleVoltage: "47.2 V" }).text; // "8"
 * ```
 */
export const longestString = /* @__PURE__ */ formula({
  id: "string/longest-string",
  about: "largest number of modules in series whose voltage stays within a limit",
  takes: {
    voltageLimit: { unit: "V", symbol: "U_lim", about: "limit of the string's voltage", above: 0, usual: [10, 1500] },
    moduleVoltage: { unit: "V", symbol: "U_mod", about: "voltage of one module", above: 0, usual: [0.5, 200] },
  },
  gives: { unit: "1", symbol: "n_max" },
  expression: "floor(voltageLimit / moduleVoltage)",
  source: [
    { in: "Solahart module manual:undated", clause: "5.1.2 and 5.1.4", grade: "original" },
    { in: "GuidEnR course:2011", clause: "step 2, number of modules in series", grade: "original" },
  ],
  note: "explains a count; what decides it is the condition itself, met at this count and not at the next",
  unproven: { because: "no publication found", sought: "sizings that print the limit and the cold voltage of one module side by side; those found are recalled or print the string alone" },
});

/**
 * Smallest number of modules in series whose voltage reaches a limit. @function
 *
 * @example
 * ```ts
 * import { shortestString } from "pv-to-grid/string";
 * shortestString({ voltageLimit: "154 V", moduleVoltage: "26.6 V" }).text; // "6"
 * ```
 */
export const shortestString = /* @__PURE__ */ formula({
  id: "string/shortest-string",
  about: "smallest number of modules in series whose voltage reaches a limit",
  takes: {
    voltageLimit: { unit: "V", symbol: "U_lim", about: "limit that the string's voltage must reach", above: 0, usual: [10, 1500] },
    moduleVoltage: { unit: "V", symbol: "U_mod", about: "voltage of one module, less what drops in the cables", above: 0, usual: [0.5, 200] },
  },
  gives: { unit: "1", symbol: "n_min" },
  expression: "ceil(voltageLimit / moduleVoltage)",
  source: [
    { in: "GuidEnR course:2011", clause: "step 2, number of modules in series", grade: "original" },
    { in: "SEIAPI guideline:2012", clause: "minimum number of modules in a string", grade: "memory" },
  ],
  note: "explains a count; what decides it is the condition itself, met at this count and not at the one before",
  unproven: { because: "no publication found", sought: "sizings that print the limit and the hot voltage of one module side by side; those found are recalled" },
});
