import { formula } from "../../formula/index.js";

/**
 * Resistance of two rods farther apart than they are long. @function
 *
 * @example
 * ```ts
 * import { twoRodsFarResistance } from "pv-to-grid/earthing";
 * twoRodsFarResistance({ soilResistivity: "100 Ω·m", rodLength: "3 m", rodDiameter: "16 mm", rodSpacing: "6 m" }).show(); // "18 Ω"
 * ```
 */
export const twoRodsFarResistance = /* @__PURE__ */ formula({
  id: "earthing/two-rods-far-resistance",
  about: "resistance of two rods farther apart than they are long",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    rodLength: { unit: "m", symbol: "L", about: "buried length of the rod", above: 0, usual: [0.5, 50] },
    rodDiameter: { unit: "m", symbol: "d", about: "diameter of the rod", above: 0, usual: [0.005, 0.5] },
    rodSpacing: { unit: "m", symbol: "s", about: "distance between neighbouring rods", above: 0, usual: [0.5, 100] },
  },
  constants: {
    dwightEight: {
      value: "8", unit: "1", symbol: "8", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
    dwightFive: {
      value: "5", unit: "1", symbol: "5", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
  },
  requires: [{ that: "rodSpacing > rodLength", because: "this series holds for rods farther apart than they are long" }],
  gives: { unit: "Ω", symbol: "R_2" },
  expression: "soilResistivity / (2 * pi * 2 * rodLength) * (log(dwightEight * rodLength / rodDiameter) - 1) + soilResistivity / (2 * pi * 2 * rodSpacing) * (1 - rodLength ^ 2 / (3 * rodSpacing ^ 2) + 2 * rodLength ^ (2 + 2) / (dwightFive * rodSpacing ^ (2 + 2)))",
  source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEEE 142 formula of two ground rods worked in numbers" },
});

/**
 * Resistance of two rods nearer to each other than they are long. @function
 *
 * @example
 * ```ts
 * import { twoRodsNearResistance } from "pv-to-grid/earthing";
 * twoRodsNearResistance({ soilResistivity: "100 Ω·m", rodLength: "3 m", rodDiameter: "16 mm", rodSpacing: "1.5 m" }).show(); // "20.23 Ω"
 * ```
 */
export const twoRodsNearResistance = /* @__PURE__ */ formula({
  id: "earthing/two-rods-near-resistance",
  about: "resistance of two rods nearer to each other than they are long",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    rodLength: { unit: "m", symbol: "L", about: "buried length of the rod", above: 0, usual: [0.5, 50] },
    rodDiameter: { unit: "m", symbol: "d", about: "diameter of the rod", above: 0, usual: [0.005, 0.5] },
    rodSpacing: { unit: "m", symbol: "s", about: "distance between neighbouring rods", above: 0, usual: [0.5, 100] },
  },
  constants: {
    dwightEight: {
      value: "8", unit: "1", symbol: "8", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
    dwightFour: {
      value: "4", unit: "1", symbol: "4", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
    dwightSixteen: {
      value: "16", unit: "1", symbol: "16", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
    dwightFiveHundredTwelve: {
      value: "512", unit: "1", symbol: "512", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
  },
  requires: [{ that: "rodSpacing < rodLength", because: "this series holds for rods nearer to each other than they are long" }, { that: "rodSpacing > rodDiameter", because: "the rods must stand apart" }],
  gives: { unit: "Ω", symbol: "R_2" },
  expression: "soilResistivity / (2 * pi * 2 * rodLength) * (log(dwightEight * rodLength / rodDiameter) + log(dwightFour * rodLength / rodSpacing) - 2 + rodSpacing / (2 * rodLength) - rodSpacing ^ 2 / (dwightSixteen * rodLength ^ 2) + rodSpacing ^ (2 + 2) / (dwightFiveHundredTwelve * rodLength ^ (2 + 2)))",
  source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEEE 142 formula of two ground rods worked in numbers" },
});
