import { formula } from "../../formula/index.js";

/**
 * Resistance of a round plate buried flat. @function
 *
 * @example
 * ```ts
 * import { horizontalPlateResistance } from "pv-to-grid/earthing";
 * horizontalPlateResistance({ soilResistivity: "100 Ω·m", plateRadius: "0.5 m", burialDepth: "1.5 m" }).show(); // "27.61 Ω"
 * ```
 */
export const horizontalPlateResistance = /* @__PURE__ */ formula({
  id: "earthing/horizontal-plate-resistance",
  about: "resistance of a round plate buried flat",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    plateRadius: { unit: "m", symbol: "r", about: "radius of the plate, or of a disc of the same area", above: 0, usual: [0.1, 5] },
    burialDepth: { unit: "m", symbol: "h", about: "depth at which it is buried", above: 0, usual: [0.1, 10] },
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
    dwightSeven: {
      value: "7", unit: "1", symbol: "7", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
    dwightTwelve: {
      value: "12", unit: "1", symbol: "12", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
    dwightThirtyThree: {
      value: "33", unit: "1", symbol: "33", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
    dwightForty: {
      value: "40", unit: "1", symbol: "40", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
  },
  requires: [{ that: "2 * burialDepth > plateRadius", because: "the series holds for plates deeper than half their radius" }],
  gives: { unit: "Ω", symbol: "R" },
  expression: "soilResistivity / (dwightEight * plateRadius) + soilResistivity / (dwightFour * pi * (2 * burialDepth)) * (1 - dwightSeven * plateRadius ^ 2 / (dwightTwelve * (2 * burialDepth) ^ 2) + dwightThirtyThree * plateRadius ^ (2 + 2) / (dwightForty * (2 * burialDepth) ^ (2 + 2)))",
  source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEEE 142 formula of a horizontal plate worked in numbers" },
});

/**
 * Resistance of a round plate buried upright. @function
 *
 * @example
 * ```ts
 * import { verticalPlateResistance } from "pv-to-grid/earthing";
 * verticalPlateResistance({ soilResistivity: "100 Ω·m", plateRadius: "0.5 m", burialDepth: "1.5 m" }).show(); // "27.67 Ω"
 * ```
 */
export const verticalPlateResistance = /* @__PURE__ */ formula({
  id: "earthing/vertical-plate-resistance",
  about: "resistance of a round plate buried upright",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    plateRadius: { unit: "m", symbol: "r", about: "radius of the plate, or of a disc of the same area", above: 0, usual: [0.1, 5] },
    burialDepth: { unit: "m", symbol: "h", about: "depth at which it is buried", above: 0, usual: [0.1, 10] },
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
    dwightSeven: {
      value: "7", unit: "1", symbol: "7", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
    dwightTwentyFour: {
      value: "24", unit: "1", symbol: "24", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
    dwightNinetyNine: {
      value: "99", unit: "1", symbol: "99", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
    dwightThreeHundredTwenty: {
      value: "320", unit: "1", symbol: "320", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
  },
  requires: [{ that: "2 * burialDepth > plateRadius", because: "the series holds for plates deeper than half their radius" }],
  gives: { unit: "Ω", symbol: "R" },
  expression: "soilResistivity / (dwightEight * plateRadius) + soilResistivity / (dwightFour * pi * (2 * burialDepth)) * (1 + dwightSeven * plateRadius ^ 2 / (dwightTwentyFour * (2 * burialDepth) ^ 2) + dwightNinetyNine * plateRadius ^ (2 + 2) / (dwightThreeHundredTwenty * (2 * burialDepth) ^ (2 + 2)))",
  source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEEE 142 formula of a vertical plate worked in numbers" },
});

/**
 * Radius of the disc that has the area of a plate. @function
 *
 * @example
 * ```ts
 * import { plateRadiusOfArea } from "pv-to-grid/earthing";
 * plateRadiusOfArea({ plateArea: "1 m²" }).show(); // "0.5642 m"
 * ```
 */
export const plateRadiusOfArea = /* @__PURE__ */ formula({
  id: "earthing/plate-radius-of-area",
  about: "radius of the disc that has the area of a plate",
  takes: {
    plateArea: { unit: "m²", symbol: "A", about: "area of one face of the plate", above: 0, usual: [0.05, 20] },
  },
  gives: { unit: "m", symbol: "r" },
  expression: "sqrt(plateArea / pi)",
  source: [{ in: "BS 7430:2015", clause: "9.5.2", grade: "memory" }],
  unproven: { because: "definition" },
});

/**
 * Resistance of a buried plate by the British code. @function
 *
 * @example
 * ```ts
 * import { plateResistance } from "pv-to-grid/earthing";
 * plateResistance({ soilResistivity: "100 Ω·m", plateRadius: "0.5 m", burialDepth: "1.5 m" }).show(); // "27.94 Ω"
 * ```
 */
export const plateResistance = /* @__PURE__ */ formula({
  id: "earthing/plate-resistance",
  about: "resistance of a buried plate by the British code",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    plateRadius: { unit: "m", symbol: "r", about: "radius of the plate, or of a disc of the same area", above: 0, usual: [0.1, 5] },
    burialDepth: { unit: "m", symbol: "h", about: "depth at which it is buried", above: 0, usual: [0.1, 10] },
  },
  constants: {
    plateEight: {
      value: "8", unit: "1", symbol: "8", about: "number of the plate formula",
      source: [{ in: "BS 7430:2015", clause: "9.5.2", grade: "memory" }],
    },
    plateTwoAndHalf: {
      value: "2.5", unit: "1", symbol: "2.5", about: "number of the plate formula",
      source: [{ in: "BS 7430:2015", clause: "9.5.2", grade: "memory" }],
    },
  },
  gives: { unit: "Ω", symbol: "R" },
  expression: "soilResistivity / (plateEight * plateRadius) * (1 + plateRadius / (plateTwoAndHalf * burialDepth + plateRadius))",
  source: [{ in: "BS 7430:2015", clause: "9.5.2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "BS 7430 plate electrode worked in numbers" },
});
