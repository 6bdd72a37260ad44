import { table } from "../../../formula/index.js";

/**
 * Overall diameter of bare conductors.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2017_table_8_diameters } from "pv-to-grid/conductor";
 * nfpa70_2017_table_8_diameters({ conductorSize: "10 AWG", make: "stranded" }).show(); // "2.95 mm"
 * ```
 */
export const nfpa70_2017_table_8_diameters = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2017-table-8-diameters", about: "overall diameter of bare conductors",
  rows: { name: "conductorSize", names: "in the first column" }, rowRule: "exact",
  columns: { make: ["solid", "stranded"] },
  gives: { unit: "mm", symbol: "d_c" },
  source: [{ in: "NFPA 70:2017", clause: "chapter 9, table 8", grade: "copied" }],
  cells: `
    18 AWG      1.02   1.16
    16 AWG      1.29   1.46
    14 AWG      1.63   1.85
    12 AWG      2.05   2.32
    10 AWG      2.588  2.95
    8 AWG       3.264  3.71
    6 AWG       –      4.67
    4 AWG       –      5.89
    3 AWG       –      6.6
    2 AWG       –      7.42
    1 AWG       –      8.43
    1/0 AWG     –      9.45
    2/0 AWG     –      10.62
    3/0 AWG     –      11.94
    4/0 AWG     –      13.41
    250 kcmil   –      14.61
    300 kcmil   –      16
    350 kcmil   –      17.3
    400 kcmil   –      18.49
    500 kcmil   –      20.65
    600 kcmil   –      22.68
    700 kcmil   –      24.49
    750 kcmil   –      25.35
    800 kcmil   –      26.16
    900 kcmil   –      27.79
    1000 kcmil  –      29.26
    1250 kcmil  –      32.74
    1500 kcmil  –      35.86
    1750 kcmil  –      38.76
    2000 kcmil  –      41.45
  `,
});
