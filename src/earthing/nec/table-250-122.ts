import { table } from "../../formula/index.js";

/**
 * Smallest equipment grounding conductor by the rating of the overcurrent device. @function
 *
 * @example
 * ```ts
 * import { nfpa70_2023_250_122 } from "pv-to-grid/earthing";
 * nfpa70_2023_250_122({ ratedCurrent: "40 A", material: "copper" }).name; // "10 AWG"
 * ```
 */
export const nfpa70_2023_250_122 = /* @__PURE__ */ table({
  id: "earthing/nfpa-70-2023-250-122",
  about: "smallest equipment grounding conductor by the rating of the overcurrent device",
  rows: { name: "ratedCurrent", unit: "A", symbol: "I_n" },
  rowRule: "next above",
  columns: { material: ["copper", "aluminium"] },
  gives: { names: "conductor size", symbol: "EGC" },
  source: [
    { in: "NFPA 70:2017", clause: "table 250.122", grade: "copied" },
    { in: "NFPA 70:2023", clause: "table 250.122", grade: "copied" },
  ],
  differences: [
    { cell: "5000 | aluminium", ships: "1250 kcmil", others: "1200 kcmil", why: "the edition of 2017 prints 1200, later ones 1250; the larger ships for all" },
    { cell: "6000 | aluminium", ships: "1250 kcmil", others: "1200 kcmil", why: "the edition of 2017 prints 1200, later ones 1250; the larger ships for all" },
  ],
  cells: `
    15    14 AWG     12 AWG
    20    12 AWG     10 AWG
    60    10 AWG     8 AWG
    100   8 AWG      6 AWG
    200   6 AWG      4 AWG
    300   4 AWG      2 AWG
    400   3 AWG      1 AWG
    500   2 AWG      1/0 AWG
    600   1 AWG      2/0 AWG
    800   1/0 AWG    3/0 AWG
    1000  2/0 AWG    4/0 AWG
    1200  3/0 AWG    250 kcmil
    1600  4/0 AWG    350 kcmil
    2000  250 kcmil  400 kcmil
    2500  350 kcmil  600 kcmil
    3000  400 kcmil  600 kcmil
    4000  500 kcmil  750 kcmil
    5000  700 kcmil  1250 kcmil
    6000  800 kcmil  1250 kcmil
  `,
});
