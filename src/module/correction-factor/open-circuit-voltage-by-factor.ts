import { formula } from "../../formula/index.js";

/**
 * Highest open-circuit voltage of a module by a voltage factor.
 *
 * @function
 * @example
 * ```ts
 * import { openCircuitVoltageByFactor } from "pv-to-grid/module";
 * openCircuitVoltageByFactor({ openCircuitVoltage: "49.7 V", voltageFactor: "1.2" }).text; // "59.64"
 * ```
 */
export const openCircuitVoltageByFactor = /* @__PURE__ */ formula({
  id: "module/open-circuit-voltage-by-factor",
  about: "highest open-circuit voltage of a module by a voltage factor",
  takes: {
    openCircuitVoltage: { unit: "V", symbol: "U_OC,STC", about: "open-circuit voltage at standard test conditions", above: 0, usual: [0.5, 200] },
    voltageFactor: { unit: "1", symbol: "k", about: "voltage correction factor", from: 1, to: 2 },
  },
  gives: { unit: "V", symbol: "U_OC,max" },
  expression: "openCircuitVoltage * voltageFactor",
  source: [{ in: "Oscaro Power note:undated", clause: "simplified calculation", grade: "original" }],
});
