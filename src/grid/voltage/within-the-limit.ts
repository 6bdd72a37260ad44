import { formula } from "../../formula/index.js";

/**
 * Reactive power that brings the voltage change to its limit; negative where the plant has to absorb.
 *
 * @function
 * @example
 * ```ts
 * import { reactivePowerForVoltageLimit } from "pv-to-grid/grid";
 * reactivePowerForVoltageLimit({ voltageChangeAtUnity: "14 V", voltageChangeLimit: "12 V", nominalVoltage: "400 V", reactance: "0.1 ohm" }).text; // "-8000"
 * ```
 */
export const reactivePowerForVoltageLimit = /* @__PURE__ */ formula({
  id: "grid/reactive-power-for-voltage-limit",
  about: "reactive power that brings the voltage change to its limit; negative where the plant has to absorb",
  takes: {
    voltageChangeAtUnity: { unit: "V", symbol: "ΔU_1", about: "voltage change without reactive power", usual: [-500, 500] },
    voltageChangeLimit: { unit: "V", symbol: "ΔU_lim", about: "limit of the voltage change", from: 0, usual: [0, 500] },
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] },
    reactance: { unit: "Ω", symbol: "X", about: "reactance that the reactive power flows through", above: 0, usual: [1e-6, 100] },
  },
  gives: { unit: "var", symbol: "Q_lim" },
  expression: "(voltageChangeLimit - voltageChangeAtUnity) * nominalVoltage / reactance",
  source: [{ in: "common practice", clause: "(P R + Q X)/U solved for Q", grade: "common-practice" }],
  unproven: { because: "composition only" },
});

/**
 * Largest active power at unity power factor that keeps the voltage change within its limit.
 *
 * @function
 * @example
 * ```ts
 * import { activePowerForVoltageLimit } from "pv-to-grid/grid";
 * activePowerForVoltageLimit({ voltageChangeLimit: "12 V", nominalVoltage: "230 V", resistance: "0.2 ohm" }).text; // "13800"
 * ```
 */
export const activePowerForVoltageLimit = /* @__PURE__ */ formula({
  id: "grid/active-power-for-voltage-limit",
  about: "largest active power at unity power factor that keeps the voltage change within its limit",
  takes: {
    voltageChangeLimit: { unit: "V", symbol: "ΔU_lim", about: "limit of the voltage change", from: 0, usual: [0, 500] },
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] },
    resistance: { unit: "Ω", symbol: "R", about: "resistance that the power flows through", above: 0, usual: [1e-6, 100] },
  },
  gives: { unit: "W", symbol: "P_lim" },
  expression: "voltageChangeLimit * nominalVoltage / resistance",
  source: [{ in: "common practice", clause: "(P R)/U solved for P", grade: "common-practice" }],
  unproven: { because: "composition only" },
});
