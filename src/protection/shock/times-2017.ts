import { table } from "../../formula/index.js";

/**
 * Longest time until disconnection in final circuits, edition of 2017. @function
 *
 * @example
 * ```ts
 * import { iec60364_4_41_2017_41_1 } from "pv-to-grid/protection";
 * iec60364_4_41_2017_41_1({ lineToEarth: "230 V", system: "TN", currentKind: "a.c." }).text; // "0.4"
 * ```
 */
export const iec60364_4_41_2017_41_1 = /* @__PURE__ */ table({
  id: "protection/iec-60364-4-41-2017-41-1",
  about: "longest time until disconnection in final circuits, edition of 2017",
  rows: { name: "lineToEarth", unit: "V", symbol: "U_0", above: 50, to: 400 },
  rowRule: "next above",
  columns: { system: ["TN", "TT"], currentKind: ["a.c.", "d.c."] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEC 60364-4-41:2017", clause: "table 41.1", grade: "memory" }],
  note: "final circuits of up to 32 A, of up to 63 A with socket-outlets; where nothing is tabulated, disconnection may be needed for other reasons than shock",
  cells: `
    120  0.8  –    0.3   –
    230  0.4  1    0.2   0.4
    400  0.2  0.4  0.07  0.2
  `,
});

/**
 * Longest time until disconnection in final circuits above 400 V to earth, edition of 2017. @function
 *
 * @example
 * ```ts
 * import { iec60364_4_41_2017_41_1_above } from "pv-to-grid/protection";
 * iec60364_4_41_2017_41_1_above({ voltageRange: "above 400 V", system: "TN", currentKind: "a.c." }).text; // "0.1"
 * ```
 */
export const iec60364_4_41_2017_41_1_above = /* @__PURE__ */ table({
  id: "protection/iec-60364-4-41-2017-41-1-above",
  about: "longest time until disconnection in final circuits above 400 V to earth, edition of 2017",
  rows: { name: "voltageRange", names: "in the first column" },
  rowRule: "exact",
  columns: { system: ["TN", "TT"], currentKind: ["a.c.", "d.c."] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEC 60364-4-41:2017", clause: "table 41.1, last row", grade: "memory" }],
  cells: `
    above 400 V  0.1  0.1  0.04  0.1
  `,
});
