import { formula } from "../../formula/index.js";

/**
 * Resistance to earth of a vertical rod. @function
 *
 * @example
 * ```ts
 * import { verticalRodResistance } from "pv-to-grid/earthing";
 * verticalRodResistance({ soilResistivity: "100 Ω·m", rodLength: "3 m", rodDiameter: "16 mm" }).show(); // "33.49 Ω"
 * ```
 */
export const verticalRodResistance = /* @__PURE__ */ formula({
  id: "earthing/vertical-rod-resistance",
  about: "resistance to earth of a vertical rod",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    rodLength: { unit: "m", symbol: "L", about: "buried length of the rod", above: 0, usual: [0.5, 50] },
    rodDiameter: { unit: "m", symbol: "d", about: "diameter of the rod", above: 0, usual: [0.005, 0.5] },
  },
  constants: {
    dwightEight: {
      value: "8", unit: "1", symbol: "8", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
  },
  requires: [{ that: "rodLength > rodDiameter", because: "the formula holds for rods much longer than thick" }],
  gives: { unit: "Ω", symbol: "R_1" },
  expression: "soilResistivity / (2 * pi * rodLength) * (log(dwightEight * rodLength / rodDiameter) - 1)",
  source: [
    { in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "copied", seen: "Pangonilo note:undated, 1.1" },
  ],
});

/**
 * Resistance to earth of a pipe by the Indian code, somewhat higher than by the rod formula. @function
 *
 * @example
 * ```ts
 * import { pipeElectrodeResistance } from "pv-to-grid/earthing";
 * pipeElectrodeResistance({ soilResistivity: "65 Ω·m", rodLength: "300 mm", rodDiameter: "4 mm" }).show(); // "196.7 Ω"
 * ```
 */
export const pipeElectrodeResistance = /* @__PURE__ */ formula({
  id: "earthing/pipe-electrode-resistance",
  about: "resistance to earth of a pipe by the Indian code, somewhat higher than by the rod formula",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    rodLength: { unit: "m", symbol: "L", about: "buried length of the rod", above: 0, usual: [0.5, 50] },
    rodDiameter: { unit: "m", symbol: "d", about: "diameter of the rod", above: 0, usual: [0.005, 0.5] },
  },
  constants: {
    pipeFour: {
      value: "4", unit: "1", symbol: "4", about: "number of the pipe formula",
      source: [{ in: "IS 3043:1987", clause: "clause 9.2.2", grade: "copied", seen: "IS 3043 pipe sheet:undated, sheet 1" }],
    },
  },
  requires: [{ that: "rodLength > rodDiameter", because: "the formula holds for pipes much longer than thick" }],
  gives: { unit: "Ω", symbol: "R_1" },
  expression: "soilResistivity / (2 * pi * rodLength) * log(pipeFour * rodLength / rodDiameter)",
  source: [{ in: "IS 3043:1987", clause: "clause 9.2.2", grade: "copied", seen: "IS 3043 pipe sheet:undated, sheet 1" }],
  unproven: { because: "no publication found", sought: "IS 3043 pipe worked in numbers; only uploads were found" },
});

/**
 * Resistivity of the soil from the resistance of a vertical rod. @function
 *
 * @example
 * ```ts
 * import { soilResistivityFromRod } from "pv-to-grid/earthing";
 * soilResistivityFromRod({ rodResistance: "6.6 Ω", rodLength: "10 ft", rodDiameter: "0.625 in" }).show(); // "19.95 Ω·m"
 * ```
 */
export const soilResistivityFromRod = /* @__PURE__ */ formula({
  id: "earthing/soil-resistivity-from-rod",
  about: "resistivity of the soil from the resistance of a vertical rod",
  takes: {
    rodResistance: { unit: "Ω", symbol: "R_1", about: "resistance of one rod to earth", above: 0, usual: [0.1, 5000] },
    rodLength: { unit: "m", symbol: "L", about: "buried length of the rod", above: 0, usual: [0.5, 50] },
    rodDiameter: { unit: "m", symbol: "d", about: "diameter of the rod", above: 0, usual: [0.005, 0.5] },
  },
  constants: {
    dwightEight: {
      value: "8", unit: "1", symbol: "8", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
  },
  requires: [{ that: "rodLength > rodDiameter", because: "the formula holds for rods much longer than thick" }],
  gives: { unit: "Ω·m", symbol: "ρ" },
  expression: "2 * pi * rodLength * rodResistance / (log(dwightEight * rodLength / rodDiameter) - 1)",
  source: [
    { in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "copied", seen: "Pangonilo note:undated, 1.1" },
  ],
  unproven: { because: "no publication found", sought: "soil resistivity from a rod as a number; the one example found is read from a nomograph" },
});
