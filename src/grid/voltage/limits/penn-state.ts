import { formula } from "../../../formula/index.js";

/**
 * Voltage change on the a.c. side of a PV system as taught at Penn State.
 *
 * @function
 * @example
 * ```ts
 * import { pennState_acVoltageTarget } from "pv-to-grid/grid";
 * pennState_acVoltageTarget({ nominalVoltage: "230 V" }).text; // "2.3"
 * ```
 */
export const pennState_acVoltageTarget = /* @__PURE__ */ formula({
  id: "grid/penn-state-ac-voltage-target",
  about: "voltage change on the a.c. side of a PV system as taught at Penn State",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    pennStateAcShare: {
      value: "0.01", unit: "1", symbol: "Δu_lim", about: "limit as a share of the nominal voltage",
      source: [{ in: "Penn State AE 868:undated", clause: "lecture on wiring, a.c. side", grade: "original" }],
    },
  },
  gives: { unit: "V", symbol: "ΔU_lim" },
  expression: "nominalVoltage * pennStateAcShare",
  source: [{ in: "Penn State AE 868:undated", clause: "lecture on wiring, a.c. side", grade: "original" }],
  unproven: { because: "no publication found", sought: "limit in volts at a printed nominal voltage" },
});
