import { formula } from "../../../formula/index.js";

/**
 * Voltage change that generators may contribute on the line of the network operator, Real Decreto 1699/2011.
 *
 * @function
 * @example
 * ```ts
 * import { rd1699_2011_voltageChangeLimit } from "pv-to-grid/grid";
 * rd1699_2011_voltageChangeLimit({ nominalVoltage: "230 V" }).text; // "5.75"
 * ```
 */
export const rd1699_2011_voltageChangeLimit = /* @__PURE__ */ formula({
  id: "grid/rd-1699-2011-voltage-change-limit",
  about: "voltage change that generators may contribute on the line of the network operator, Real Decreto 1699/2011",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    rd1699Share: {
      value: "0.025", unit: "1", symbol: "Δu_lim", about: "limit as a share of the nominal voltage",
      source: [{ in: "RD 1699/2011:2011", clause: "12.3", grade: "copied" }],
    },
  },
  gives: { unit: "V", symbol: "ΔU_lim" },
  expression: "nominalVoltage * rd1699Share",
  source: [{ in: "RD 1699/2011:2011", clause: "12.3", grade: "copied" }],
  note: "from the regulating substation or transformer to the connection point, worst case; unchanged in later texts",
  unproven: { because: "no publication found", sought: "limit in volts at a printed nominal voltage" },
});
