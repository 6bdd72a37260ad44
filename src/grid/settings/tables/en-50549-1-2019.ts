import { table } from "../../../formula/index.js";

/**
 * Voltage ranges of the interface protection of EN 50549-1:2019.
 *
 * @function
 * @example
 * ```ts
 * import { en50549_1_2019_voltageRanges } from "pv-to-grid/grid";
 * en50549_1_2019_voltageRanges({ setting: "overvoltage2", value: "lowest" }).text; // "1"
 * ```
 */
export const en50549_1_2019_voltageRanges = /* @__PURE__ */ table({
  id: "grid/en-50549-1-2019-voltage-ranges",
  about: "voltage ranges of the interface protection of EN 50549-1:2019",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting", "lowest", "highest"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "EN 50549-1:2019", clause: "4.9 and 4.10", grade: "memory" }],
  cells: `
    overvoltage2             –     1.0  1.3
    overvoltage1             –     1.0  1.2
    sustainedOvervoltage     –     1.0  1.15
    undervoltage1            –     0.2  1.0
    undervoltage2            –     0.2  1.0
    reconnectionVoltageLow   0.85  –    –
    reconnectionVoltageHigh  1.10  –    –
  `,
});

/**
 * Frequency ranges of the interface protection of EN 50549-1:2019.
 *
 * @function
 * @example
 * ```ts
 * import { en50549_1_2019_frequencyRanges } from "pv-to-grid/grid";
 * en50549_1_2019_frequencyRanges({ setting: "overfrequency1", value: "lowest" }).text; // "50"
 * ```
 */
export const en50549_1_2019_frequencyRanges = /* @__PURE__ */ table({
  id: "grid/en-50549-1-2019-frequency-ranges",
  about: "frequency ranges of the interface protection of EN 50549-1:2019",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting", "lowest", "highest"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "EN 50549-1:2019", clause: "4.6, 4.9 and 4.10", grade: "memory" }],
  cells: `
    overfrequency1             –     50.0  52.0
    overfrequency2             –     50.0  52.0
    underfrequency1            –     47.0  50.0
    underfrequency2            –     47.0  50.0
    reconnectionFrequencyLow   49.5  –     –
    reconnectionFrequencyHigh  50.2  –     –
    startFrequencyHigh         50.1  –     –
    overfrequencyStart         50.2  50.2  52.0
    underfrequencyStart        49.8  –     –
  `,
});

/**
 * Time ranges of the interface protection of EN 50549-1:2019.
 *
 * @function
 * @example
 * ```ts
 * import { en50549_1_2019_timeRanges } from "pv-to-grid/grid";
 * en50549_1_2019_timeRanges({ setting: "overvoltage2", time: "shortest" }).text; // "0.1"
 * ```
 */
export const en50549_1_2019_timeRanges = /* @__PURE__ */ table({
  id: "grid/en-50549-1-2019-time-ranges",
  about: "time ranges of the interface protection of EN 50549-1:2019",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["shortest", "longest"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "EN 50549-1:2019", clause: "4.9", grade: "memory" }],
  cells: `
    overvoltage2          0.1  5
    overvoltage1          0.1  100
    sustainedOvervoltage  –    3
    undervoltage1         0.1  100
    undervoltage2         0.1  5
    overfrequency1        0.1  100
    overfrequency2        0.1  5
    underfrequency1       0.1  100
    underfrequency2       0.1  5
  `,
});

/**
 * Observation time before reconnection of EN 50549-1:2019.
 *
 * @function
 * @example
 * ```ts
 * import { en50549_1_2019_reconnectionTime } from "pv-to-grid/grid";
 * en50549_1_2019_reconnectionTime({ setting: "reconnectionTime", value: "setting" }).text; // "60"
 * ```
 */
export const en50549_1_2019_reconnectionTime = /* @__PURE__ */ table({
  id: "grid/en-50549-1-2019-reconnection-time",
  about: "observation time before reconnection of EN 50549-1:2019",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "EN 50549-1:2019", clause: "4.10", grade: "memory" }],
  cells: `
    reconnectionTime  60
  `,
});

/**
 * Ramp after reconnection of EN 50549-1:2019.
 *
 * @function
 * @example
 * ```ts
 * import { en50549_1_2019_ramp } from "pv-to-grid/grid";
 * en50549_1_2019_ramp({ setting: "ramp", value: "setting" }).text; // "10"
 * ```
 */
export const en50549_1_2019_ramp = /* @__PURE__ */ table({
  id: "grid/en-50549-1-2019-ramp",
  about: "ramp after reconnection of EN 50549-1:2019",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "%/min", symbol: "g" },
  source: [{ in: "EN 50549-1:2019", clause: "4.10", grade: "memory" }],
  cells: `
    ramp  10
  `,
});

/**
 * Droop of the response to frequency of EN 50549-1:2019.
 *
 * @function
 * @example
 * ```ts
 * import { en50549_1_2019_droop } from "pv-to-grid/grid";
 * en50549_1_2019_droop({ setting: "overfrequencyDroop", value: "setting" }).text; // "5"
 * ```
 */
export const en50549_1_2019_droop = /* @__PURE__ */ table({
  id: "grid/en-50549-1-2019-droop",
  about: "droop of the response to frequency of EN 50549-1:2019",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting", "lowest", "highest"] },
  gives: { unit: "%", symbol: "s" },
  source: [{ in: "EN 50549-1:2019", clause: "4.6", grade: "memory" }],
  cells: `
    overfrequencyDroop   5  2  12
    underfrequencyDroop  5  –  –
  `,
});
