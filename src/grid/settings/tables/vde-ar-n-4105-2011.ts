import { table } from "../../../formula/index.js";

/**
 * Voltage settings of VDE-AR-N 4105:2011.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2011_voltageSettings } from "pv-to-grid/grid";
 * vdeArN4105_2011_voltageSettings({ setting: "overvoltage2", value: "setting" }).text; // "1.15"
 * ```
 */
export const vdeArN4105_2011_voltageSettings = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2011-voltage-settings",
  about: "voltage settings of VDE-AR-N 4105:2011",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "VDE-AR-N 4105:2011", clause: "settings of the grid-and-plant protection", grade: "memory" }],
  cells: `
    overvoltage2          1.15
    sustainedOvervoltage  1.10
    undervoltage1         0.80
  `,
});

/**
 * Frequency settings of VDE-AR-N 4105:2011.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2011_frequencySettings } from "pv-to-grid/grid";
 * vdeArN4105_2011_frequencySettings({ setting: "overfrequency1", value: "setting" }).text; // "51.5"
 * ```
 */
export const vdeArN4105_2011_frequencySettings = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2011-frequency-settings",
  about: "frequency settings of VDE-AR-N 4105:2011",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "VDE-AR-N 4105:2011", clause: "settings of the grid-and-plant protection", grade: "memory" }],
  cells: `
    overfrequency1   51.5
    underfrequency1  47.5
  `,
});

/**
 * Relay delays of VDE-AR-N 4105:2011.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2011_delays } from "pv-to-grid/grid";
 * vdeArN4105_2011_delays({ setting: "overvoltage2", time: "delay" }).text; // "0.1"
 * ```
 */
export const vdeArN4105_2011_delays = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2011-delays",
  about: "relay delays of VDE-AR-N 4105:2011",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["delay"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "VDE-AR-N 4105:2011", clause: "settings of the grid-and-plant protection", grade: "memory" }],
  cells: `
    overvoltage2          0.1
    sustainedOvervoltage  0.1
    undervoltage1         0.1
    overfrequency1        0.1
    underfrequency1       0.1
  `,
});

/**
 * Power factor that plants of VDE-AR-N 4105:2011 are to reach.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2011_powerFactor } from "pv-to-grid/grid";
 * vdeArN4105_2011_powerFactor({ size: "3.68 to 13.8 kVA" }).text; // "0.95"
 * ```
 */
export const vdeArN4105_2011_powerFactor = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2011-power-factor",
  about: "power factor that plants of VDE-AR-N 4105:2011 are to reach",
  rows: { name: "size", names: "in the first column", about: "sum of the plants of the connection" },
  rowRule: "exact",
  gives: { unit: "1", symbol: "cos φ" },
  source: [{ in: "VDE-AR-N 4105:2011", clause: "overview table", grade: "reproduced", seen: "Solar Energy Consult on 4105:undated, table" }],
  cells: `
    3.68 to 13.8 kVA  0.95
    above 13.8 kVA    0.90
  `,
});
