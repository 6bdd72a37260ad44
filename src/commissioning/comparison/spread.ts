import { formula } from "../../formula/index.js";

/**
 * Largest share by which a voltage of identical strings lies above another. @function
 *
 * @example
 * ```ts
 * import { voltageSpread } from "pv-to-grid/commissioning";
 * voltageSpread({ stringVoltages: ["520 V", "494 V"] }).show(); // "0.05263"
 * ```
 */
export const voltageSpread = /* @__PURE__ */ formula({
  id: "commissioning/voltage-spread",
  about: "largest share by which a voltage of identical strings lies above another",
  takes: {
    stringVoltages: { each: "V", symbol: "U_i", about: "reading of each string", above: 0 },
  },
  gives: { unit: "1", symbol: "s" },
  expression: "max(stringVoltages) / min(stringVoltages) - 1",
  source: [{ in: "IEC 62446:2009", clause: "5.4.4", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.4" }],
  unproven: { because: "definition" },
  note: "every string against every other",
});

/**
 * Share by which the voltage of a string differs from the mean of the other strings. @function
 *
 * @example
 * ```ts
 * import { voltageAgainstOthers } from "pv-to-grid/commissioning";
 * voltageAgainstOthers({ measuredVoltage: "483 V", stringVoltages: ["521 V", "519 V"] }).show(); // "-0.07115"
 * ```
 */
export const voltageAgainstOthers = /* @__PURE__ */ formula({
  id: "commissioning/voltage-against-others",
  about: "share by which the voltage of a string differs from the mean of the other strings",
  takes: {
    measuredVoltage: { unit: "V", symbol: "U_1", about: "measured voltage", above: 0, to: 3000, usual: [0.3, 1500] },
    stringVoltages: { each: "V", symbol: "U_i", about: "reading of each string", above: 0 },
  },
  gives: { unit: "1", symbol: "d" },
  expression: "measuredVoltage * count(stringVoltages) / sum(stringVoltages) - 1",
  source: [{ in: "common practice", clause: "comparison with the mean of the others", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Largest share by which a current of identical strings lies above another. @function
 *
 * @example
 * ```ts
 * import { currentSpread } from "pv-to-grid/commissioning";
 * currentSpread({ stringCurrents: ["11.2 A", "11.6 A"] }).show(); // "0.03571"
 * ```
 */
export const currentSpread = /* @__PURE__ */ formula({
  id: "commissioning/current-spread",
  about: "largest share by which a current of identical strings lies above another",
  takes: {
    stringCurrents: { each: "A", symbol: "I_i", about: "reading of each string", above: 0 },
  },
  gives: { unit: "1", symbol: "s" },
  expression: "max(stringCurrents) / min(stringCurrents) - 1",
  source: [{ in: "IEC 62446:2009", clause: "5.4.4", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.4" }],
  unproven: { because: "definition" },
  note: "every string against every other",
});

/**
 * Share by which the current of a string differs from the mean of the other strings. @function
 *
 * @example
 * ```ts
 * import { currentAgainstOthers } from "pv-to-grid/commissioning";
 * currentAgainstOthers({ measuredCurrent: "8.4 A", stringCurrents: ["11.2 A", "11.2 A"] }).text; // "-0.25"
 * ```
 */
export const currentAgainstOthers = /* @__PURE__ */ formula({
  id: "commissioning/current-against-others",
  about: "share by which the current of a string differs from the mean of the other strings",
  takes: {
    measuredCurrent: { unit: "A", symbol: "I_1", about: "measured current", from: 0, to: 1000, usual: [0, 100] },
    stringCurrents: { each: "A", symbol: "I_i", about: "reading of each string", above: 0 },
  },
  gives: { unit: "1", symbol: "d" },
  expression: "measuredCurrent * count(stringCurrents) / sum(stringCurrents) - 1",
  source: [{ in: "common practice", clause: "comparison with the mean of the others", grade: "common-practice" }],
  unproven: { because: "definition" },
});
