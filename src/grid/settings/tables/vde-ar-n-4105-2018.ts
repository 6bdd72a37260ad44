import { table } from "../../../formula/index.js";

/**
 * Voltage settings for converters of VDE-AR-N 4105:2018.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2018_voltageSettings } from "pv-to-grid/grid";
 * vdeArN4105_2018_voltageSettings({ setting: "overvoltage2", value: "setting" }).text; // "1.25"
 * ```
 */
export const vdeArN4105_2018_voltageSettings = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2018-voltage-settings",
  about: "voltage settings for converters of VDE-AR-N 4105:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [
    { in: "VDE-AR-N 4105:2018", clause: "table 2, 8.3", grade: "memory" },
    { in: "VDE-AR-N 4105:2018", clause: "table 2, sustained overvoltage", grade: "copied", seen: "Lovato PMVF manual:undated, default settings" },
  ],
  cellGrades: { memory: ["overvoltage2", "undervoltage1", "undervoltage2", "reconnectionVoltageLow", "reconnectionVoltageHigh"] },
  cells: `
    overvoltage2             1.25
    sustainedOvervoltage     1.10
    undervoltage1            0.80
    undervoltage2            0.45
    reconnectionVoltageLow   0.85
    reconnectionVoltageHigh  1.10
  `,
});

/**
 * Frequency settings for converters of VDE-AR-N 4105:2018.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2018_frequencySettings } from "pv-to-grid/grid";
 * vdeArN4105_2018_frequencySettings({ setting: "overfrequency1", value: "setting" }).text; // "51.5"
 * ```
 */
export const vdeArN4105_2018_frequencySettings = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2018-frequency-settings",
  about: "frequency settings for converters of VDE-AR-N 4105:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "table 2, 5.7, 8.3", grade: "memory" }],
  cells: `
    overfrequency1             51.5
    underfrequency1            47.5
    reconnectionFrequencyLow   47.5
    reconnectionFrequencyHigh  50.1
    overfrequencyStart         50.2
    underfrequencyStart        49.8
  `,
});

/**
 * Relay delays for converters of VDE-AR-N 4105:2018.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2018_delays } from "pv-to-grid/grid";
 * vdeArN4105_2018_delays({ setting: "overvoltage2", time: "delay" }).text; // "0.1"
 * ```
 */
export const vdeArN4105_2018_delays = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2018-delays",
  about: "relay delays for converters of VDE-AR-N 4105:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["delay"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "table 2", grade: "memory" }],
  cells: `
    overvoltage2          0.1
    sustainedOvervoltage  0.1
    undervoltage1         3.0
    undervoltage2         0.3
    overfrequency1        0.1
    underfrequency1       0.1
  `,
  note: "relay and switch together within 0.2 s where 0.1 s is given",
});

/**
 * Observation times before reconnection of VDE-AR-N 4105:2018.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2018_reconnectionTime } from "pv-to-grid/grid";
 * vdeArN4105_2018_reconnectionTime({ setting: "reconnectionTime", value: "setting" }).text; // "60"
 * ```
 */
export const vdeArN4105_2018_reconnectionTime = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2018-reconnection-time",
  about: "observation times before reconnection of VDE-AR-N 4105:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "8.3", grade: "memory" }],
  cells: `
    reconnectionTime                        60
    reconnectionTimeAfterShortInterruption  5
    shortInterruption                       3
  `,
});

/**
 * Ramp after a trip of VDE-AR-N 4105:2018.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2018_ramp } from "pv-to-grid/grid";
 * vdeArN4105_2018_ramp({ setting: "ramp", value: "setting" }).text; // "10"
 * ```
 */
export const vdeArN4105_2018_ramp = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2018-ramp",
  about: "ramp after a trip of VDE-AR-N 4105:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "%/min", symbol: "g" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "8.3", grade: "memory" }],
  cells: `
    ramp  10
  `,
  note: "of the rated active power",
});

/**
 * Droop of the response to frequency of VDE-AR-N 4105:2018.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2018_droop } from "pv-to-grid/grid";
 * vdeArN4105_2018_droop({ setting: "overfrequencyDroop", value: "setting" }).text; // "5"
 * ```
 */
export const vdeArN4105_2018_droop = /* @__PURE__ */ table({
  id: "grid/vde-ar-n-4105-2018-droop",
  about: "droop of the response to frequency of VDE-AR-N 4105:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "%", symbol: "s" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "5.7.4", grade: "memory" }],
  cells: `
    overfrequencyDroop   5
    underfrequencyDroop  5
  `,
});
