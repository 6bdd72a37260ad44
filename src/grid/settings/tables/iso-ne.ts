import { table } from "../../../formula/index.js";

/**
 * Voltage at which a unit of the New England source requirements is to trip.
 *
 * @function
 * @example
 * ```ts
 * import { isoNe_2018_voltageTrip } from "pv-to-grid/grid";
 * isoNe_2018_voltageTrip({ setting: "overvoltage2", value: "setting" }).text; // "1.2"
 * ```
 */
export const isoNe_2018_voltageTrip = /* @__PURE__ */ table({
  id: "grid/iso-ne-2018-voltage-trip",
  about: "voltage at which a unit of the New England source requirements is to trip",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "ISO-NE source requirements:2018", clause: "table I", grade: "memory" }],
  cells: `
    overvoltage2   1.20
    overvoltage1   1.10
    undervoltage1  0.88
    undervoltage2  0.50
  `,
});

/**
 * Frequency at which a unit of the New England source requirements is to trip.
 *
 * @function
 * @example
 * ```ts
 * import { isoNe_2018_frequencyTrip } from "pv-to-grid/grid";
 * isoNe_2018_frequencyTrip({ setting: "overfrequency2", value: "setting" }).text; // "62"
 * ```
 */
export const isoNe_2018_frequencyTrip = /* @__PURE__ */ table({
  id: "grid/iso-ne-2018-frequency-trip",
  about: "frequency at which a unit of the New England source requirements is to trip",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "ISO-NE source requirements:2018", clause: "table II", grade: "memory" }],
  cells: `
    overfrequency2   62.0
    overfrequency1   61.2
    underfrequency1  58.5
    underfrequency2  56.5
  `,
});

/**
 * Trip time of the New England source requirements.
 *
 * @function
 * @example
 * ```ts
 * import { isoNe_2018_clearingTime } from "pv-to-grid/grid";
 * isoNe_2018_clearingTime({ setting: "overvoltage2", time: "clearing" }).text; // "0.16"
 * ```
 */
export const isoNe_2018_clearingTime = /* @__PURE__ */ table({
  id: "grid/iso-ne-2018-clearing-time",
  about: "trip time of the New England source requirements",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["clearing"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "ISO-NE source requirements:2018", clause: "tables I and II", grade: "memory" }],
  cells: `
    overvoltage2     0.16
    overvoltage1     2.0
    undervoltage1    2.0
    undervoltage2    1.1
    overfrequency2   0.16
    overfrequency1   300
    underfrequency1  300
    underfrequency2  0.16
  `,
});
