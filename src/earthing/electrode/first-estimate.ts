import { formula, table } from "../../formula/index.js";

/**
 * First estimate of the resistance of a vertical rod. @function
 *
 * @example
 * ```ts
 * import { rodEstimate } from "pv-to-grid/earthing";
 * rodEstimate({ soilResistivity: "50 Ω·m", rodLength: "2 m" }).text; // "25"
 * ```
 */
export const rodEstimate = /* @__PURE__ */ formula({
  id: "earthing/rod-estimate",
  about: "first estimate of the resistance of a vertical rod",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    rodLength: { unit: "m", symbol: "L", about: "buried length of the rod", above: 0, usual: [0.5, 50] },
  },
  gives: { unit: "Ω", symbol: "R" },
  expression: "soilResistivity / rodLength",
  source: [{ in: "REBT:2002", clause: "ITC-BT-18, 9, table 5", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked electrode of the Spanish low-voltage regulation" },
});

/**
 * First estimate of the resistance of a buried horizontal conductor. @function
 *
 * @example
 * ```ts
 * import { buriedConductorEstimate } from "pv-to-grid/earthing";
 * buriedConductorEstimate({ soilResistivity: "50 Ω·m", conductorLength: "20 m" }).text; // "5"
 * ```
 */
export const buriedConductorEstimate = /* @__PURE__ */ formula({
  id: "earthing/buried-conductor-estimate",
  about: "first estimate of the resistance of a buried horizontal conductor",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    conductorLength: { unit: "m", symbol: "L", about: "whole length of the buried conductor", above: 0, usual: [1, 2000] },
  },
  gives: { unit: "Ω", symbol: "R" },
  expression: "2 * soilResistivity / conductorLength",
  source: [{ in: "REBT:2002", clause: "ITC-BT-18, 9, table 5", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked electrode of the Spanish low-voltage regulation" },
});

/**
 * First estimate of the resistance of a buried plate. @function
 *
 * @example
 * ```ts
 * import { plateEstimate } from "pv-to-grid/earthing";
 * plateEstimate({ soilResistivity: "50 Ω·m", platePerimeter: "4 m" }).text; // "10"
 * ```
 */
export const plateEstimate = /* @__PURE__ */ formula({
  id: "earthing/plate-estimate",
  about: "first estimate of the resistance of a buried plate",
  takes: {
    soilResistivity: { unit: "Ω·m", symbol: "ρ", about: "resistivity of the soil", above: 0, usual: [1, 20000] },
    platePerimeter: { unit: "m", symbol: "P", about: "perimeter of the plate", above: 0, usual: [0.5, 50] },
  },
  constants: {
    plateShare: {
      value: "0.8", unit: "1", symbol: "0.8", about: "number of the plate estimate",
      source: [{ in: "REBT:2002", clause: "ITC-BT-18, 9, table 5", grade: "copied" }],
    },
  },
  gives: { unit: "Ω", symbol: "R" },
  expression: "plateShare * soilResistivity / platePerimeter",
  source: [{ in: "REBT:2002", clause: "ITC-BT-18, 9, table 5", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked electrode of the Spanish low-voltage regulation" },
});

/**
 * Mean soil resistivity for a first estimate. @function
 *
 * @example
 * ```ts
 * import { rebt2002_soil } from "pv-to-grid/earthing";
 * rebt2002_soil({ soil: "fertile or moist, compact" }).text; // "50"
 * ```
 */
export const rebt2002_soil = /* @__PURE__ */ table({
  id: "earthing/rebt2002-soil",
  about: "mean soil resistivity for a first estimate",
  rows: { name: "soil", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "Ω·m", symbol: "ρ" },
  source: [{ in: "REBT:2002", clause: "ITC-BT-18, 9, table 4", grade: "copied" }],
  cells: `
    fertile or moist, compact  50
    poor, not very compact     500
    stony or dry sand          3000
  `,
});
