import { table } from "../../../formula/index.js";

/**
 * Voltage settings of the interface protection of CEI 0-21:2012.
 *
 * @function
 * @example
 * ```ts
 * import { cei0_21_2012_voltageSettings } from "pv-to-grid/grid";
 * cei0_21_2012_voltageSettings({ setting: "overvoltage2", value: "setting" }).text; // "1.15"
 * ```
 */
export const cei0_21_2012_voltageSettings = /* @__PURE__ */ table({
  id: "grid/cei-0-21-2012-voltage-settings",
  about: "voltage settings of the interface protection of CEI 0-21:2012",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "CEI 0-21:2012", clause: "interface protection", grade: "memory" }],
  cells: `
    overvoltage2          1.15
    sustainedOvervoltage  1.10
    undervoltage1         0.85
    undervoltage2         0.15
  `,
});

/**
 * Frequency settings of the interface protection of CEI 0-21:2012.
 *
 * @function
 * @example
 * ```ts
 * import { cei0_21_2012_frequencySettings } from "pv-to-grid/grid";
 * cei0_21_2012_frequencySettings({ setting: "overfrequencyNarrow", value: "setting" }).text; // "50.5"
 * ```
 */
export const cei0_21_2012_frequencySettings = /* @__PURE__ */ table({
  id: "grid/cei-0-21-2012-frequency-settings",
  about: "frequency settings of the interface protection of CEI 0-21:2012",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [
    { in: "CEI 0-21:2012", clause: "interface protection", grade: "memory" },
    { in: "CEI 0-21:2012", clause: "interface protection, 81.S1 and 81.S2", grade: "reproduced", seen: "Bender VMD460 manual:2020, wiring legend, p. 35" },
  ],
  cells: `
    overfrequencyNarrow   50.5
    underfrequencyNarrow  49.5
    overfrequency1        51.5
    underfrequency1       47.5
  `,
});

/**
 * Delays of the interface protection of CEI 0-21:2012.
 *
 * @function
 * @example
 * ```ts
 * import { cei0_21_2012_delays } from "pv-to-grid/grid";
 * cei0_21_2012_delays({ setting: "overvoltage2", time: "delay" }).text; // "0.2"
 * ```
 */
export const cei0_21_2012_delays = /* @__PURE__ */ table({
  id: "grid/cei-0-21-2012-delays",
  about: "delays of the interface protection of CEI 0-21:2012",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["delay"] },
  gives: { unit: "s", symbol: "t" },
  source: [
    { in: "CEI 0-21:2012", clause: "interface protection", grade: "memory" },
    { in: "CEI 0-21:2012", clause: "interface protection, 81.S1 and 81.S2", grade: "reproduced", seen: "Bender VMD460 manual:2020, wiring legend, p. 35" },
  ],
  cellGrades: { memory: ["overvoltage2", "sustainedOvervoltage", "undervoltage1", "undervoltage2"] },
  cells: `
    overvoltage2          0.2
    sustainedOvervoltage  3.0
    undervoltage1         1.5
    undervoltage2         0.2
    overfrequencyNarrow   0.1
    underfrequencyNarrow  0.1
    overfrequency1        0.1
    underfrequency1       0.1
  `,
  note: "81.S2 with an external signal: 1 s over and 4 s under frequency, whose assignment is recalled",
});
