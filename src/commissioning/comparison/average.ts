import { formula } from "../../formula/index.js";

/**
 * Size of the share by which a current differs from the average of all strings. @function
 *
 * @example
 * ```ts
 * import { averageDeviation } from "pv-to-grid/commissioning";
 * averageDeviation({ measuredCurrent: "9 A", stringCurrents: ["9 A", "10 A", "11 A"] }).text; // "0.1"
 * ```
 */
export const averageDeviation = /* @__PURE__ */ formula({
  id: "commissioning/average-deviation",
  about: "size of the share by which a current differs from the average of all strings",
  takes: {
    measuredCurrent: { unit: "A", symbol: "I_1", about: "measured current", from: 0, to: 1000, usual: [0, 100] },
    stringCurrents: { each: "A", symbol: "I_i", about: "reading of each string", above: 0 },
  },
  gives: { unit: "1", symbol: "|d|" },
  expression: "abs(measuredCurrent * count(stringCurrents) / sum(stringCurrents) - 1)",
  source: [{ in: "D.c. amperage clause:undated", clause: "acceptance", grade: "copied" }],
  unproven: { because: "definition" },
});
