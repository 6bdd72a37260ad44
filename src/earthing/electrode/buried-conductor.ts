import { formula } from "../../formula/index.js";

/**
 * Resistance of a straight buried wire. @function
 *
 * @example
 * ```ts
 * import { buriedWireResistance } from "pv-to-grid/earthing";
 * buriedWireResistance({ soilResistivity: "100 Ω·m", conductorLength: "20 m", conductorDiameter: "10 mm", burialDepth: "0.6 m" }).show(); // "8.398 Ω"
 * ```
 */
export const buriedWireResistance = /* @__PURE__ */ formula({
  id: "earthing/buried-wire-resistance",
  about: "resistance of a straight buried wire",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    conductorLength: { unit: "m", symbol: "L", about: "whole length of the buried conductor", above: 0, usual: [1, 2000] },
    conductorDiameter: { unit: "m", symbol: "d", about: "diameter of the conductor", above: 0, usual: [0.001, 0.1] },
    burialDepth: { unit: "m", symbol: "h", about: "depth at which it is buried", above: 0, usual: [0.1, 10] },
  },
  constants: {
    dwightFour: {
      value: "4", unit: "1", symbol: "4", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
  },
  requires: [{ that: "conductorLength > 2 * burialDepth", because: "the series holds for a wire longer than twice its depth" }],
  gives: { unit: "Ω", symbol: "R" },
  expression: "soilResistivity / (2 * pi * conductorLength) * (log(dwightFour * conductorLength / conductorDiameter) + log(conductorLength / burialDepth) - 2 + 2 * burialDepth / conductorLength - burialDepth ^ 2 / conductorLength ^ 2 + burialDepth ^ (2 + 2) / (2 * conductorLength ^ (2 + 2)))",
  source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEEE 142 formula of a straight buried wire worked in numbers" },
  note: "written for the whole length and the depth; the source writes half the length and twice the depth",
});

/**
 * Resistance of a straight buried strip. @function
 *
 * @example
 * ```ts
 * import { buriedStripResistance } from "pv-to-grid/earthing";
 * buriedStripResistance({ soilResistivity: "100 Ω·m", conductorLength: "20 m", stripWidth: "30 mm", stripThickness: "3 mm", burialDepth: "0.6 m" }).show(); // "7.993 Ω"
 * ```
 */
export const buriedStripResistance = /* @__PURE__ */ formula({
  id: "earthing/buried-strip-resistance",
  about: "resistance of a straight buried strip",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    conductorLength: { unit: "m", symbol: "L", about: "whole length of the buried conductor", above: 0, usual: [1, 2000] },
    stripWidth: { unit: "m", symbol: "a", about: "width of the strip", above: 0, usual: [0.005, 0.2] },
    stripThickness: { unit: "m", symbol: "b", about: "thickness of the strip", above: 0, usual: [0.0005, 0.02] },
    burialDepth: { unit: "m", symbol: "h", about: "depth at which it is buried", above: 0, usual: [0.1, 10] },
  },
  constants: {
    dwightEight: {
      value: "8", unit: "1", symbol: "8", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
  },
  requires: [{ that: "conductorLength > 2 * burialDepth", because: "the series holds for a strip longer than twice its depth" }, { that: "dwightEight * stripThickness < stripWidth", because: "the formula holds for strips thinner than an eighth of their width" }],
  gives: { unit: "Ω", symbol: "R" },
  expression: "soilResistivity / (2 * pi * conductorLength) * (log(2 * conductorLength / stripWidth) + (stripWidth ^ 2 - pi * stripWidth * stripThickness) / (2 * (stripWidth + stripThickness) ^ 2) + log(conductorLength / burialDepth) - 1 + 2 * burialDepth / conductorLength - burialDepth ^ 2 / conductorLength ^ 2 + burialDepth ^ (2 + 2) / (2 * conductorLength ^ (2 + 2)))",
  source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEEE 142 formula of a buried strip worked in numbers" },
  note: "written for the whole length and the depth; the source writes half the length and twice the depth",
});

/**
 * Resistance of a buried ring of wire. @function
 *
 * @example
 * ```ts
 * import { buriedRingResistance } from "pv-to-grid/earthing";
 * buriedRingResistance({ soilResistivity: "100 Ω·m", ringDiameter: "10 m", conductorDiameter: "10 mm", burialDepth: "0.6 m" }).show(); // "6.329 Ω"
 * ```
 */
export const buriedRingResistance = /* @__PURE__ */ formula({
  id: "earthing/buried-ring-resistance",
  about: "resistance of a buried ring of wire",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    ringDiameter: { unit: "m", symbol: "D", about: "diameter of the ring", above: 0, usual: [0.5, 500] },
    conductorDiameter: { unit: "m", symbol: "d", about: "diameter of the conductor", above: 0, usual: [0.001, 0.1] },
    burialDepth: { unit: "m", symbol: "h", about: "depth at which it is buried", above: 0, usual: [0.1, 10] },
  },
  constants: {
    dwightEight: {
      value: "8", unit: "1", symbol: "8", about: "number of the series",
      source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
    },
  },
  requires: [{ that: "ringDiameter > conductorDiameter", because: "a ring is wider than its wire is thick" }],
  gives: { unit: "Ω", symbol: "R" },
  expression: "soilResistivity / (2 * pi ^ 2 * ringDiameter) * (log(dwightEight * ringDiameter / conductorDiameter) + log(2 * ringDiameter / burialDepth))",
  source: [{ in: "IEEE 142:2007", clause: "table 13 (formulas after Dwight, 1936)", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEEE 142 formula of a ring of wire worked in numbers" },
  note: "written for the depth; the source writes twice the depth",
});
