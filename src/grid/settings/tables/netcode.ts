import { table } from "../../../formula/index.js";

/**
 * Overvoltage setting of the Netcode elektriciteit before the proposal of 2023.
 *
 * @function
 * @example
 * ```ts
 * import { netcode_undated_voltageSettings } from "pv-to-grid/grid";
 * netcode_undated_voltageSettings({ setting: "overvoltage1", value: "setting" }).text; // "1.1"
 * ```
 */
export const netcode_undated_voltageSettings = /* @__PURE__ */ table({
  id: "grid/netcode-undated-voltage-settings",
  about: "overvoltage setting of the Netcode elektriciteit before the proposal of 2023",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "Netcode elektriciteit:undated", clause: "overvoltage protection", grade: "reproduced", seen: "Renovatie Totaal:2023, body" }],
  cells: `
    overvoltage1  1.10
  `,
});
