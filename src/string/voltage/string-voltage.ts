import { formula } from "../../formula/index.js";

/**
 * Voltage of a string of equal modules in series. @function
 *
 * @example
 * ```ts
 * import { stringVoltage } from "pv-to-grid/string";
 * stringVoltage({ modules: 18, moduleVoltage: "43.2 V" }).text; // "777.6"
 * ```
 */
export const stringVoltage = /* @__PURE__ */ formula({
  id: "string/string-voltage",
  about: "voltage of a string of equal modules in series",
  takes: {
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 1, usual: [1, 200] },
    moduleVoltage: { unit: "V", symbol: "U_mod", about: "voltage of one module at the temperature in question", above: 0, usual: [0.5, 200] },
  },
  gives: { unit: "V", symbol: "U_string" },
  expression: "modules * moduleVoltage",
  source: [
    { in: "Greencredential questions:undated", clause: "question 4", grade: "original" },
    { in: "IEC 62548-1:2023", clause: "maximum voltage of the PV array", grade: "memory" },
  ],
});

/**
 * Largest voltage of a string by a voltage factor. @function
 *
 * @example
 * ```ts
 * import { maximumVoltageByFactor } from "pv-to-grid/string";
 * maximumVoltageByFactor({ modules: 12, openCircuitVoltage: "37.95 V", voltageFactor: "1.14" }).text; // "519.156"
 * ```
 */
export const maximumVoltageByFactor = /* @__PURE__ */ formula({
  id: "string/maximum-voltage-by-factor",
  about: "largest voltage of a string by a voltage factor",
  takes: {
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 1, usual: [1, 200] },
    openCircuitVoltage: { unit: "V", symbol: "U_OC,STC", about: "open-circuit voltage at standard test conditions", above: 0, usual: [0.5, 200] },
    voltageFactor: { unit: "1", symbol: "K_U", about: "voltage factor for the lowest temperature", from: 1, to: 2, usual: [1, 1.3] },
  },
  gives: { unit: "V", symbol: "U_OC,max" },
  expression: "voltageFactor * modules * openCircuitVoltage",
  source: [
    { in: "UTE C15-712-1:2010", clause: "voltage rating of switching devices", grade: "reproduced", seen: "GuidEnR course:2011, step 2, modules in series" },
    { in: "IEC 60364-7-712:2017", clause: "annex B", grade: "memory" },
  ],
});
