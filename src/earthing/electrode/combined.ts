import { formula } from "../../formula/index.js";

/**
 * Resistance of a grid and a bed of rods that influence each other. @function
 *
 * @example
 * ```ts
 * import { gridAndRodsResistance } from "pv-to-grid/earthing";
 * gridAndRodsResistance({ gridResistance: "227.86 Ω", rodBedResistance: "17.541 Ω", mutualResistance: "30.82 Ω" }).show(); // "16.58 Ω"
 * ```
 */
export const gridAndRodsResistance = /* @__PURE__ */ formula({
  id: "earthing/grid-and-rods-resistance",
  about: "resistance of a grid and a bed of rods that influence each other",
  takes: {
    gridResistance: { unit: "Ω", symbol: "R_g", about: "resistance of the grid alone", above: 0, usual: [0.01, 5000] },
    rodBedResistance: { unit: "Ω", symbol: "R_r", about: "resistance of the bed of rods alone", above: 0, usual: [0.01, 5000] },
    mutualResistance: { unit: "Ω", symbol: "R_m", about: "mutual resistance of grid and rods", from: 0, usual: [0, 5000] },
  },
  requires: [{ that: "mutualResistance ^ 2 < gridResistance * rodBedResistance", because: "the mutual resistance must be smaller than both" }],
  gives: { unit: "Ω", symbol: "R" },
  expression: "(gridResistance * rodBedResistance - mutualResistance ^ 2) / (gridResistance + rodBedResistance - 2 * mutualResistance)",
  source: [
    { in: "IEEE 80:2000", clause: "14.3", grade: "memory" },
    { in: "Sheldrake:2003", clause: "appendix H, p. 592", grade: "original" },
  ],
});

/**
 * Buried length of a grid in which rods at its edge count for more. @function
 *
 * @example
 * ```ts
 * import { effectiveBuriedLength } from "pv-to-grid/earthing";
 * effectiveBuriedLength({ gridConductorLength: "120 m", gridRodLength: "200 m" }).text; // "350"
 * ```
 */
export const effectiveBuriedLength = /* @__PURE__ */ formula({
  id: "earthing/effective-buried-length",
  about: "buried length of a grid in which rods at its edge count for more",
  takes: {
    gridConductorLength: { unit: "m", symbol: "L_g", about: "length of the buried conductors of the grid", above: 0, usual: [1, 20000] },
    gridRodLength: { unit: "m", symbol: "L_r", about: "length of all rods of the grid together", from: 0, usual: [0, 5000] },
  },
  constants: {
    edgeRodWeight: {
      value: "1.15", unit: "1", symbol: "1.15", about: "weight of rods at the edge",
      source: [{ in: "Sheldrake:2003", clause: "appendix H, p. 591", grade: "original" }],
    },
  },
  gives: { unit: "m", symbol: "L_c" },
  expression: "gridConductorLength + edgeRodWeight * gridRodLength",
  source: [{ in: "Sheldrake:2003", clause: "appendix H, p. 591", grade: "original" }],
});
