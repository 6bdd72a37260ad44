import { formula } from "../../formula/index.js";

/**
 * Temperature coefficient of a module voltage from that of one of its cells in series.
 *
 * @function
 * @example
 * ```ts
 * import { moduleVoltageCoefficient } from "pv-to-grid/module";
 * moduleVoltageCoefficient({ cellVoltageCoefficient: "-2.1 mV/K", cellsInSeries: 60 }).text; // "-0.126"
 * ```
 */
export const moduleVoltageCoefficient = /* @__PURE__ */ formula({
  id: "module/module-voltage-coefficient",
  about: "temperature coefficient of a module voltage from that of one of its cells in series",
  takes: {
    cellVoltageCoefficient: { unit: "V/K", symbol: "β_cell", about: "absolute temperature coefficient of the voltage of one cell", above: -0.01, below: 0, usual: [-0.004, -0.001] },
    cellsInSeries: { unit: "1", symbol: "N_s", about: "cells in series in the module", from: 1, to: 1000 },
  },
  gives: { unit: "V/K", symbol: "β_U" },
  expression: "cellVoltageCoefficient * cellsInSeries",
  source: [
    { in: "common practice", clause: "voltages of cells in series add, and so do their coefficients", grade: "common-practice" },
  ],
  unproven: { because: "definition" },
});
