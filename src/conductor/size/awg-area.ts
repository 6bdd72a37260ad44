import { table } from "../../formula/index.js";

/**
 * Area of a conductor by its American wire gauge or kcmil size.
 *
 * @function
 * @example
 * ```ts
 * import { awgArea } from "pv-to-grid/conductor";
 * awgArea({ conductorSize: "10 AWG" }).in("mm²").show(); // "5.26 mm²"
 * ```
 */
export const awgArea = /* @__PURE__ */ table({
  id: "conductor/awg-area", about: "area of a conductor by its American wire gauge or kcmil size",
  rows: { name: "conductorSize", names: "in the first column" }, rowRule: "exact",
  gives: { unit: "cmil", symbol: "A" },
  source: [{ in: "NFPA 70:2017", clause: "chapter 9, table 8", grade: "copied" }],
  note: "the code rounds the areas of ASTM B258 to four digits, not always to the nearest; a kcmil size is its area by definition",
  cells: `
    18 AWG      1620
    16 AWG      2580
    14 AWG      4110
    12 AWG      6530
    10 AWG      10380
    8 AWG       16510
    6 AWG       26240
    4 AWG       41740
    3 AWG       52620
    2 AWG       66360
    1 AWG       83690
    1/0 AWG     105600
    2/0 AWG     133100
    3/0 AWG     167800
    4/0 AWG     211600
    250 kcmil   250000
    300 kcmil   300000
    350 kcmil   350000
    400 kcmil   400000
    500 kcmil   500000
    600 kcmil   600000
    700 kcmil   700000
    750 kcmil   750000
    800 kcmil   800000
    900 kcmil   900000
    1000 kcmil  1000000
    1250 kcmil  1250000
    1500 kcmil  1500000
    1750 kcmil  1750000
    2000 kcmil  2000000
  `,
});
