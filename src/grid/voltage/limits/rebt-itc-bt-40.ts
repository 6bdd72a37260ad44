import { formula } from "../../../formula/index.js";

/**
 * Voltage change between generator and interconnection point at rated current, REBT ITC-BT-40.
 *
 * @function
 * @example
 * ```ts
 * import { rebt_2002_voltageChangeLimit } from "pv-to-grid/grid";
 * rebt_2002_voltageChangeLimit({ nominalVoltage: "230 V" }).text; // "3.45"
 * ```
 */
export const rebt_2002_voltageChangeLimit = /* @__PURE__ */ formula({
  id: "grid/rebt-2002-voltage-change-limit",
  about: "voltage change between generator and interconnection point at rated current, REBT ITC-BT-40",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    rebtItc40Share: {
      value: "0.015", unit: "1", symbol: "Δu_lim", about: "limit as a share of the nominal voltage",
      source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 5", grade: "copied" }],
    },
  },
  gives: { unit: "V", symbol: "ΔU_lim" },
  expression: "nominalVoltage * rebtItc40Share",
  source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 5", grade: "copied" }],
  unproven: { because: "no publication found", sought: "limit in volts at a printed nominal voltage" },
});
