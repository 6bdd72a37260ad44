import { condition, formula, table } from "../../formula/index.js";

/**
 * Smallest main bonding conductor of copper where the supply neutral is not also the protective conductor. @function
 *
 * @example
 * ```ts
 * import { mainBondingSection } from "pv-to-grid/earthing";
 * mainBondingSection({ earthingSection: "35 mm²" }).text; // "17.5"
 * ```
 */
export const mainBondingSection = /* @__PURE__ */ formula({
  id: "earthing/main-bonding-section",
  about: "smallest main bonding conductor of copper where the supply neutral is not also the protective conductor",
  takes: {
    earthingSection: { unit: "mm²", symbol: "S_E", about: "cross-section of the earthing conductor", above: 0, usual: [1, 500] },
  },
  constants: {
    leastBonding: {
      value: "6", unit: "mm²", symbol: "6 mm²", about: "smallest main bonding conductor of copper",
      source: [
        { in: "BS 7671:2008", clause: "544.1.1", grade: "reproduced", seen: "The-Regs blog:undated" },
        { in: "IEC 60364-5-54:2011", clause: "544.1.1", grade: "memory" },
      ],
    },
    mostBonding: {
      value: "25", unit: "mm²", symbol: "25 mm²", about: "main bonding conductor of copper that is always enough",
      source: [
        { in: "BS 7671:2008", clause: "544.1.1", grade: "reproduced", seen: "The-Regs blog:undated" },
        { in: "IEC 60364-5-54:2011", clause: "544.1.1", grade: "memory" },
      ],
    },
  },
  gives: { unit: "mm²", symbol: "S_b" },
  expression: "max(leastBonding, min(mostBonding, earthingSection / 2))",
  source: [
    { in: "BS 7671:2008", clause: "544.1.1", grade: "reproduced", seen: "The-Regs blog:undated" },
    { in: "IEC 60364-5-54:2011", clause: "544.1.1", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "main bonding before rounding to a size; guides print ready sizes" },
  note: "the next larger standard size is taken",
});

/**
 * Smallest main bonding conductor of copper by the neutral of a supply whose neutral is also the protective conductor. @function
 *
 * @example
 * ```ts
 * import { bs7671_2018_54_8 } from "pv-to-grid/earthing";
 * bs7671_2018_54_8({ neutralSection: "70 mm²" }).text; // "25"
 * ```
 */
export const bs7671_2018_54_8 = /* @__PURE__ */ table({
  id: "earthing/bs-7671-2018-54-8",
  about: "smallest main bonding conductor of copper by the neutral of a supply whose neutral is also the protective conductor",
  rows: { name: "neutralSection", unit: "mm²", symbol: "S_N", above: 0, to: 150 },
  rowRule: "next above",
  gives: { unit: "mm²", symbol: "S_b" },
  source: [{ in: "BS 7671:2018", clause: "table 54.8", grade: "reproduced", seen: "Regulations guide 17th:undated, table E 4.6" }],
  note: "above 150 mm² the table prints 50 mm²; the distributor may ask for more",
  cells: `
    35   10
    50   16
    95   25
    150  35
  `,
});

/**
 * Smallest main bonding conductor of copper above the last row of the table by the neutral. @function
 *
 * @example
 * ```ts
 * import { bs7671_2018_54_8_above } from "pv-to-grid/earthing";
 * bs7671_2018_54_8_above({ neutral: "above 150 mm²" }).text; // "50"
 * ```
 */
export const bs7671_2018_54_8_above = /* @__PURE__ */ table({
  id: "earthing/bs-7671-2018-54-8-above",
  about: "smallest main bonding conductor of copper above the last row of the table by the neutral",
  rows: { name: "neutral", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "mm²", symbol: "S_b" },
  source: [
    { in: "BS 7671:2018", clause: "table 54.8, last row", grade: "reproduced", seen: "Regulations guide 17th:undated, table E 4.6" },
  ],
  cells: `
    above 150 mm²  50
  `,
});

/**
 * Does the table tabulate the neutral of the supply? @function
 *
 * @example
 * ```ts
 * import { neutralWithinTable } from "pv-to-grid/earthing";
 * neutralWithinTable({ value: "185 mm²", limit: "150 mm²" }).verdict; // "not met"
 * ```
 */
export const neutralWithinTable = /* @__PURE__ */ condition({
  id: "earthing/neutral-within-table",
  asks: "Does the table tabulate the neutral of the supply?",
  force: "requirement",
  value: { unit: "mm²", symbol: "S_N", about: "neutral of the supply" },
  relation: "≤",
  limit: { unit: "mm²", symbol: "S_N,max", about: "largest neutral with a row of its own" },
  source: [{ in: "BS 7671:2018", clause: "table 54.8", grade: "reproduced", seen: "Regulations guide 17th:undated, table E 4.6" }],
});

/**
 * Is the main bonding conductor large enough? @function
 *
 * @example
 * ```ts
 * import { mainBondingLargeEnough } from "pv-to-grid/earthing";
 * mainBondingLargeEnough({ value: "10 mm²", limit: "8 mm²" }).verdict; // "met"
 * ```
 */
export const mainBondingLargeEnough = /* @__PURE__ */ condition({
  id: "earthing/main-bonding-large-enough",
  asks: "Is the main bonding conductor large enough?",
  force: "requirement",
  value: { unit: "mm²", symbol: "S_b", about: "main bonding conductor" },
  relation: "≥",
  limit: { unit: "mm²", symbol: "S_min", about: "smallest main bonding conductor" },
  source: [
    { in: "BS 7671:2008", clause: "544.1.1", grade: "reproduced", seen: "The-Regs blog:undated" },
    { in: "IEC 60364-5-54:2011", clause: "544.1.1", grade: "memory" },
  ],
  worse: { "electrode.mainBonding": "down", "electrode.earthingConductor": "up" },
});
