import { table } from "../../../formula/index.js";

/**
 * Voltage settings of the interface protection of EREC G99:2019.
 *
 * @function
 * @example
 * ```ts
 * import { erecG99_2019_voltageSettings } from "pv-to-grid/grid";
 * erecG99_2019_voltageSettings({ setting: "overvoltage2", value: "setting" }).text; // "1.19"
 * ```
 */
export const erecG99_2019_voltageSettings = /* @__PURE__ */ table({
  id: "grid/erec-g99-2019-voltage-settings",
  about: "voltage settings of the interface protection of EREC G99:2019",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "EREC G99:2019", clause: "interface protection settings, low voltage", grade: "memory" }],
  cells: `
    overvoltage2   1.19
    overvoltage1   1.14
    undervoltage1  0.80
  `,
  note: "of 230 V, line to neutral",
});

/**
 * Frequency settings of the interface protection of EREC G99:2019.
 *
 * @function
 * @example
 * ```ts
 * import { erecG99_2019_frequencySettings } from "pv-to-grid/grid";
 * erecG99_2019_frequencySettings({ setting: "overfrequency1", value: "setting" }).text; // "52"
 * ```
 */
export const erecG99_2019_frequencySettings = /* @__PURE__ */ table({
  id: "grid/erec-g99-2019-frequency-settings",
  about: "frequency settings of the interface protection of EREC G99:2019",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "EREC G99:2019", clause: "interface protection settings", grade: "memory" }],
  cells: `
    overfrequency1      52.0
    underfrequency1     47.5
    underfrequency2     47.0
    overfrequencyStart  50.4
  `,
});

/**
 * Rate-of-change-of-frequency setting of EREC G99:2019.
 *
 * @function
 * @example
 * ```ts
 * import { erecG99_2019_rateOfChangeOfFrequency } from "pv-to-grid/grid";
 * erecG99_2019_rateOfChangeOfFrequency({ setting: "rateOfChangeOfFrequency", value: "setting" }).text; // "1"
 * ```
 */
export const erecG99_2019_rateOfChangeOfFrequency = /* @__PURE__ */ table({
  id: "grid/erec-g99-2019-rate-of-change-of-frequency",
  about: "rate-of-change-of-frequency setting of EREC G99:2019",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "Hz/s", symbol: "df/dt" },
  source: [{ in: "EREC G99:2019", clause: "interface protection settings", grade: "reproduced", seen: "Bender VMD460 manual:2020, p. 71" }],
  cells: `
    rateOfChangeOfFrequency  1.0
  `,
});

/**
 * Trip delays of the interface protection of EREC G99:2019.
 *
 * @function
 * @example
 * ```ts
 * import { erecG99_2019_delays } from "pv-to-grid/grid";
 * erecG99_2019_delays({ setting: "overvoltage2", time: "delay" }).text; // "0.5"
 * ```
 */
export const erecG99_2019_delays = /* @__PURE__ */ table({
  id: "grid/erec-g99-2019-delays",
  about: "trip delays of the interface protection of EREC G99:2019",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["delay"] },
  gives: { unit: "s", symbol: "t" },
  source: [
    { in: "EREC G99:2019", clause: "interface protection settings", grade: "memory" },
    { in: "EREC G99:2019", clause: "interface protection settings", grade: "reproduced", seen: "Bender VMD460 manual:2020, p. 71" },
  ],
  cellGrades: { memory: ["overvoltage2", "overvoltage1", "undervoltage1", "overfrequency1", "underfrequency1", "underfrequency2"] },
  cells: `
    overvoltage2             0.5
    overvoltage1             1.0
    undervoltage1            2.5
    overfrequency1           0.5
    underfrequency1          20
    underfrequency2          0.5
    rateOfChangeOfFrequency  0.5
  `,
});

/**
 * Observation time before reconnection of EREC G99:2019.
 *
 * @function
 * @example
 * ```ts
 * import { erecG99_2019_reconnectionTime } from "pv-to-grid/grid";
 * erecG99_2019_reconnectionTime({ setting: "reconnectionTime", value: "setting" }).text; // "60"
 * ```
 */
export const erecG99_2019_reconnectionTime = /* @__PURE__ */ table({
  id: "grid/erec-g99-2019-reconnection-time",
  about: "observation time before reconnection of EREC G99:2019",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "EREC G99:2019", clause: "reconnection", grade: "memory" }],
  cells: `
    reconnectionTime  60
  `,
});

/**
 * Droop of the response to overfrequency of EREC G99:2019.
 *
 * @function
 * @example
 * ```ts
 * import { erecG99_2019_droop } from "pv-to-grid/grid";
 * erecG99_2019_droop({ setting: "overfrequencyDroop", value: "setting" }).text; // "10"
 * ```
 */
export const erecG99_2019_droop = /* @__PURE__ */ table({
  id: "grid/erec-g99-2019-droop",
  about: "droop of the response to overfrequency of EREC G99:2019",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "%", symbol: "s" },
  source: [{ in: "EREC G99:2019", clause: "limited frequency sensitive mode, overfrequency", grade: "memory" }],
  cells: `
    overfrequencyDroop  10
  `,
});
