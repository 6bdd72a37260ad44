import { formula, table } from "../../formula/index.js";

/**
 * Resistance to earth below which an array must be reported or kept off, by its power. @function
 *
 * @example
 * ```ts
 * import { iec62548_2016_arrayInsulation } from "pv-to-grid/string";
 * iec62548_2016_arrayInsulation({ arrayPower: "18 kW" }).text; // "30"
 * ```
 */
export const iec62548_2016_arrayInsulation = /* @__PURE__ */ table({
  id: "string/iec-62548-2016-array-insulation",
  about: "resistance to earth below which an array must be reported or kept off, by its power",
  rows: { name: "arrayPower", unit: "kW", symbol: "P_DC", about: "rating of the array, up to and including", above: 0 },
  rowRule: "next above",
  gives: { unit: "kΩ", symbol: "R_min" },
  source: [{ in: "IEC 62548:2016", clause: "earth-fault protection", grade: "memory" }],
  cells: `
    20       30
    30       20
    50       15
    100      10
    200      7
    400      4
    500      2
    1000000  1
  `,
  note: "the last row stands for every array above 500 kW",
});

/**
 * Rated current of the device that interrupts a functional earth, by the power of the array. @function
 *
 * @example
 * ```ts
 * import { iec62548_2016_functionalEarthDevice } from "pv-to-grid/string";
 * iec62548_2016_functionalEarthDevice({ arrayPower: "40 kW" }).text; // "2"
 * ```
 */
export const iec62548_2016_functionalEarthDevice = /* @__PURE__ */ table({
  id: "string/iec-62548-2016-functional-earth-device",
  about: "rated current of the device that interrupts a functional earth, by the power of the array",
  rows: { name: "arrayPower", unit: "kW", symbol: "P_DC", about: "rating of the array, up to and including", above: 0 },
  rowRule: "next above",
  gives: { unit: "A", symbol: "I_n" },
  source: [
    { in: "IEC 62548:2016", clause: "functional earthing", grade: "memory" },
    { in: "UL 1741:undated", clause: "ground-fault detection and interruption", grade: "memory" },
  ],
  cells: `
    25       1
    50       2
    100      3
    250      4
    1000000  5
  `,
  note: "the last row stands for every array above 250 kW",
});

/**
 * Time within which an inverter must answer a sudden residual current. @function
 *
 * @example
 * ```ts
 * import { iec62109_2_2011_residualSteps } from "pv-to-grid/string";
 * iec62109_2_2011_residualSteps({ residualStep: "60 mA" }).text; // "0.15"
 * ```
 */
export const iec62109_2_2011_residualSteps = /* @__PURE__ */ table({
  id: "string/iec-62109-2-2011-residual-steps",
  about: "time within which an inverter must answer a sudden residual current",
  rows: { name: "residualStep", unit: "mA", symbol: "ΔI", about: "sudden change of the residual current", above: 0 },
  rowRule: "exact",
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEC 62109-2:2011", clause: "4.8.3.5, table 31", grade: "memory" }],
  cells: `
    30   0.3
    60   0.15
    150  0.04
  `,
});

/**
 * Continuous residual current at which an inverter must disconnect. @function
 *
 * @example
 * ```ts
 * import { residualCurrentLimit } from "pv-to-grid/string";
 * residualCurrentLimit({ apparentPower: "60 kVA" }).text; // "600"
 * ```
 */
export const residualCurrentLimit = /* @__PURE__ */ formula({
  id: "string/residual-current-limit",
  about: "continuous residual current at which an inverter must disconnect",
  takes: { apparentPower: { unit: "kVA", symbol: "S", about: "rated output of the inverter", above: 0, usual: [0.3, 5000] } },
  constants: {
    smallLimit: { value: "300", unit: "mA", symbol: "300 mA", about: "limit of a small inverter", source: [{ in: "IEC 62109-2:2011", clause: "4.8.3.5.1", grade: "memory" }] },
    smallPower: { value: "30", unit: "kVA", symbol: "30 kVA", about: "rating up to which an inverter is small; above, the limit grows in proportion", source: [{ in: "IEC 62109-2:2011", clause: "4.8.3.5.1", grade: "memory" }] },
  },
  gives: { unit: "mA", symbol: "I_Δ" },
  expression: "smallLimit * max(apparentPower, smallPower) / smallPower",
  source: [{ in: "IEC 62109-2:2011", clause: "4.8.3.5.1", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEC 62109-2 residual current 300 mA 10 mA per kVA worked example" },
});

/**
 * Resistance to earth that an array needs before the inverter connects. @function
 *
 * @example
 * ```ts
 * import { insulationBeforeConnection } from "pv-to-grid/string";
 * insulationBeforeConnection({ maximumVoltage: "990 V" }).text; // "33000"
 * ```
 */
export const insulationBeforeConnection = /* @__PURE__ */ formula({
  id: "string/insulation-before-connection",
  about: "resistance to earth that an array needs before the inverter connects",
  takes: { maximumVoltage: { unit: "V", symbol: "U_max,PV", about: "largest voltage of the array", above: 0, usual: [10, 1500] } },
  constants: {
    touchCurrent: { value: "0.03", unit: "A", symbol: "30 mA", about: "current that the insulation may let pass", source: [{ in: "IEC 62109-2:2011", clause: "4.8.2.1", grade: "memory" }] },
  },
  gives: { unit: "Ω", symbol: "R_iso" },
  expression: "maximumVoltage / touchCurrent",
  source: [{ in: "IEC 62109-2:2011", clause: "4.8.2.1", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEC 62109-2 4.8.2.1 array insulation resistance Vmax 30 mA worked example" },
});
