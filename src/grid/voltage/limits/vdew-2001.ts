import { formula } from "../../../formula/index.js";

/**
 * Voltage change that all plants of a low-voltage network might cause, VDEW guideline of 2001.
 *
 * @function
 * @example
 * ```ts
 * import { vdew_2001_voltageChangeLimit } from "pv-to-grid/grid";
 * vdew_2001_voltageChangeLimit({ nominalVoltage: "230 V" }).text; // "4.6"
 * ```
 */
export const vdew_2001_voltageChangeLimit = /* @__PURE__ */ formula({
  id: "grid/vdew-2001-voltage-change-limit",
  about: "voltage change that all plants of a low-voltage network might cause, VDEW guideline of 2001",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    vdewShare: {
      value: "0.02", unit: "1", symbol: "Δu_lim", about: "limit as a share of the nominal voltage",
      source: [{ in: "VDEW guideline:2001", clause: "assessment scheme, p. 68 to 70", grade: "reproduced", seen: "SFV on the VDEW guideline:2001, body" }],
    },
  },
  gives: { unit: "V", symbol: "ΔU_lim" },
  expression: "nominalVoltage * vdewShare",
  source: [{ in: "VDEW guideline:2001", clause: "assessment scheme, p. 68 to 70", grade: "reproduced", seen: "SFV on the VDEW guideline:2001, body" }],
  note: "superseded in 2011",
  unproven: { because: "no publication found", sought: "limit in volts at a printed nominal voltage" },
});
