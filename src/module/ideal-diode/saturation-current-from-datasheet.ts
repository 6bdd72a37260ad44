import { formula } from "../../formula/index.js";

/**
 * Saturation current from the open-circuit voltage and short-circuit current, the shunt neglected.
 *
 * @function
 * @example
 * ```ts
 * import { saturationCurrentFromDatasheet } from "pv-to-grid/module";
 * saturationCurrentFromDatasheet({ shortCircuitCurrent: "8.21 A", openCircuitVoltage: "32.9 V", thermalVoltage: "1.80362 V" }).show(); // "0.00000009825 A"
 * ```
 */
export const saturationCurrentFromDatasheet = /* @__PURE__ */ formula({
  id: "module/saturation-current-from-datasheet",
  about: "saturation current from the open-circuit voltage and short-circuit current, the shunt neglected",
  takes: {
    shortCircuitCurrent: { unit: "A", symbol: "I_SC", about: "short-circuit current", above: 0, usual: [0.05, 40] },
    openCircuitVoltage: { unit: "V", symbol: "U_OC", about: "open-circuit voltage", above: 0, usual: [0.3, 200] },
    thermalVoltage: { unit: "V", symbol: "U_T", about: "thermal voltage, times the diode factor and the cells in series where they are not 1", from: 0.01, to: 100 },
  },
  requires: [{ that: "openCircuitVoltage <= 100 * thermalVoltage", because: "no open-circuit voltage is a hundred thermal voltages" }],
  gives: { unit: "A", symbol: "I_0" },
  expression: "shortCircuitCurrent / (exp(openCircuitVoltage / thermalVoltage) - 1)",
  source: [{ in: "Villalva:2009", clause: "saturation current", grade: "memory" }],
  unproven: { because: "no publication found", sought: "the paper itself; its results are recalled" },
  note: "neglects the shunt, so that the open-circuit voltage of the model comes out a little low",
});
