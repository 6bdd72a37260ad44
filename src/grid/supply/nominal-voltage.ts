import { table } from "../../formula/index.js";

/**
 * Nominal voltage of a 50 Hz supply system.
 *
 * @function
 * @example
 * ```ts
 * import { iec60038_2009_nominalVoltage } from "pv-to-grid/grid";
 * iec60038_2009_nominalVoltage({ supply: "230/400 V 50 Hz", between: "line and neutral" }).text; // "230"
 * ```
 */
export const iec60038_2009_nominalVoltage = /* @__PURE__ */ table({
  id: "grid/iec-60038-2009-nominal-voltage",
  about: "nominal voltage of a 50 Hz supply system",
  rows: { name: "supply", names: "in the first column", about: "supply system" },
  rowRule: "exact",
  columns: { between: ["line and neutral", "two lines"] },
  gives: { unit: "V", symbol: "U_n" },
  source: [
    { in: "IEC 60038:2009", clause: "table 1", grade: "memory" },
    { in: "REBT:2002", clause: "ITC-BT-40, 4.3.1, 3 x 400/230 V", grade: "copied" },
  ],
  cells: `
    230/400 V 50 Hz   230  400
  `,
});

/**
 * Nominal voltage of a 60 Hz supply system.
 *
 * @function
 * @example
 * ```ts
 * import { ansiC84_1_2020_nominalVoltage } from "pv-to-grid/grid";
 * ansiC84_1_2020_nominalVoltage({ supply: "120/240 V 60 Hz split-phase", between: "line and neutral" }).text; // "120"
 * ```
 */
export const ansiC84_1_2020_nominalVoltage = /* @__PURE__ */ table({
  id: "grid/ansi-c84-1-2020-nominal-voltage",
  about: "nominal voltage of a 60 Hz supply system",
  rows: { name: "supply", names: "in the first column", about: "supply system" },
  rowRule: "exact",
  columns: { between: ["line and neutral", "two lines"] },
  gives: { unit: "V", symbol: "U_n" },
  source: [{ in: "ANSI C84.1:2020", clause: "table 1", grade: "memory" }],
  cells: `
    120/240 V 60 Hz split-phase   120  240
    208Y/120 V 60 Hz              120  208
    480Y/277 V 60 Hz              277  480
  `,
});

/**
 * Nominal frequency of a supply system.
 *
 * @function
 * @example
 * ```ts
 * import { nominalFrequency } from "pv-to-grid/grid";
 * nominalFrequency({ supply: "230/400 V 50 Hz" }).text; // "50"
 * ```
 */
export const nominalFrequency = /* @__PURE__ */ table({
  id: "grid/nominal-frequency",
  about: "nominal frequency of a supply system",
  rows: { name: "supply", names: "in the first column", about: "supply system" },
  rowRule: "exact",
  gives: { unit: "Hz", symbol: "f_n" },
  source: [
    { in: "IEC 60038:2009", clause: "table 1", grade: "memory" },
    { in: "ANSI C84.1:2020", clause: "title", grade: "memory" },
    { in: "common practice", clause: "the name of the system", grade: "common-practice" },
  ],
  cells: `
    230/400 V 50 Hz               50
    120/240 V 60 Hz split-phase   60
    208Y/120 V 60 Hz              60
    480Y/277 V 60 Hz              60
  `,
});
