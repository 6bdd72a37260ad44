import { formula } from "../../../formula/index.js";

/**
 * Voltage rise from the point of supply to the inverter terminals at rated current, AS/NZS 4777.1:2016.
 *
 * @function
 * @example
 * ```ts
 * import { asNzs4777_1_2016_voltageRiseLimit } from "pv-to-grid/grid";
 * asNzs4777_1_2016_voltageRiseLimit({ nominalVoltage: "230 V" }).text; // "4.6"
 * ```
 */
export const asNzs4777_1_2016_voltageRiseLimit = /* @__PURE__ */ formula({
  id: "grid/as-nzs-4777-1-2016-voltage-rise-limit",
  about: "voltage rise from the point of supply to the inverter terminals at rated current, AS/NZS 4777.1:2016",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    asNzs4777Part1Share: {
      value: "0.02", unit: "1", symbol: "Δu_lim", about: "limit as a share of the nominal voltage",
      source: [{ in: "AS/NZS 4777.1:2016", clause: "3.3.3", grade: "reproduced", seen: "NT WorkSafe voltage rise:undated" }, { in: "AS/NZS 4777.1:2016", clause: "voltage rise", grade: "reproduced", seen: "SEANZ on 4777.1:2016, item III" }],
    },
  },
  gives: { unit: "V", symbol: "ΔU_lim" },
  expression: "nominalVoltage * asNzs4777Part1Share",
  source: [{ in: "AS/NZS 4777.1:2016", clause: "3.3.3", grade: "reproduced", seen: "NT WorkSafe voltage rise:undated" }, { in: "AS/NZS 4777.1:2016", clause: "voltage rise", grade: "reproduced", seen: "SEANZ on 4777.1:2016, item III" }],
  note: "over every stretch of cable up to the point of supply",
});
