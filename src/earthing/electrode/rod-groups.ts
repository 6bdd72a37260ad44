import { formula, table } from "../../formula/index.js";

/**
 * Resistance of equal electrodes far apart from each other. @function
 *
 * @example
 * ```ts
 * import { equalElectrodesApart } from "pv-to-grid/earthing";
 * equalElectrodesApart({ rodResistance: "17 Ω", rodCount: "10" }).text; // "1.7"
 * ```
 */
export const equalElectrodesApart = /* @__PURE__ */ formula({
  id: "earthing/equal-electrodes-apart",
  about: "resistance of equal electrodes far apart from each other",
  takes: {
    rodResistance: { unit: "Ω", symbol: "R_1", about: "resistance of one rod to earth", above: 0, usual: [0.1, 5000] },
    rodCount: { unit: "1", symbol: "n", about: "number of rods", from: 2, to: 1000 },
  },
  gives: { unit: "Ω", symbol: "R_n" },
  expression: "rodResistance / rodCount",
  source: [{ in: "IS 3043 pipe sheet:undated", clause: "sheet 1", grade: "copied" }],
  unproven: { because: "definition" },
});

/**
 * Resistance of a group of rods from a chart of its share of one rod. @function
 *
 * @example
 * ```ts
 * import { electrodesByShare } from "pv-to-grid/earthing";
 * electrodesByShare({ rodResistance: "32 Ω", shareOfOne: "5.5 %" }).text; // "1.76"
 * ```
 */
export const electrodesByShare = /* @__PURE__ */ formula({
  id: "earthing/electrodes-by-share",
  about: "resistance of a group of rods from a chart of its share of one rod",
  takes: {
    rodResistance: { unit: "Ω", symbol: "R_1", about: "resistance of one rod to earth", above: 0, usual: [0.1, 5000] },
    shareOfOne: { unit: "1", symbol: "p", about: "resistance of the group over that of one rod", above: 0, to: 1 },
  },
  gives: { unit: "Ω", symbol: "R_n" },
  expression: "shareOfOne * rodResistance",
  source: [{ in: "MIL-HDBK-419A:1987", clause: "volume II, 1.2.2.2", grade: "original" }],
});

/**
 * Resistance of many rods in a line, joined by an insulated conductor. @function
 *
 * @example
 * ```ts
 * import { rodsInLineResistance } from "pv-to-grid/earthing";
 * rodsInLineResistance({ soilResistivity: "100 Ω·m", rodLength: "3 m", rodDiameter: "16 mm", rodCount: "10", rodSpacing: "6 m" }).show(); // "4.331 Ω"
 * ```
 */
export const rodsInLineResistance = /* @__PURE__ */ formula({
  id: "earthing/rods-in-line-resistance",
  about: "resistance of many rods in a line, joined by an insulated conductor",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    rodLength: { unit: "m", symbol: "L", about: "buried length of the rod", above: 0, usual: [0.5, 50] },
    rodDiameter: { unit: "m", symbol: "d", about: "diameter of the rod", above: 0, usual: [0.005, 0.5] },
    rodCount: { unit: "1", symbol: "n", about: "number of rods", from: 2, to: 1000 },
    rodSpacing: { unit: "m", symbol: "s", about: "distance between neighbouring rods", above: 0, usual: [0.5, 100] },
  },
  constants: {
    dwightEight: {
      value: "8", unit: "1", symbol: "8", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
  },
  requires: [{ that: "rodLength > rodDiameter", because: "the formula holds for rods much longer than thick" }],
  gives: { unit: "Ω", symbol: "R_n" },
  expression: "soilResistivity / (2 * pi * rodCount * rodLength) * (log(dwightEight * rodLength / rodDiameter) - 1 + 2 * rodLength / rodSpacing * log(2 * rodCount / pi))",
  source: [{ in: "MIL-HDBK-419A:1987", clause: "volume I, equation 2-25 (after Sunde)", grade: "memory" }],
  unproven: { because: "no publication found", sought: "MIL-HDBK-419A equation 2-25 worked in numbers, resistance of rods in a line" },
});

/**
 * Resistance of a group of equal rods by the factor of its arrangement. @function
 *
 * @example
 * ```ts
 * import { rodGroupResistance } from "pv-to-grid/earthing";
 * rodGroupResistance({ rodResistance: "33 Ω", soilResistivity: "100 Ω·m", rodSpacing: "3 m", rodCount: "3", groupFactor: "1.66" }).show(); // "13.94 Ω"
 * ```
 */
export const rodGroupResistance = /* @__PURE__ */ formula({
  id: "earthing/rod-group-resistance",
  about: "resistance of a group of equal rods by the factor of its arrangement",
  takes: {
    rodResistance: { unit: "Ω", symbol: "R_1", about: "resistance of one rod to earth", above: 0, usual: [0.1, 5000] },
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    rodSpacing: { unit: "m", symbol: "s", about: "distance between neighbouring rods", above: 0, usual: [0.5, 100] },
    rodCount: { unit: "1", symbol: "n", about: "number of rods", from: 2, to: 1000 },
    groupFactor: { unit: "1", symbol: "λ", about: "factor of the arrangement", above: 0, to: 20 },
  },
  gives: { unit: "Ω", symbol: "R_n" },
  expression: "rodResistance / rodCount * (1 + groupFactor * soilResistivity / (2 * pi * rodResistance * rodSpacing))",
  source: [{ in: "BS 7430:2015", clause: "9.5.4", grade: "memory" }],
  unproven: { because: "no publication found", sought: "BS 7430 worked example of rods in line or in a hollow square" },
});

/**
 * Factor of rods in a line. @function
 *
 * @example
 * ```ts
 * import { bs7430_2015_line_factor } from "pv-to-grid/earthing";
 * bs7430_2015_line_factor({ rodCount: "4" }).text; // "2.15"
 * ```
 */
export const bs7430_2015_line_factor = /* @__PURE__ */ table({
  id: "earthing/bs-7430-2015-line-factor",
  about: "factor of rods in a line",
  rows: { name: "rodCount", unit: "1", symbol: "n" },
  rowRule: "exact",
  gives: { unit: "1", symbol: "λ" },
  source: [{ in: "BS 7430:2015", clause: "9.5.4, table 2", grade: "memory" }],
  note: "equal currents in all rods give factors up to 1.4 per cent higher",
  cells: `
    2   1.00
    3   1.66
    4   2.15
    5   2.54
    6   2.87
    7   3.15
    8   3.39
    9   3.61
    10  3.81
  `,
});

/**
 * Factor of rods round a hollow square, by the number along one side. @function
 *
 * @example
 * ```ts
 * import { bs7430_2015_square_factor } from "pv-to-grid/earthing";
 * bs7430_2015_square_factor({ rodsPerSide: "4" }).text; // "5.46"
 * ```
 */
export const bs7430_2015_square_factor = /* @__PURE__ */ table({
  id: "earthing/bs-7430-2015-square-factor",
  about: "factor of rods round a hollow square, by the number along one side",
  rows: { name: "rodsPerSide", unit: "1", symbol: "n_s" },
  rowRule: "exact",
  gives: { unit: "1", symbol: "λ" },
  source: [{ in: "BS 7430:2015", clause: "9.5.4, table 3", grade: "memory" }],
  note: "four times one less than the rods along a side make the group; equal currents give factors up to 0.7 per cent higher",
  cells: `
    2   2.71
    3   4.51
    4   5.46
    5   6.14
    6   6.63
    7   7.03
    8   7.36
    9   7.65
    10  7.90
    12  8.32
    14  8.67
    16  8.96
    18  9.22
    20  9.40
  `,
});
