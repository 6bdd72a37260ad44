import { table } from "../../../formula/index.js";

/**
 * Voltages of the Q(U) curve of VDE-AR-N 4105:2018.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2018_voltVarVoltage } from "pv-to-grid/grid";
 * vdeArN4105_2018_voltVarVoltage({ curve: "standard", point: "1" }).text; // "0.93"
 * ```
 */
export const vdeArN4105_2018_voltVarVoltage = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2018-volt-var-voltage",
  about: "voltages of the Q(U) curve of VDE-AR-N 4105:2018",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  columns: { point: ["1", "2", "3", "4"] },
  gives: { unit: "p.u.", symbol: "u_i" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "5.7.2.4", grade: "memory" }],
  cells: `
    standard  0.93  0.97  1.03  1.07
  `,
});

/**
 * Active power of the cos φ(P) curve of VDE-AR-N 4105:2018.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2018_powerFactorOfPowerActive } from "pv-to-grid/grid";
 * vdeArN4105_2018_powerFactorOfPowerActive({ curve: "standard", point: "1" }).text; // "0.5"
 * ```
 */
export const vdeArN4105_2018_powerFactorOfPowerActive = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2018-power-factor-of-power-active",
  about: "active power of the cos φ(P) curve of VDE-AR-N 4105:2018",
  rows: { name: "curve", names: "in the first column", about: "curve" },
  rowRule: "exact",
  columns: { point: ["1", "2"] },
  gives: { unit: "p.u.", symbol: "p_i" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "5.7.2.4", grade: "memory" }],
  cells: `
    standard  0.5  1.0
  `,
});

/**
 * Power factor of the cos φ(P) curve of VDE-AR-N 4105:2018.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2018_powerFactorOfPower } from "pv-to-grid/grid";
 * vdeArN4105_2018_powerFactorOfPower({ size: "up to 4.6 kVA", point: "1" }).text; // "1"
 * ```
 */
export const vdeArN4105_2018_powerFactorOfPower = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2018-power-factor-of-power",
  about: "power factor of the cos φ(P) curve of VDE-AR-N 4105:2018",
  rows: { name: "size", names: "in the first column", about: "sum of the plants of the connection" },
  rowRule: "exact",
  columns: { point: ["1", "2"] },
  gives: { unit: "1", symbol: "cos φ_i" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "5.7.2.4", grade: "memory" }],
  cells: `
    up to 4.6 kVA  1  0.95
    above 4.6 kVA  1  0.90
  `,
  note: "1 up to the first point, then linear; absorbing",
});

/**
 * Power factor that plants of VDE-AR-N 4105:2018 are to reach.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2018_powerFactorLimit } from "pv-to-grid/grid";
 * vdeArN4105_2018_powerFactorLimit({ size: "up to 4.6 kVA" }).text; // "0.95"
 * ```
 */
export const vdeArN4105_2018_powerFactorLimit = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2018-power-factor-limit",
  about: "power factor that plants of VDE-AR-N 4105:2018 are to reach",
  rows: { name: "size", names: "in the first column", about: "sum of the plants of the connection" },
  rowRule: "exact",
  gives: { unit: "1", symbol: "cos φ" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "5.7.2.2", grade: "memory" }],
  cells: `
    up to 4.6 kVA  0.95
    above 4.6 kVA  0.90
  `,
});
