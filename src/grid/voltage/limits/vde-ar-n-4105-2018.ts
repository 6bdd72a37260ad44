import { formula } from "../../../formula/index.js";

/**
 * Voltage change that all plants of a low-voltage network may cause at any of its connection points, VDE-AR-N 4105:2018.
 *
 * @function
 * @example
 * ```ts
 * import { vdeArN4105_2018_voltageChangeLimit } from "pv-to-grid/grid";
 * vdeArN4105_2018_voltageChangeLimit({ nominalVoltage: "230 V" }).text; // "6.9"
 * ```
 */
export const vdeArN4105_2018_voltageChangeLimit = /* @__PURE__ */ formula({
  id: "grid/vde-ar-n-4105-2018-voltage-change-limit",
  about: "voltage change that all plants of a low-voltage network may cause at any of its connection points, VDE-AR-N 4105:2018",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    vde4105Of2018Share: {
      value: "0.03", unit: "1", symbol: "Δu_lim", about: "limit as a share of the nominal voltage",
      source: [{ in: "VDE-AR-N 4105:2018", clause: "5.3", grade: "memory" }, { in: "VDE-AR-N 4105:2011", clause: "5.3", grade: "copied", seen: "Top50 Solar forum:undated, answer" }],
    },
  },
  gives: { unit: "V", symbol: "ΔU_lim" },
  expression: "nominalVoltage * vde4105Of2018Share",
  source: [{ in: "VDE-AR-N 4105:2018", clause: "5.3", grade: "memory" }, { in: "VDE-AR-N 4105:2011", clause: "5.3", grade: "copied", seen: "Top50 Solar forum:undated, answer" }],
  note: "against the state without plants",
  unproven: { because: "no publication found", sought: "limit in volts at a printed nominal voltage" },
});
