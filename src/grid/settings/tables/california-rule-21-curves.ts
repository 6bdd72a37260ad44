import { table } from "../../../formula/index.js";

/**
 * Voltages of the volt-var curve of California.
 *
 * @function
 * @example
 * ```ts
 * import { californiaRule21_2018_voltVarVoltage } from "pv-to-grid/grid";
 * californiaRule21_2018_voltVarVoltage({ curve: "default", point: "1" }).text; // "0.92"
 * ```
 */
export const californiaRule21_2018_voltVarVoltage = /* @__PURE__ */ table({
  id: "grid/california-rule-21-2018-volt-var-voltage",
  about: "voltages of the volt-var curve of California",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  columns: { point: ["1", "2", "3", "4"] },
  gives: { unit: "p.u.", symbol: "u_i" },
  source: [{ in: "California Rule 21:2018", clause: "section Hh, dynamic volt/var", grade: "memory" }],
  cells: `
    default  0.92  0.967  1.033  1.07
  `,
});

/**
 * Reactive power of the volt-var curve of California.
 *
 * @function
 * @example
 * ```ts
 * import { californiaRule21_2018_voltVarReactive } from "pv-to-grid/grid";
 * californiaRule21_2018_voltVarReactive({ curve: "default", point: "1" }).text; // "0.3"
 * ```
 */
export const californiaRule21_2018_voltVarReactive = /* @__PURE__ */ table({
  id: "grid/california-rule-21-2018-volt-var-reactive",
  about: "reactive power of the volt-var curve of California",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  columns: { point: ["1", "2", "3", "4"] },
  gives: { unit: "p.u.", symbol: "q_i" },
  source: [{ in: "California Rule 21:2018", clause: "section Hh, dynamic volt/var", grade: "memory" }],
  cells: `
    default  0.3  0  0  -0.3
  `,
  note: "share of the reactive power available, injecting where positive",
});

/**
 * Voltages of the volt-watt curve of California.
 *
 * @function
 * @example
 * ```ts
 * import { californiaRule21_2018_voltWattVoltage } from "pv-to-grid/grid";
 * californiaRule21_2018_voltWattVoltage({ curve: "default", point: "1" }).text; // "1.06"
 * ```
 */
export const californiaRule21_2018_voltWattVoltage = /* @__PURE__ */ table({
  id: "grid/california-rule-21-2018-volt-watt-voltage",
  about: "voltages of the volt-watt curve of California",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  columns: { point: ["1", "2"] },
  gives: { unit: "p.u.", symbol: "u_i" },
  source: [{ in: "California Rule 21:2018", clause: "section Hh, volt-watt", grade: "memory" }],
  cells: `
    default  1.06  1.1
  `,
});

/**
 * Active power of the volt-watt curve of California.
 *
 * @function
 * @example
 * ```ts
 * import { californiaRule21_2018_voltWattActive } from "pv-to-grid/grid";
 * californiaRule21_2018_voltWattActive({ curve: "default", point: "1" }).text; // "1"
 * ```
 */
export const californiaRule21_2018_voltWattActive = /* @__PURE__ */ table({
  id: "grid/california-rule-21-2018-volt-watt-active",
  about: "active power of the volt-watt curve of California",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  columns: { point: ["1", "2"] },
  gives: { unit: "p.u.", symbol: "p_i" },
  source: [{ in: "California Rule 21:2018", clause: "section Hh, volt-watt", grade: "memory" }],
  cells: `
    default  1  0
  `,
});
