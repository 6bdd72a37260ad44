import { formula } from "../../../formula/index.js";

/**
 * Voltage change that all plants of a low-voltage network may cause, technical rules of Austria.
 *
 * @function
 * @example
 * ```ts
 * import { tor_undated_voltageChangeLimit } from "pv-to-grid/grid";
 * tor_undated_voltageChangeLimit({ nominalVoltage: "230 V" }).text; // "6.9"
 * ```
 */
export const tor_undated_voltageChangeLimit = /* @__PURE__ */ formula({
  id: "grid/tor-undated-voltage-change-limit",
  about: "voltage change that all plants of a low-voltage network may cause, technical rules of Austria",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    torShare: {
      value: "0.03", unit: "1", symbol: "Δu_lim", about: "limit as a share of the nominal voltage",
      source: [{ in: "TOR Erzeuger:undated", clause: "voltage change, low voltage", grade: "memory" }],
    },
  },
  gives: { unit: "V", symbol: "ΔU_lim" },
  expression: "nominalVoltage * torShare",
  source: [{ in: "TOR Erzeuger:undated", clause: "voltage change, low voltage", grade: "memory" }],
  unproven: { because: "no publication found", sought: "limit in volts at a printed nominal voltage" },
});
