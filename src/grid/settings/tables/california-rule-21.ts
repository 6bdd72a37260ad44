import { table } from "../../../formula/index.js";

/**
 * Voltage at which a smart inverter of California is to trip.
 *
 * @function
 * @example
 * ```ts
 * import { californiaRule21_2018_voltageTrip } from "pv-to-grid/grid";
 * californiaRule21_2018_voltageTrip({ setting: "overvoltage2", value: "setting" }).text; // "1.2"
 * ```
 */
export const californiaRule21_2018_voltageTrip = /* @__PURE__ */ table({
  id: "grid/california-rule-21-2018-voltage-trip",
  about: "voltage at which a smart inverter of California is to trip",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "California Rule 21:2018", clause: "section Hh, voltage ride-through table", grade: "memory" }],
  cells: `
    overvoltage2   1.20
    overvoltage1   1.10
    undervoltage1  0.88
    undervoltage2  0.70
    undervoltage3  0.50
  `,
});

/**
 * Frequency at which a smart inverter of California is to trip.
 *
 * @function
 * @example
 * ```ts
 * import { californiaRule21_2018_frequencyTrip } from "pv-to-grid/grid";
 * californiaRule21_2018_frequencyTrip({ setting: "overfrequency2", value: "setting" }).text; // "62"
 * ```
 */
export const californiaRule21_2018_frequencyTrip = /* @__PURE__ */ table({
  id: "grid/california-rule-21-2018-frequency-trip",
  about: "frequency at which a smart inverter of California is to trip",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "California Rule 21:2018", clause: "section Hh, frequency ride-through table", grade: "memory" }],
  cells: `
    overfrequency2   62.0
    overfrequency1   60.5
    underfrequency1  58.5
    underfrequency2  57.0
  `,
});

/**
 * Longest trip time of a smart inverter of California.
 *
 * @function
 * @example
 * ```ts
 * import { californiaRule21_2018_clearingTime } from "pv-to-grid/grid";
 * californiaRule21_2018_clearingTime({ setting: "overvoltage2", time: "clearing" }).text; // "0.16"
 * ```
 */
export const californiaRule21_2018_clearingTime = /* @__PURE__ */ table({
  id: "grid/california-rule-21-2018-clearing-time",
  about: "longest trip time of a smart inverter of California",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["clearing"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "California Rule 21:2018", clause: "section Hh, ride-through tables", grade: "memory" }],
  cells: `
    overvoltage2     0.16
    overvoltage1     13
    undervoltage1    21
    undervoltage2    11
    undervoltage3    1.5
    overfrequency2   0.16
    overfrequency1   300
    underfrequency1  300
    underfrequency2  0.16
  `,
});
