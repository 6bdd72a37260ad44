import { condition, formula, table } from "../../formula/index.js";

/**
 * Distance that metal parts must keep from a lightning protection system. @function
 *
 * @example
 * ```ts
 * import { separationDistance } from "pv-to-grid/surge";
 * separationDistance({ lightningClassFactor: "0.04", currentShare: "0.66", insulationFactor: "0.5", downConductorLength: "10 m" }).text; // "0.528"
 * ```
 */
export const separationDistance = /* @__PURE__ */ formula({
  id: "surge/separation-distance",
  about: "distance that metal parts must keep from a lightning protection system",
  takes: {
    lightningClassFactor: { unit: "1", symbol: "k_i", about: "factor of the class of the lightning protection system", above: 0, to: 1 },
    currentShare: { unit: "1", symbol: "k_c", about: "share of the lightning current in the conductor", above: 0, to: 1 },
    insulationFactor: { unit: "1", symbol: "k_m", about: "factor of the insulation between both parts", above: 0, to: 1 },
    downConductorLength: { unit: "m", symbol: "l", about: "length along the conductor to the next bonding point", above: 0, usual: [0.5, 200] },
  },
  gives: { unit: "m", symbol: "s" },
  expression: "lightningClassFactor * currentShare / insulationFactor * downConductorLength",
  source: [{ in: "IEC 62305-3:2010", clause: "6.3", grade: "memory" }],
  unproven: { because: "no publication found", sought: "separation distance worked in numbers with class, share and insulation" },
});

/**
 * Factor of the class of a lightning protection system. @function
 *
 * @example
 * ```ts
 * import { iec62305_3_2010_class_factor } from "pv-to-grid/surge";
 * iec62305_3_2010_class_factor({ class: "III" }).text; // "0.04"
 * ```
 */
export const iec62305_3_2010_class_factor = /* @__PURE__ */ table({
  id: "surge/iec-62305-3-2010-class-factor",
  about: "factor of the class of a lightning protection system",
  rows: { name: "class", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "1", symbol: "k_i" },
  source: [{ in: "IEC 62305-3:2010", clause: "table 10", grade: "memory" }],
  cells: `
    I    0.08
    II   0.06
    III  0.04
    IV   0.04
  `,
});

/**
 * Factor of the insulation between a lightning protection system and metal parts. @function
 *
 * @example
 * ```ts
 * import { iec62305_3_2010_insulation_factor } from "pv-to-grid/surge";
 * iec62305_3_2010_insulation_factor({ insulation: "air" }).text; // "1"
 * ```
 */
export const iec62305_3_2010_insulation_factor = /* @__PURE__ */ table({
  id: "surge/iec-62305-3-2010-insulation-factor",
  about: "factor of the insulation between a lightning protection system and metal parts",
  rows: { name: "insulation", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "1", symbol: "k_m" },
  source: [{ in: "IEC 62305-3:2010", clause: "table 11", grade: "memory" }],
  cells: `
    air                    1
    concrete, brick, wood  0.5
  `,
});

/**
 * Do the metal parts of the array keep their distance from the lightning protection system? @function
 *
 * @example
 * ```ts
 * import { separationKept } from "pv-to-grid/surge";
 * separationKept({ value: "0.6 m", limit: "0.5 m" }).verdict; // "met"
 * ```
 */
export const separationKept = /* @__PURE__ */ condition({
  id: "surge/separation-kept",
  asks: "Do the metal parts of the array keep their distance from the lightning protection system?",
  force: "requirement",
  value: { unit: "m", symbol: "d", about: "distance between both" },
  relation: "≥",
  limit: { unit: "m", symbol: "s", about: "separation distance" },
  source: [{ in: "IEC 62305-3:2010", clause: "6.3", grade: "memory" }],
  worse: { "roofs[].lightningDistance": "down" },
});
