import { table } from "../../../formula/index.js";

/**
 * Overvoltage setting of Synergrid C10/11.
 *
 * @function
 * @example
 * ```ts
 * import { synergridC10_11_undated_voltageSettings } from "pv-to-grid/grid";
 * synergridC10_11_undated_voltageSettings({ setting: "overvoltage1", value: "setting" }).text; // "1.1"
 * ```
 */
export const synergridC10_11_undated_voltageSettings = /* @__PURE__ */ table({
  id: "grid/synergrid-c10-11-undated-voltage-settings",
  about: "overvoltage setting of Synergrid C10/11",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "Synergrid C10/11:undated", clause: "decoupling, 253 V", grade: "reproduced", seen: "Valea on overvoltage:2019, body" }],
  cells: `
    overvoltage1  1.10
  `,
  note: "230 V + 10 %; the time was not printed",
});

/**
 * Observation times before reconnection of Synergrid C10/11.
 *
 * @function
 * @example
 * ```ts
 * import { synergridC10_11_undated_reconnectionTime } from "pv-to-grid/grid";
 * synergridC10_11_undated_reconnectionTime({ setting: "reconnectionTime", value: "setting" }).text; // "60"
 * ```
 */
export const synergridC10_11_undated_reconnectionTime = /* @__PURE__ */ table({
  id: "grid/synergrid-c10-11-undated-reconnection-time",
  about: "observation times before reconnection of Synergrid C10/11",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "Synergrid C10/11:undated", clause: "reconnection", grade: "reproduced", seen: "Bender VMD460 manual:2020, p. 52, factory settings" }],
  cells: `
    reconnectionTime                        60
    reconnectionTimeAfterShortInterruption  5
    shortInterruption                       3
  `,
});
