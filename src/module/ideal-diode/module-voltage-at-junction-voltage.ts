import { formula } from "../../formula/index.js";

/**
 * Voltage of a module whose junctions are at a voltage.
 *
 * @function
 * @example
 * ```ts
 * import { moduleVoltageAtJunctionVoltage } from "pv-to-grid/module";
 * moduleVoltageAtJunctionVoltage({ cellsInSeries: 36, junctionVoltage: "0.5 V", current: "3.16 A", seriesResistance: "0.005 ohm" }).show(); // "17.43 V"
 * ```
 */
export const moduleVoltageAtJunctionVoltage = /* @__PURE__ */ formula({
  id: "module/module-voltage-at-junction-voltage",
  about: "voltage of a module whose junctions are at a voltage",
  takes: {
    cellsInSeries: { unit: "1", symbol: "N_s", about: "cells in series", from: 1, to: 100000 },
    junctionVoltage: { unit: "V", symbol: "U_d", about: "voltage of one junction", from: -1, to: 5 },
    current: { unit: "A", symbol: "I", about: "current out of the terminals", above: -1000, to: 1000, usual: [-1, 100] },
    seriesResistance: { unit: "Ω", symbol: "R_s", about: "series resistance of one cell", from: 0 },
  },
  gives: { unit: "V", symbol: "U" },
  expression: "cellsInSeries * (junctionVoltage - current * seriesResistance)",
  source: [{ in: "Masters:2004", clause: "example 8.4", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked examples in edited publications; the one held is recalled" },
});
