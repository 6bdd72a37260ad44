import { table } from "../../../formula/index.js";

/**
 * Voltages of the volt-var curves of IEEE 1547.1:2020.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_1_2020_voltVarVoltage } from "pv-to-grid/grid";
 * ieee1547_1_2020_voltVarVoltage({ curve: "1 A", point: "reference" }).text; // "1"
 * ```
 */
export const ieee1547_1_2020_voltVarVoltage = /* @__PURE__ */ table({
  id: "grid/ieee-1547-1-2020-volt-var-voltage",
  about: "voltages of the volt-var curves of IEEE 1547.1:2020",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  columns: { point: ["reference", "1", "2", "3", "4"] },
  gives: { unit: "p.u.", symbol: "u_i" },
  source: [{ in: "IEEE 1547.1:2020", clause: "volt-var curves; curve 1 is the default of IEEE 1547-2018", grade: "copied", seen: "UL1741SB test scripts:2026, VoltReg/vv.py" }],
  cells: `
    1 A  1.0   0.9   1.0   1.0   1.1
    1 B  1.0   0.92  0.98  1.02  1.08
    2    1.05  0.88  1.04  1.07  1.1
    3    0.95  0.9   0.93  0.96  1.1
  `,
  note: "curve 1 by normal category, curves 2 and 3 for both",
});

/**
 * Reactive power of the volt-var curves of IEEE 1547.1:2020.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_1_2020_voltVarReactive } from "pv-to-grid/grid";
 * ieee1547_1_2020_voltVarReactive({ curve: "1 A", point: "1" }).text; // "0.25"
 * ```
 */
export const ieee1547_1_2020_voltVarReactive = /* @__PURE__ */ table({
  id: "grid/ieee-1547-1-2020-volt-var-reactive",
  about: "reactive power of the volt-var curves of IEEE 1547.1:2020",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  columns: { point: ["1", "2", "3", "4"] },
  gives: { unit: "p.u.", symbol: "q_i" },
  source: [{ in: "IEEE 1547.1:2020", clause: "volt-var curves", grade: "copied", seen: "UL1741SB test scripts:2026, VoltReg/vv.py" }],
  cells: `
    1 A  0.25  0.0   0.0   -0.25
    1 B  0.44  0.0   0.0   -0.44
    2    1.0   0.5   0.5   -1.0
    3    1.0   -0.5  -0.5  -1.0
  `,
  note: "curve 1 as a share of the rated apparent power, curves 2 and 3 of the rated reactive power; injecting where positive",
});

/**
 * Open-loop response time of the volt-var curves of IEEE 1547.1:2020.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_1_2020_voltVarResponseTime } from "pv-to-grid/grid";
 * ieee1547_1_2020_voltVarResponseTime({ curve: "1 A" }).text; // "10"
 * ```
 */
export const ieee1547_1_2020_voltVarResponseTime = /* @__PURE__ */ table({
  id: "grid/ieee-1547-1-2020-volt-var-response-time",
  about: "open-loop response time of the volt-var curves of IEEE 1547.1:2020",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  gives: { unit: "s", symbol: "T_r" },
  source: [{ in: "IEEE 1547.1:2020", clause: "volt-var curves", grade: "copied", seen: "UL1741SB test scripts:2026, VoltReg/vv.py" }],
  cells: `
    1 A  10
    1 B  5
    2    1
    3    90
  `,
});

/**
 * Voltages of the volt-watt curves of IEEE 1547.1:2020.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_1_2020_voltWattVoltage } from "pv-to-grid/grid";
 * ieee1547_1_2020_voltWattVoltage({ curve: "1", point: "1" }).text; // "1.06"
 * ```
 */
export const ieee1547_1_2020_voltWattVoltage = /* @__PURE__ */ table({
  id: "grid/ieee-1547-1-2020-volt-watt-voltage",
  about: "voltages of the volt-watt curves of IEEE 1547.1:2020",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  columns: { point: ["1", "2"] },
  gives: { unit: "p.u.", symbol: "u_i" },
  source: [{ in: "IEEE 1547.1:2020", clause: "volt-watt curves; curve 1 is the default of IEEE 1547-2018", grade: "copied", seen: "IEEE 1547.1 test scripts:2022, p1547.py" }],
  cells: `
    1  1.06  1.1
    2  1.05  1.1
    3  1.09  1.1
  `,
  note: "disabled by default in IEEE 1547-2018, as recalled",
});

