import { formula } from "../../formula/index.js";

/**
 * Lowest voltage within a tolerance of what is expected. @function
 *
 * @example
 * ```ts
 * import { lowestVoltage } from "pv-to-grid/commissioning";
 * lowestVoltage({ expectedVoltage: "520 V", bandTolerance: "5 %" }).text; // "494"
 * ```
 */
export const lowestVoltage = /* @__PURE__ */ formula({
  id: "commissioning/lowest-voltage",
  about: "lowest voltage within a tolerance of what is expected",
  takes: {
    expectedVoltage: { unit: "V", symbol: "U", about: "voltage that is expected", from: 0 },
    bandTolerance: { unit: "1", symbol: "τ", about: "share by which a reading may differ from what is expected", above: 0, below: 1, usual: [0.001, 0.3] },
  },
  gives: { unit: "V", symbol: "U_min" },
  expression: "expectedVoltage * (1 - bandTolerance)",
  source: [{ in: "Open-circuit voltage clause:undated", clause: "items d and e", grade: "copied" }],
  unproven: { because: "definition" },
});

/**
 * Highest voltage within a tolerance of what is expected. @function
 *
 * @example
 * ```ts
 * import { highestVoltage } from "pv-to-grid/commissioning";
 * highestVoltage({ expectedVoltage: "520 V", bandTolerance: "5 %" }).text; // "546"
 * ```
 */
export const highestVoltage = /* @__PURE__ */ formula({
  id: "commissioning/highest-voltage",
  about: "highest voltage within a tolerance of what is expected",
  takes: {
    expectedVoltage: { unit: "V", symbol: "U", about: "voltage that is expected", from: 0 },
    bandTolerance: { unit: "1", symbol: "τ", about: "share by which a reading may differ from what is expected", above: 0, below: 1, usual: [0.001, 0.3] },
  },
  gives: { unit: "V", symbol: "U_max" },
  expression: "expectedVoltage * (1 + bandTolerance)",
  source: [{ in: "Open-circuit voltage clause:undated", clause: "items d and e", grade: "copied" }],
  unproven: { because: "definition" },
});

/**
 * Lowest current within a tolerance of what is expected. @function
 *
 * @example
 * ```ts
 * import { lowestCurrent } from "pv-to-grid/commissioning";
 * lowestCurrent({ expectedCurrent: "11.2 A", bandTolerance: "5 %" }).text; // "10.64"
 * ```
 */
export const lowestCurrent = /* @__PURE__ */ formula({
  id: "commissioning/lowest-current",
  about: "lowest current within a tolerance of what is expected",
  takes: {
    expectedCurrent: { unit: "A", symbol: "I", about: "current that is expected", from: 0 },
    bandTolerance: { unit: "1", symbol: "τ", about: "share by which a reading may differ from what is expected", above: 0, below: 1, usual: [0.001, 0.3] },
  },
  gives: { unit: "A", symbol: "I_min" },
  expression: "expectedCurrent * (1 - bandTolerance)",
  source: [{ in: "common practice", clause: "band about an expected value", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Highest current within a tolerance of what is expected. @function
 *
 * @example
 * ```ts
 * import { highestCurrent } from "pv-to-grid/commissioning";
 * highestCurrent({ expectedCurrent: "11.2 A", bandTolerance: "5 %" }).text; // "11.76"
 * ```
 */
export const highestCurrent = /* @__PURE__ */ formula({
  id: "commissioning/highest-current",
  about: "highest current within a tolerance of what is expected",
  takes: {
    expectedCurrent: { unit: "A", symbol: "I", about: "current that is expected", from: 0 },
    bandTolerance: { unit: "1", symbol: "τ", about: "share by which a reading may differ from what is expected", above: 0, below: 1, usual: [0.001, 0.3] },
  },
  gives: { unit: "A", symbol: "I_max" },
  expression: "expectedCurrent * (1 + bandTolerance)",
  source: [{ in: "common practice", clause: "band about an expected value", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Lowest power within a tolerance of what is expected. @function
 *
 * @example
 * ```ts
 * import { lowestPower } from "pv-to-grid/commissioning";
 * lowestPower({ expectedPower: "4600 W", bandTolerance: "5 %" }).text; // "4370"
 * ```
 */
export const lowestPower = /* @__PURE__ */ formula({
  id: "commissioning/lowest-power",
  about: "lowest power within a tolerance of what is expected",
  takes: {
    expectedPower: { unit: "W", symbol: "P", about: "power that is expected", from: 0 },
    bandTolerance: { unit: "1", symbol: "τ", about: "share by which a reading may differ from what is expected", above: 0, below: 1, usual: [0.001, 0.3] },
  },
  gives: { unit: "W", symbol: "P_min" },
  expression: "expectedPower * (1 - bandTolerance)",
  source: [{ in: "common practice", clause: "band about an expected value", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Highest power within a tolerance of what is expected. @function
 *
 * @example
 * ```ts
 * import { highestPower } from "pv-to-grid/commissioning";
 * highestPower({ expectedPower: "4600 W", bandTolerance: "5 %" }).text; // "4830"
 * ```
 */
export const highestPower = /* @__PURE__ */ formula({
  id: "commissioning/highest-power",
  about: "highest power within a tolerance of what is expected",
  takes: {
    expectedPower: { unit: "W", symbol: "P", about: "power that is expected", from: 0 },
    bandTolerance: { unit: "1", symbol: "τ", about: "share by which a reading may differ from what is expected", above: 0, below: 1, usual: [0.001, 0.3] },
  },
  gives: { unit: "W", symbol: "P_max" },
  expression: "expectedPower * (1 + bandTolerance)",
  source: [{ in: "common practice", clause: "band about an expected value", grade: "common-practice" }],
  unproven: { because: "definition" },
});
