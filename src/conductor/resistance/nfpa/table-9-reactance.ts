import { table } from "../../../formula/index.js";

/**
 * Reactance of conductors in a raceway at 60 Hz.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2017_table_9_reactance } from "pv-to-grid/conductor";
 * nfpa70_2017_table_9_reactance({ conductorSize: "250 kcmil", raceway: "steel" }).show(); // "0.171 Ω/km"
 * ```
 */
export const nfpa70_2017_table_9_reactance = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2017-table-9-reactance", about: "reactance of conductors in a raceway at 60 Hz",
  base: { conductorTemperature: "75 °C", frequency: "60 Hz" },
  rows: { name: "conductorSize", names: "in the first column" }, rowRule: "exact",
  columns: { raceway: ["PVC", "aluminium", "steel"] },
  gives: { unit: "Ω/km", symbol: "X" },
  source: [{ in: "NFPA 70:2017", clause: "chapter 9, table 9", grade: "copied" }],
  note: "three single conductors in a raceway, to neutral",
  cells: `
    14 AWG      0.19   0.19   0.24
    12 AWG      0.177  0.177  0.223
    10 AWG      0.164  0.164  0.207
    8 AWG       0.171  0.171  0.213
    6 AWG       0.167  0.167  0.21
    4 AWG       0.157  0.157  0.197
    3 AWG       0.154  0.154  0.194
    2 AWG       0.148  0.148  0.187
    1 AWG       0.151  0.151  0.187
    1/0 AWG     0.144  0.144  0.18
    2/0 AWG     0.141  0.141  0.177
    3/0 AWG     0.138  0.138  0.171
    4/0 AWG     0.135  0.135  0.167
    250 kcmil   0.135  0.135  0.171
    300 kcmil   0.135  0.135  0.167
    350 kcmil   0.131  0.131  0.164
    400 kcmil   0.131  0.131  0.161
    500 kcmil   0.128  0.128  0.157
    600 kcmil   0.128  0.128  0.157
    750 kcmil   0.125  0.125  0.157
    1000 kcmil  0.121  0.121  0.151
  `,
});
