import { formula } from "../../../formula/index.js";

/**
 * Voltage rise inside the installation that Western Power recommends.
 *
 * @function
 * @example
 * ```ts
 * import { westernPower_2017_voltageRiseTarget } from "pv-to-grid/grid";
 * westernPower_2017_voltageRiseTarget({ nominalVoltage: "230 V" }).text; // "2.3"
 * ```
 */
export const westernPower_2017_voltageRiseTarget = /* @__PURE__ */ formula({
  id: "grid/western-power-2017-voltage-rise-target",
  about: "voltage rise inside the installation that Western Power recommends",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    westernPowerShare: {
      value: "0.01", unit: "1", symbol: "Δu_lim", about: "limit as a share of the nominal voltage",
      source: [{ in: "Western Power inverters:2017", clause: "installer checks", grade: "original" }],
    },
  },
  gives: { unit: "V", symbol: "ΔU_lim" },
  expression: "nominalVoltage * westernPowerShare",
  source: [{ in: "Western Power inverters:2017", clause: "installer checks", grade: "original" }],
  unproven: { because: "no publication found", sought: "limit in volts at a printed nominal voltage" },
});
