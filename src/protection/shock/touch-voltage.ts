import { formula } from "../../formula/index.js";

/**
 * Voltage of the faulted metalwork against earth, from the voltage between lines. @function
 *
 * @example
 * ```ts
 * import { touchVoltageDuringFault } from "pv-to-grid/protection";
 * touchVoltageDuringFault({ protectiveResistance: "0.72 Ω", remainingEarthPath: "0.1 Ω", loopImpedance: "1.1206 Ω", lineToLine: "415 V" }).show(); // "175.3 V"
 * ```
 */
export const touchVoltageDuringFault = /* @__PURE__ */ formula({
  id: "protection/touch-voltage-during-fault",
  about: "voltage of the faulted metalwork against earth, from the voltage between lines",
  takes: {
    protectiveResistance: { unit: "Ω", symbol: "R_PE", about: "resistance of the protective conductor or armour", from: 0, usual: [0, 100] },
    remainingEarthPath: { unit: "Ω", symbol: "R_r", about: "resistance of the rest of the path to the source", from: 0, usual: [0, 100] },
    loopImpedance: { unit: "Ω", symbol: "Z_s", about: "impedance of the fault loop", above: 0, usual: [0.0001, 2000] },
    lineToLine: { unit: "V", symbol: "U_n", about: "nominal voltage between lines", above: 0, usual: [100, 1000] },
  },
  gives: { unit: "V", symbol: "U_t" },
  expression: "(protectiveResistance + remainingEarthPath) / loopImpedance * lineToLine / sqrt(3)",
  source: [{ in: "Sheldrake:2003", clause: "chapter 9, p. 241", grade: "original" }],
});
