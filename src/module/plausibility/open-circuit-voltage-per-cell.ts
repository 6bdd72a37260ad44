import { formula } from "../../formula/index.js";

/**
 * Open-circuit voltage of one of the cells in series.
 *
 * @function
 * @example
 * ```ts
 * import { openCircuitVoltagePerCell } from "pv-to-grid/module";
 * openCircuitVoltagePerCell({ openCircuitVoltage: "39.2 V", cellsInSeries: 54 }).show(); // "0.7259 V"
 * ```
 */
export const openCircuitVoltagePerCell = /* @__PURE__ */ formula({
  id: "module/open-circuit-voltage-per-cell",
  about: "open-circuit voltage of one of the cells in series",
  takes: {
    openCircuitVoltage: { unit: "V", symbol: "U_OC", about: "open-circuit voltage", above: 0, usual: [0.3, 200] },
    cellsInSeries: { unit: "1", symbol: "N_s", about: "cells in series in the module", from: 1, to: 1000 },
  },
  gives: { unit: "V", symbol: "U_OC,cell" },
  expression: "openCircuitVoltage / cellsInSeries",
  source: [{ in: "common practice", clause: "voltages of cells in series add", grade: "common-practice" }],
  unproven: { because: "definition" },
});
