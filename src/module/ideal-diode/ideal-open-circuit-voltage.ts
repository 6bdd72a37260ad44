import { formula } from "../../formula/index.js";

/**
 * Open-circuit voltage of an ideal diode, without resistances.
 *
 * @function
 * @example
 * ```ts
 * import { idealOpenCircuitVoltage } from "pv-to-grid/module";
 * idealOpenCircuitVoltage({ photocurrent: "4 A", saturationCurrent: "1e-10 A", thermalVoltage: "0.0257 V" }).show({ digits: 3 }); // "0.627 V"
 * ```
 */
export const idealOpenCircuitVoltage = /* @__PURE__ */ formula({
  id: "module/ideal-open-circuit-voltage",
  about: "open-circuit voltage of an ideal diode, without resistances",
  takes: {
    photocurrent: { unit: "A", symbol: "I_L", about: "photocurrent", above: 0, to: 100000 },
    saturationCurrent: { unit: "A", symbol: "I_0", about: "saturation current", above: 0, to: 1 },
    thermalVoltage: { unit: "V", symbol: "U_T", about: "thermal voltage, times the diode factor and the cells in series where they are not 1", from: 0.01, to: 100 },
  },
  gives: { unit: "V", symbol: "U_OC" },
  expression: "thermalVoltage * log(photocurrent / saturationCurrent + 1)",
  source: [
    { in: "Masters:2004", clause: "example 8.3", grade: "memory" },
    { in: "Kalogirou:2009", clause: "chapter 9", grade: "memory" },
    { in: "TU Delft ET3034TUx:2014", clause: "open-circuit voltage of an ideal junction", grade: "copied" },
  ],
  unproven: { because: "no publication found", sought: "worked examples in edited publications with every constant printed; those found are recalled or stand on a forum" },
});