/**
 * Active power of the volt-watt curves of IEEE 1547.1:2020.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_1_2020_voltWattActive } from "pv-to-grid/grid";
 * ieee1547_1_2020_voltWattActive({ curve: "1", point: "1" }).text; // "1"
 * ```
 */
export const ieee1547_1_2020_voltWattActive = /* @__PURE__ */ table({
  id: "grid/ieee-1547-1-2020-volt-watt-active",
  about: "active power of the volt-watt curves of IEEE 1547.1:2020",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  columns: { point: ["1", "2"] },
  gives: { unit: "p.u.", symbol: "p_i" },
  source: [{ in: "IEEE 1547.1:2020", clause: "volt-watt curves", grade: "copied", seen: "IEEE 1547.1 test scripts:2022, p1547.py" }],
  cells: `
    1  1.0  0.2
    2  1.0  0.2
    3  1.0  0.2
  `,
  note: "point 2 is the lesser of 0.2 and the least power of the unit",
});

/**
 * Open-loop response time of the volt-watt curves of IEEE 1547.1:2020.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_1_2020_voltWattResponseTime } from "pv-to-grid/grid";
 * ieee1547_1_2020_voltWattResponseTime({ curve: "1" }).text; // "10"
 * ```
 */
export const ieee1547_1_2020_voltWattResponseTime = /* @__PURE__ */ table({
  id: "grid/ieee-1547-1-2020-volt-watt-response-time",
  about: "open-loop response time of the volt-watt curves of IEEE 1547.1:2020",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  gives: { unit: "s", symbol: "T_r" },
  source: [{ in: "IEEE 1547.1:2020", clause: "volt-watt curves", grade: "copied", seen: "IEEE 1547.1 test scripts:2022, p1547.py" }],
  cells: `
    1  10
    2  90
    3  0.5
  `,
});

/**
 * Active power of the watt-var curves of IEEE 1547.1:2020.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_1_2020_wattVarActive } from "pv-to-grid/grid";
 * ieee1547_1_2020_wattVarActive({ curve: "1 A", point: "1" }).text; // "0.2"
 * ```
 */
export const ieee1547_1_2020_wattVarActive = /* @__PURE__ */ table({
  id: "grid/ieee-1547-1-2020-watt-var-active",
  about: "active power of the watt-var curves of IEEE 1547.1:2020",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  columns: { point: ["1", "2", "3"] },
  gives: { unit: "p.u.", symbol: "p_i" },
  source: [{ in: "IEEE 1547.1:2020", clause: "tables 28 to 30", grade: "copied", seen: "UL1741SB test scripts:2026, VoltReg/wv.py" }],
  cellGrades: { memory: ["1 A | 1", "1 B | 1", "2 A | 1", "2 B | 1", "3 A | 1", "3 B | 1"] },
  cells: `
    1 A  0.2  0.5  1.0
    1 B  0.2  0.5  1.0
    2 A  0.2  0.5  1.0
    2 B  0.2  0.5  1.0
    3 A  0.2  0.5  1.0
    3 B  0.2  0.5  1.0
  `,
  note: "point 1 is the greater of 0.2 and the least power of the unit, as recalled",
});

/**
 * Reactive power of the watt-var curves of IEEE 1547.1:2020.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_1_2020_wattVarReactive } from "pv-to-grid/grid";
 * ieee1547_1_2020_wattVarReactive({ curve: "1 A", point: "1" }).text; // "0"
 * ```
 */
export const ieee1547_1_2020_wattVarReactive = /* @__PURE__ */ table({
  id: "grid/ieee-1547-1-2020-watt-var-reactive",
  about: "reactive power of the watt-var curves of IEEE 1547.1:2020",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  columns: { point: ["1", "2", "3"] },
  gives: { unit: "p.u.", symbol: "q_i" },
  source: [{ in: "IEEE 1547.1:2020", clause: "tables 28 to 30", grade: "copied", seen: "UL1741SB test scripts:2026, VoltReg/wv.py" }],
  cells: `
    1 A  0.0    0.0    -0.25
    1 B  0.0    0.0    -0.44
    2 A  -0.13  -0.13  -0.25
    2 B  -0.22  -0.22  -0.44
    3 A  0.0    -0.25  -0.25
    3 B  0.0    -0.44  -0.44
  `,
  note: "share of the rated apparent power, absorbing where negative",
});
