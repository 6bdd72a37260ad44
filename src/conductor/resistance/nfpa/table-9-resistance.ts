import { table } from "../../../formula/index.js";

/**
 * A.c. resistance of conductors in a raceway at 60 Hz and 75 °C.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2017_table_9_resistance } from "pv-to-grid/conductor";
 * nfpa70_2017_table_9_resistance({ conductorSize: "250 kcmil", conductor: "copper", raceway: "steel" }).show(); // "0.177 Ω/km"
 * ```
 */
export const nfpa70_2017_table_9_resistance = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2017-table-9-resistance", about: "a.c. resistance of conductors in a raceway at 60 Hz and 75 °C",
  base: { conductorTemperature: "75 °C", frequency: "60 Hz" },
  rows: { name: "conductorSize", names: "in the first column" }, rowRule: "exact",
  columns: { conductor: ["copper", "aluminium"], raceway: ["PVC", "aluminium", "steel"] },
  gives: { unit: "Ω/km", symbol: "R" },
  source: [{ in: "NFPA 70:2017", clause: "chapter 9, table 9", grade: "copied" }],
  note: "three single conductors in a raceway, to neutral",
  cells: `
    14 AWG      10.2   10.2   10.2   –      –      –
    12 AWG      6.6    6.6    6.6    10.5   10.5   10.5
    10 AWG      3.9    3.9    3.9    6.6    6.6    6.6
    8 AWG       2.56   2.56   2.56   4.3    4.3    4.3
    6 AWG       1.61   1.61   1.61   2.66   2.66   2.66
    4 AWG       1.02   1.02   1.02   1.67   1.67   1.67
    3 AWG       0.82   0.82   0.82   1.31   1.35   1.31
    2 AWG       0.62   0.66   0.66   1.05   1.05   1.05
    1 AWG       0.49   0.52   0.52   0.82   0.85   0.82
    1/0 AWG     0.39   0.43   0.39   0.66   0.69   0.66
    2/0 AWG     0.33   0.33   0.33   0.52   0.52   0.52
    3/0 AWG     0.253  0.269  0.259  0.43   0.43   0.43
    4/0 AWG     0.203  0.22   0.207  0.33   0.36   0.33
    250 kcmil   0.171  0.187  0.177  0.279  0.295  0.282
    300 kcmil   0.144  0.161  0.148  0.233  0.249  0.236
    350 kcmil   0.125  0.141  0.128  0.2    0.217  0.207
    400 kcmil   0.108  0.125  0.115  0.177  0.194  0.18
    500 kcmil   0.089  0.105  0.095  0.141  0.157  0.148
    600 kcmil   0.075  0.092  0.082  0.118  0.135  0.125
    750 kcmil   0.062  0.079  0.069  0.095  0.112  0.102
    1000 kcmil  0.049  0.062  0.059  0.075  0.089  0.082
  `,
});
