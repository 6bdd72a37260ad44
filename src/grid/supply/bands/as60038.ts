import { formula } from "../../../formula/index.js";

/**
 * Lowest supply voltage of AS 60038:2012.
 *
 * @function
 * @example
 * ```ts
 * import { as60038_2012_lowestVoltage } from "pv-to-grid/grid";
 * as60038_2012_lowestVoltage({ nominalVoltage: "230 V" }).text; // "216.2"
 * ```
 */
export const as60038_2012_lowestVoltage = /* @__PURE__ */ formula({
  id: "grid/as-60038-2012-lowest-voltage",
  about: "lowest supply voltage of AS 60038:2012",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    as60038Lower: {
      value: "0.06", unit: "1", symbol: "δ_lo", about: "share of the nominal voltage by which the supply may be lower",
      source: [{ in: "AS 60038:2012", clause: "table 1", grade: "memory" }],
    },
  },
  gives: { unit: "V", symbol: "U_min" },
  expression: "nominalVoltage * (1 - as60038Lower)",
  source: [{ in: "AS 60038:2012", clause: "table 1", grade: "memory" }],
  unproven: { because: "no publication found", sought: "band in volts at a printed nominal voltage" },
});

/**
 * Highest supply voltage of AS 60038:2012.
 *
 * @function
 * @example
 * ```ts
 * import { as60038_2012_highestVoltage } from "pv-to-grid/grid";
 * as60038_2012_highestVoltage({ nominalVoltage: "230 V" }).text; // "253"
 * ```
 */
export const as60038_2012_highestVoltage = /* @__PURE__ */ formula({
  id: "grid/as-60038-2012-highest-voltage",
  about: "highest supply voltage of AS 60038:2012",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    as60038Upper: {
      value: "0.1", unit: "1", symbol: "δ_hi", about: "share of the nominal voltage by which the supply may be higher",
      source: [{ in: "AS 60038:2012", clause: "table 1", grade: "memory" }],
    },
  },
  gives: { unit: "V", symbol: "U_max" },
  expression: "nominalVoltage * (1 + as60038Upper)",
  source: [{ in: "AS 60038:2012", clause: "table 1", grade: "memory" }],
  unproven: { because: "no publication found", sought: "band in volts at a printed nominal voltage" },
});
