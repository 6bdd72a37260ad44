import { table } from "../../../formula/index.js";

/**
 * Voltages of the volt-var curve of AS/NZS 4777.2:2020.
 *
 * @function
 * @example
 * ```ts
 * import { asNzs4777_2_2020_voltVarVoltage } from "pv-to-grid/grid";
 * asNzs4777_2_2020_voltVarVoltage({ region: "Australia A", point: "1" }).text; // "207"
 * ```
 */
export const asNzs4777_2_2020_voltVarVoltage = /* @__PURE__ */ table({
  id: "grid/as-nzs-4777-2-2020-volt-var-voltage",
  about: "voltages of the volt-var curve of AS/NZS 4777.2:2020",
  rows: { name: "region", names: "in the first column", about: "region" },
  rowRule: "exact",
  columns: { point: ["1", "2", "3", "4"] },
  gives: { unit: "V", symbol: "U_i" },
  source: [{ in: "AS/NZS 4777.2:2020", clause: "table 3.7", grade: "copied", seen: "DR 4777.2 test scripts:2021, pAus4777.py" }],
  cells: `
    Australia A  207  220  240  258
    Australia B  205  220  235  255
    Australia C  215  230  240  255
    New Zealand  207  220  235  244
  `,
  note: "line to neutral, 230 V; seen in the public-comment draft; region B agrees with the publication of a network operator",
});

/**
 * Reactive power of the volt-var curve of AS/NZS 4777.2:2020.
 *
 * @function
 * @example
 * ```ts
 * import { asNzs4777_2_2020_voltVarReactive } from "pv-to-grid/grid";
 * asNzs4777_2_2020_voltVarReactive({ region: "Australia A", point: "1" }).text; // "44"
 * ```
 */
export const asNzs4777_2_2020_voltVarReactive = /* @__PURE__ */ table({
  id: "grid/as-nzs-4777-2-2020-volt-var-reactive",
  about: "reactive power of the volt-var curve of AS/NZS 4777.2:2020",
  rows: { name: "region", names: "in the first column", about: "region" },
  rowRule: "exact",
  columns: { point: ["1", "2", "3", "4"] },
  gives: { unit: "%", symbol: "q_i" },
  source: [{ in: "AS/NZS 4777.2:2020", clause: "table 3.7", grade: "copied", seen: "DR 4777.2 test scripts:2021, pAus4777.py" }],
  cells: `
    Australia A  44  0  0  -60
    Australia B  30  0  0  -40
    Australia C  44  0  0  -60
    New Zealand  60  0  0  -60
  `,
  note: "share of the rated apparent power, injecting where positive",
});

/**
 * Voltages of the volt-watt curve of AS/NZS 4777.2:2020.
 *
 * @function
 * @example
 * ```ts
 * import { asNzs4777_2_2020_voltWattVoltage } from "pv-to-grid/grid";
 * asNzs4777_2_2020_voltWattVoltage({ region: "Australia A", point: "1" }).text; // "253"
 * ```
 */
export const asNzs4777_2_2020_voltWattVoltage = /* @__PURE__ */ table({
  id: "grid/as-nzs-4777-2-2020-volt-watt-voltage",
  about: "voltages of the volt-watt curve of AS/NZS 4777.2:2020",
  rows: { name: "region", names: "in the first column", about: "region" },
  rowRule: "exact",
  columns: { point: ["1", "2"] },
  gives: { unit: "V", symbol: "U_i" },
  source: [{ in: "AS/NZS 4777.2:2020", clause: "table 3.6", grade: "copied", seen: "DR 4777.2 test scripts:2021, pAus4777.py" }],
  cells: `
    Australia A  253  260
    Australia B  250  260
    Australia C  253  260
    New Zealand  242  250
  `,
  note: "line to neutral, 230 V",
});

/**
 * Active power of the volt-watt curve of AS/NZS 4777.2:2020.
 *
 * @function
 * @example
 * ```ts
 * import { asNzs4777_2_2020_voltWattActive } from "pv-to-grid/grid";
 * asNzs4777_2_2020_voltWattActive({ region: "Australia A", point: "1" }).text; // "100"
 * ```
 */
export const asNzs4777_2_2020_voltWattActive = /* @__PURE__ */ table({
  id: "grid/as-nzs-4777-2-2020-volt-watt-active",
  about: "active power of the volt-watt curve of AS/NZS 4777.2:2020",
  rows: { name: "region", names: "in the first column", about: "region" },
  rowRule: "exact",
  columns: { point: ["1", "2"] },
  gives: { unit: "%", symbol: "p_i" },
  source: [{ in: "AS/NZS 4777.2:2020", clause: "table 3.6", grade: "copied", seen: "DR 4777.2 test scripts:2021, pAus4777.py" }],
  cells: `
    Australia A  100  20
    Australia B  100  20
    Australia C  100  20
    New Zealand  100  20
  `,
  note: "share of the rated active power",
});
