import { table } from "../../formula/index.js";

/**
 * Lowest and highest instantaneous tripping current of miniature circuit-breakers, as multiples of the rating. @function
 *
 * @example
 * ```ts
 * import { iec60898_1_2015_trip_bands } from "pv-to-grid/device";
 * iec60898_1_2015_trip_bands({ characteristic: "C", limit: "trips at the latest" }).text; // "10"
 * ```
 */
export const iec60898_1_2015_trip_bands = /* @__PURE__ */ table({
  id: "device/iec-60898-1-2015-trip-bands",
  about: "lowest and highest instantaneous tripping current of miniature circuit-breakers, as multiples of the rating",
  rows: { name: "characteristic", names: "in the first column" },
  rowRule: "exact",
  columns: { limit: ["does not trip up to", "trips at the latest"] },
  gives: { unit: "1", symbol: "m" },
  source: [
    {
      in: "IEC 60898-1:2015",
      clause: "table 7 (time-current operating characteristics)",
      grade: "reproduced",
      seen: "Yuanky breaker page:undated, test procedures D and E",
    },
  ],
  note: "the upper end decides disconnection, the lower end unwanted tripping; some makers of type D trip at 14 times",
  cells: `
    B   3   5
    C   5   10
    D   10  20
  `,
});
