import { formula } from "../../../formula/index.js";

/**
 * Lowest supply voltage of EN 50160:2010.
 *
 * @function
 * @example
 * ```ts
 * import { en50160_2010_lowestVoltage } from "pv-to-grid/grid";
 * en50160_2010_lowestVoltage({ nominalVoltage: "230 V" }).text; // "207"
 * ```
 */
export const en50160_2010_lowestVoltage = /* @__PURE__ */ formula({
  id: "grid/en-50160-2010-lowest-voltage",
  about: "lowest supply voltage of EN 50160:2010",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    en50160Lower: {
      value: "0.1", unit: "1", symbol: "δ_lo", about: "share of the nominal voltage by which the supply may be lower",
      source: [{ in: "EN 50160:2010", clause: "4.2.2.2, 95 % of the 10-minute means of a week", grade: "reproduced", seen: "VDE Kassel lecture:undated, body" }],
    },
  },
  gives: { unit: "V", symbol: "U_min" },
  expression: "nominalVoltage * (1 - en50160Lower)",
  source: [{ in: "EN 50160:2010", clause: "4.2.2.2, 95 % of the 10-minute means of a week", grade: "reproduced", seen: "VDE Kassel lecture:undated, body" }],
});

/**
 * Highest supply voltage of EN 50160:2010.
 *
 * @function
 * @example
 * ```ts
 * import { en50160_2010_highestVoltage } from "pv-to-grid/grid";
 * en50160_2010_highestVoltage({ nominalVoltage: "230 V" }).text; // "253"
 * ```
 */
export const en50160_2010_highestVoltage = /* @__PURE__ */ formula({
  id: "grid/en-50160-2010-highest-voltage",
  about: "highest supply voltage of EN 50160:2010",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    en50160Upper: {
      value: "0.1", unit: "1", symbol: "δ_hi", about: "share of the nominal voltage by which the supply may be higher",
      source: [{ in: "EN 50160:2010", clause: "4.2.2.2, 95 % of the 10-minute means of a week", grade: "reproduced", seen: "VDE Kassel lecture:undated, body" }],
    },
  },
  gives: { unit: "V", symbol: "U_max" },
  expression: "nominalVoltage * (1 + en50160Upper)",
  source: [{ in: "EN 50160:2010", clause: "4.2.2.2, 95 % of the 10-minute means of a week", grade: "reproduced", seen: "VDE Kassel lecture:undated, body" }],
});
