import { table } from "../../../formula/index.js";

/**
 * Effective impedance of conductors in a raceway at a power factor of 0.85.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2017_table_9_impedance } from "pv-to-grid/conductor";
 * nfpa70_2017_table_9_impedance({ conductorSize: "12 AWG", conductor: "copper", raceway: "PVC" }).show(); // "5.6 Ω/km"
 * ```
 */
export const nfpa70_2017_table_9_impedance = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2017-table-9-impedance", about: "effective impedance of conductors in a raceway at a power factor of 0.85",
  base: { conductorTemperature: "75 °C", frequency: "60 Hz" },
  rows: { name: "conductorSize", names: "in the first column" }, rowRule: "exact",
  columns: { conductor: ["copper", "aluminium"], raceway: ["PVC", "aluminium", "steel"] },
  gives: { unit: "Ω/km", symbol: "Z_e" },
  source: [{ in: "NFPA 70:2017", clause: "chapter 9, table 9", grade: "copied" }],
  note: "three single conductors in a raceway, to neutral",
  cells: `
    14 AWG      8.9    8.9    8.9    –      –      –
    12 AWG      5.6    5.6    5.6    9.2    9.2    9.2
    10 AWG      3.6    3.6    3.6    5.9    5.9    5.9
    8 AWG       2.26   2.26   2.3    3.6    3.6    3.6
    6 AWG       1.44   1.48   1.48   2.33   2.36   2.36
    4 AWG       0.95   0.95   0.98   1.51   1.51   1.51
    3 AWG       0.75   0.79   0.79   1.21   1.21   1.21
    2 AWG       0.62   0.62   0.66   0.98   0.98   0.98
    1 AWG       0.52   0.52   0.52   0.79   0.79   0.82
    1/0 AWG     0.43   0.43   0.43   0.62   0.66   0.66
    2/0 AWG     0.36   0.36   0.36   0.52   0.52   0.52
    3/0 AWG     0.289  0.302  0.308  0.43   0.43   0.46
    4/0 AWG     0.243  0.256  0.262  0.36   0.36   0.36
    250 kcmil   0.217  0.23   0.24   0.308  0.322  0.33
    300 kcmil   0.194  0.207  0.213  0.269  0.282  0.289
    350 kcmil   0.174  0.19   0.197  0.24   0.253  0.262
    400 kcmil   0.161  0.174  0.184  0.217  0.233  0.24
    500 kcmil   0.141  0.157  0.164  0.187  0.2    0.21
    600 kcmil   0.131  0.144  0.154  0.167  0.18   0.19
    750 kcmil   0.118  0.131  0.141  0.148  0.161  0.171
    1000 kcmil  0.105  0.118  0.131  0.128  0.138  0.151
  `,
});
