import { formula } from "../../formula/index.js";

/**
 * Factor for the depth of a ground grid. @function
 *
 * @example
 * ```ts
 * import { gridDepthFactor } from "pv-to-grid/earthing";
 * gridDepthFactor({ burialDepth: "0.5 m" }).show({ digits: 5 }); // "1.2247"
 * ```
 */
export const gridDepthFactor = /* @__PURE__ */ formula({
  id: "earthing/grid-depth-factor",
  about: "factor for the depth of a ground grid",
  takes: {
    burialDepth: { unit: "m", symbol: "h", about: "depth at which it is buried", above: 0, usual: [0.1, 10] },
  },
  constants: {
    referenceDepth: {
      value: "1", unit: "m", symbol: "h_0", about: "reference depth of the grid",
      source: [{ in: "Sheldrake:2003", clause: "appendix H, p. 593", grade: "original" }],
    },
  },
  gives: { unit: "1", symbol: "K_h" },
  expression: "sqrt(1 + burialDepth / referenceDepth)",
  source: [{ in: "IEEE 80:2000", clause: "16.5.1, equation 83", grade: "reproduced", seen: "Sheldrake:2003, appendix H, p. 593" }],
  unproven: { because: "no publication found", sought: "IEEE 80 depth factor with its depth printed; the one example found prints the factor only" },
});

/**
 * Factor of the mesh voltage of a ground grid. @function
 *
 * @example
 * ```ts
 * import { meshFactor } from "pv-to-grid/earthing";
 * meshFactor({ meshSpacing: "2 m", burialDepth: "0.5 m", conductorDiameter: "10 mm", parallelConductors: "6", irregularityWeight: "1", depthFactor: "1.2247" }).show(); // "0.5325"
 * ```
 */
export const meshFactor = /* @__PURE__ */ formula({
  id: "earthing/mesh-factor",
  about: "factor of the mesh voltage of a ground grid",
  takes: {
    meshSpacing: { unit: "m", symbol: "D", about: "distance between parallel conductors of the grid", above: 0, usual: [0.5, 50] },
    burialDepth: { unit: "m", symbol: "h", about: "depth at which it is buried", above: 0, usual: [0.1, 10] },
    conductorDiameter: { unit: "m", symbol: "d", about: "diameter of the conductor", above: 0, usual: [0.001, 0.1] },
    parallelConductors: { unit: "1", symbol: "n", about: "number of parallel conductors of the grid", from: 2, to: 200 },
    irregularityWeight: { unit: "1", symbol: "K_ii", about: "weight of conductors inside the corner mesh", above: 0, to: 1 },
    depthFactor: { unit: "1", symbol: "K_h", about: "factor for the depth of the grid", from: 1, to: 5 },
  },
  constants: {
    meshEight: {
      value: "8", unit: "1", symbol: "8", about: "number of the mesh formula",
      source: [{ in: "Sheldrake:2003", clause: "appendix H, p. 593", grade: "original" }],
    },
    meshSixteen: {
      value: "16", unit: "1", symbol: "16", about: "number of the mesh formula",
      source: [{ in: "Sheldrake:2003", clause: "appendix H, p. 593", grade: "original" }],
    },
    meshFour: {
      value: "4", unit: "1", symbol: "4", about: "number of the mesh formula",
      source: [{ in: "Sheldrake:2003", clause: "appendix H, p. 593", grade: "original" }],
    },
  },
  gives: { unit: "1", symbol: "K_m" },
  expression: "(log(meshSpacing ^ 2 / (meshSixteen * burialDepth * conductorDiameter) + (meshSpacing + 2 * burialDepth) ^ 2 / (meshEight * meshSpacing * conductorDiameter) - burialDepth / (meshFour * conductorDiameter)) + irregularityWeight / depthFactor * log(meshEight / (pi * (2 * parallelConductors - 1)))) / (2 * pi)",
  source: [{ in: "IEEE 80:2000", clause: "16.5.1, equation 81", grade: "reproduced", seen: "Sheldrake:2003, appendix H, p. 593" }],
  unproven: { because: "no publication found", sought: "IEEE 80 mesh factor with all inputs printed; the one example found prints auxiliaries only" },
});

/**
 * Factor for the irregularity of a ground grid, edition of 1986. @function
 *
 * @example
 * ```ts
 * import { gridIrregularityOf1986 } from "pv-to-grid/earthing";
 * gridIrregularityOf1986({ parallelConductors: "6" }).text; // "1.688"
 * ```
 */
export const gridIrregularityOf1986 = /* @__PURE__ */ formula({
  id: "earthing/grid-irregularity-of1986",
  about: "factor for the irregularity of a ground grid, edition of 1986",
  takes: {
    parallelConductors: { unit: "1", symbol: "n", about: "number of parallel conductors of the grid", from: 2, to: 200 },
  },
  constants: {
    irregularityBase1986: {
      value: "0.656", unit: "1", symbol: "0.656", about: "number of the edition of 1986",
      source: [{ in: "Sheldrake:2003", clause: "appendix H, p. 593", grade: "original" }],
    },
    irregularityStep1986: {
      value: "0.172", unit: "1", symbol: "0.172", about: "number of the edition of 1986",
      source: [{ in: "Sheldrake:2003", clause: "appendix H, p. 593", grade: "original" }],
    },
  },
  gives: { unit: "1", symbol: "K_i" },
  expression: "irregularityBase1986 + irregularityStep1986 * parallelConductors",
  source: [{ in: "Sheldrake:2003", clause: "appendix H, p. 593", grade: "original" }],
});

/**
 * Factor for the irregularity of a ground grid, edition of 2000. @function
 *
 * @example
 * ```ts
 * import { gridIrregularityOf2000 } from "pv-to-grid/earthing";
 * gridIrregularityOf2000({ parallelConductors: "6" }).text; // "1.532"
 * ```
 */
export const gridIrregularityOf2000 = /* @__PURE__ */ formula({
  id: "earthing/grid-irregularity-of2000",
  about: "factor for the irregularity of a ground grid, edition of 2000",
  takes: {
    parallelConductors: { unit: "1", symbol: "n", about: "number of parallel conductors of the grid", from: 2, to: 200 },
  },
  constants: {
    irregularityBase2000: {
      value: "0.644", unit: "1", symbol: "0.644", about: "number of the edition of 2000",
      source: [{ in: "IEEE 80:2000", clause: "16.5.1, equation 89", grade: "memory" }],
    },
    irregularityStep2000: {
      value: "0.148", unit: "1", symbol: "0.148", about: "number of the edition of 2000",
      source: [{ in: "IEEE 80:2000", clause: "16.5.1, equation 89", grade: "memory" }],
    },
  },
  gives: { unit: "1", symbol: "K_i" },
  expression: "irregularityBase2000 + irregularityStep2000 * parallelConductors",
  source: [{ in: "IEEE 80:2000", clause: "16.5.1, equation 89", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEEE 80-2000 annex B worked grid with K_i" },
});
