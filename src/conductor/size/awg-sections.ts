import { table } from "../../formula/index.js";

/**
 * Cross-section of a conductor by its American wire gauge or kcmil size, as printed.
 *
 * @function
 * @example
 * ```ts
 * import { awgSections } from "pv-to-grid/conductor";
 * awgSections({ conductorSize: "10 AWG" }).show(); // "5.261 mm²"
 * ```
 */
export const awgSections = /* @__PURE__ */ table({
  id: "conductor/awg-sections", about: "cross-section of a conductor by its American wire gauge or kcmil size, as printed",
  rows: { name: "conductorSize", names: "in the first column" }, rowRule: "exact",
  gives: { unit: "mm²", symbol: "A" },
  source: [{ in: "NFPA 70:2017", clause: "chapter 9, table 8", grade: "copied" }],
  note: "rounded by the code; an exact conversion of the circular mils differs by up to 0.5 %",
  cells: `
    18 AWG      0.823
    16 AWG      1.31
    14 AWG      2.08
    12 AWG      3.31
    10 AWG      5.261
    8 AWG       8.367
    6 AWG       13.3
    4 AWG       21.15
    3 AWG       26.67
    2 AWG       33.62
    1 AWG       42.41
    1/0 AWG     53.49
    2/0 AWG     67.43
    3/0 AWG     85.01
    4/0 AWG     107.2
    250 kcmil   127
    300 kcmil   152
    350 kcmil   177
    400 kcmil   203
    500 kcmil   253
    600 kcmil   304
    700 kcmil   355
    750 kcmil   380
    800 kcmil   405
    900 kcmil   456
    1000 kcmil  507
    1250 kcmil  633
    1500 kcmil  760
    1750 kcmil  887
    2000 kcmil  1013
  `,
});
