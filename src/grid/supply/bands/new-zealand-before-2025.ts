import { formula } from "../../../formula/index.js";

/**
 * Lowest supply voltage of New Zealand before 13 November 2025.
 *
 * @function
 * @example
 * ```ts
 * import { newZealand_2010_lowestVoltage } from "pv-to-grid/grid";
 * newZealand_2010_lowestVoltage({ nominalVoltage: "230 V" }).text; // "216.2"
 * ```
 */
export const newZealand_2010_lowestVoltage = /* @__PURE__ */ formula({
  id: "grid/new-zealand-2010-lowest-voltage",
  about: "lowest supply voltage of New Zealand before 13 November 2025",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    newZealandOlderLower: {
      value: "0.06", unit: "1", symbol: "δ_lo", about: "share of the nominal voltage by which the supply may be lower",
      source: [{ in: "NZ low-voltage range:2010", clause: "supply range", grade: "reproduced", seen: "EEA on the supply range:2025, body" }],
    },
  },
  gives: { unit: "V", symbol: "U_min" },
  expression: "nominalVoltage * (1 - newZealandOlderLower)",
  source: [{ in: "NZ low-voltage range:2010", clause: "supply range", grade: "reproduced", seen: "EEA on the supply range:2025, body" }],
  unproven: { because: "no publication found", sought: "band in volts at a printed nominal voltage" },
});

/**
 * Highest supply voltage of New Zealand before 13 November 2025.
 *
 * @function
 * @example
 * ```ts
 * import { newZealand_2010_highestVoltage } from "pv-to-grid/grid";
 * newZealand_2010_highestVoltage({ nominalVoltage: "230 V" }).text; // "243.8"
 * ```
 */
export const newZealand_2010_highestVoltage = /* @__PURE__ */ formula({
  id: "grid/new-zealand-2010-highest-voltage",
  about: "highest supply voltage of New Zealand before 13 November 2025",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    newZealandOlderUpper: {
      value: "0.06", unit: "1", symbol: "δ_hi", about: "share of the nominal voltage by which the supply may be higher",
      source: [{ in: "NZ low-voltage range:2010", clause: "supply range", grade: "reproduced", seen: "EEA on the supply range:2025, body" }],
    },
  },
  gives: { unit: "V", symbol: "U_max" },
  expression: "nominalVoltage * (1 + newZealandOlderUpper)",
  source: [{ in: "NZ low-voltage range:2010", clause: "supply range", grade: "reproduced", seen: "EEA on the supply range:2025, body" }],
  unproven: { because: "no publication found", sought: "band in volts at a printed nominal voltage" },
});
