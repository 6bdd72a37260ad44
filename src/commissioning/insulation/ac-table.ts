import { formula, table } from "../../formula/index.js";

/**
 * Direct voltage of the insulation test of a circuit, by its nominal voltage. @function
 *
 * @example
 * ```ts
 * import { iec60364_6_2016_testVoltage } from "pv-to-grid/commissioning";
 * iec60364_6_2016_testVoltage({ circuitVoltage: "400 V" }).text; // "500"
 * ```
 */
export const iec60364_6_2016_testVoltage = /* @__PURE__ */ table({
  id: "commissioning/iec-60364-6-2016-test-voltage",
  about: "direct voltage of the insulation test of a circuit, by its nominal voltage",
  rows: { name: "circuitVoltage", unit: "V", symbol: "U_n", about: "nominal voltage of the circuit, up to and including", above: 0 },
  rowRule: "next above",
  gives: { unit: "V", symbol: "U_test" },
  source: [{ in: "IEC 60364-6:2016", clause: "table 6.1", grade: "reproduced", seen: "Bane NOR technical rules:undated, table" }],
  cells: `
    500   500
    1000  1000
  `,
  note: "circuits other than SELV and PELV; the last row stands for every low-voltage circuit above 500 V",
});

/**
 * Least insulation resistance of a circuit, by its nominal voltage. @function
 *
 * @example
 * ```ts
 * import { iec60364_6_2016_leastInsulation } from "pv-to-grid/commissioning";
 * iec60364_6_2016_leastInsulation({ circuitVoltage: "400 V" }).text; // "1"
 * ```
 */
export const iec60364_6_2016_leastInsulation = /* @__PURE__ */ table({
  id: "commissioning/iec-60364-6-2016-least-insulation",
  about: "least insulation resistance of a circuit, by its nominal voltage",
  rows: { name: "circuitVoltage", unit: "V", symbol: "U_n", about: "nominal voltage of the circuit, up to and including", above: 0 },
  rowRule: "next above",
  gives: { unit: "MΩ", symbol: "R_iso,min" },
  source: [{ in: "IEC 60364-6:2016", clause: "table 6.1", grade: "reproduced", seen: "Bane NOR technical rules:undated, table" }],
  cells: `
    500   1.0
    1000  1.0
  `,
  note: "circuits other than SELV and PELV",
});

/**
 * Direct voltage of the insulation test of SELV and PELV circuits. @function
 *
 * @example
 * ```ts
 * import { extraLowTestVoltage } from "pv-to-grid/commissioning";
 * extraLowTestVoltage({}).text; // "250"
 * ```
 */
export const extraLowTestVoltage = /* @__PURE__ */ formula({
  id: "commissioning/extra-low-test-voltage",
  about: "direct voltage of the insulation test of SELV and PELV circuits",
  takes: {},
  constants: {
    extraLowTest: { value: "250", unit: "V", symbol: "250 V", about: "test voltage of SELV and PELV circuits", source: [{ in: "IEC 60364-6:2016", clause: "table 6.1", grade: "reproduced", seen: "Bane NOR technical rules:undated, table" }] },
  },
  gives: { unit: "V", symbol: "U_test" },
  expression: "extraLowTest",
  source: [{ in: "IEC 60364-6:2016", clause: "table 6.1", grade: "reproduced", seen: "Bane NOR technical rules:undated, table" }],
  unproven: { because: "definition" },
});

/**
 * Least insulation resistance of SELV and PELV circuits. @function
 *
 * @example
 * ```ts
 * import { extraLowLeastInsulation } from "pv-to-grid/commissioning";
 * extraLowLeastInsulation({}).text; // "0.5"
 * ```
 */
export const extraLowLeastInsulation = /* @__PURE__ */ formula({
  id: "commissioning/extra-low-least-insulation",
  about: "least insulation resistance of SELV and PELV circuits",
  takes: {},
  constants: {
    extraLowResistance: { value: "0.5", unit: "MΩ", symbol: "0.5 MΩ", about: "least insulation resistance of SELV and PELV circuits", source: [{ in: "IEC 60364-6:2016", clause: "table 6.1", grade: "reproduced", seen: "Bane NOR technical rules:undated, table" }] },
  },
  gives: { unit: "MΩ", symbol: "R_iso,min" },
  expression: "extraLowResistance",
  source: [{ in: "IEC 60364-6:2016", clause: "table 6.1", grade: "reproduced", seen: "Bane NOR technical rules:undated, table" }],
  unproven: { because: "definition" },
});
