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
