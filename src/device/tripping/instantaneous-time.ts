import { table } from "../../formula/index.js";

/**
 * Longest time until a miniature circuit-breaker trips at the upper end of its band. @function
 *
 * @example
 * ```ts
 * import { iec60898_1_2015_instantaneous_time } from "pv-to-grid/device";
 * iec60898_1_2015_instantaneous_time({ characteristic: "B" }).text; // "0.1"
 * ```
 */
export const iec60898_1_2015_instantaneous_time = /* @__PURE__ */ table({
  id: "device/iec-60898-1-2015-instantaneous-time",
  about: "longest time until a miniature circuit-breaker trips at the upper end of its band",
  rows: { name: "characteristic", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEC 60898-1:2015", clause: "table 7", grade: "reproduced", seen: "Yuanky breaker page:undated, test procedure E" }],
  cells: `
    B  0.1
    C  0.1
    D  0.1
  `,
});
