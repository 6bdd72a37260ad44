import { formula } from "../../../formula/index.js";

/**
 * Voltage rise of the cable between inverter and origin in British practice.
 *
 * @function
 * @example
 * ```ts
 * import { mcs_2012_voltageRiseTarget } from "pv-to-grid/grid";
 * mcs_2012_voltageRiseTarget({ nominalVoltage: "230 V" }).text; // "2.3"
 * ```
 */
export const mcs_2012_voltageRiseTarget = /* @__PURE__ */ formula({
  id: "grid/mcs-2012-voltage-rise-target",
  about: "voltage rise of the cable between inverter and origin in British practice",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    mcsShare: {
      value: "0.01", unit: "1", symbol: "Δu_lim", about: "limit as a share of the nominal voltage",
      source: [{ in: "MCS guide:2012", clause: "a.c. cable", grade: "memory" }],
    },
  },
  gives: { unit: "V", symbol: "ΔU_lim" },
  expression: "nominalVoltage * mcsShare",
  source: [{ in: "MCS guide:2012", clause: "a.c. cable", grade: "memory" }],
  unproven: { because: "no publication found", sought: "limit in volts at a printed nominal voltage" },
});
