import { formula } from "../../../formula/index.js";

/**
 * Lowest supply voltage of the regulations of Great Britain of 2002.
 *
 * @function
 * @example
 * ```ts
 * import { esqcr_2002_lowestVoltage } from "pv-to-grid/grid";
 * esqcr_2002_lowestVoltage({ nominalVoltage: "230 V" }).text; // "216.2"
 * ```
 */
export const esqcr_2002_lowestVoltage = /* @__PURE__ */ formula({
  id: "grid/esqcr-2002-lowest-voltage",
  about: "lowest supply voltage of the regulations of Great Britain of 2002",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    esqcrLower: {
      value: "0.06", unit: "1", symbol: "δ_lo", about: "share of the nominal voltage by which the supply may be lower",
      source: [{ in: "ESQCR:2002", clause: "regulation 27", grade: "memory" }],
    },
  },
  gives: { unit: "V", symbol: "U_min" },
  expression: "nominalVoltage * (1 - esqcrLower)",
  source: [{ in: "ESQCR:2002", clause: "regulation 27", grade: "memory" }],
  unproven: { because: "no publication found", sought: "band in volts at a printed nominal voltage" },
});

/**
 * Highest supply voltage of the regulations of Great Britain of 2002.
 *
 * @function
 * @example
 * ```ts
 * import { esqcr_2002_highestVoltage } from "pv-to-grid/grid";
 * esqcr_2002_highestVoltage({ nominalVoltage: "230 V" }).text; // "253"
 * ```
 */
export const esqcr_2002_highestVoltage = /* @__PURE__ */ formula({
  id: "grid/esqcr-2002-highest-voltage",
  about: "highest supply voltage of the regulations of Great Britain of 2002",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    esqcrUpper: {
      value: "0.1", unit: "1", symbol: "δ_hi", about: "share of the nominal voltage by which the supply may be higher",
      source: [{ in: "ESQCR:2002", clause: "regulation 27", grade: "memory" }],
    },
  },
  gives: { unit: "V", symbol: "U_max" },
  expression: "nominalVoltage * (1 + esqcrUpper)",
  source: [{ in: "ESQCR:2002", clause: "regulation 27", grade: "memory" }],
  unproven: { because: "no publication found", sought: "band in volts at a printed nominal voltage" },
});
