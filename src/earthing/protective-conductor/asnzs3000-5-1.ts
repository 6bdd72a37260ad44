import { condition, table } from "../../formula/index.js";

/**
 * Smallest earthing conductor of copper by the active conductor. @function
 *
 * @example
 * ```ts
 * import { asnzs3000_2018_5_1 } from "pv-to-grid/earthing";
 * asnzs3000_2018_5_1({ lineSection: "16 mm²", lineMaterial: "copper" }).text; // "6"
 * ```
 */
export const asnzs3000_2018_5_1 = /* @__PURE__ */ table({
  id: "earthing/asnzs-3000-2018-5-1",
  about: "smallest earthing conductor of copper by the active conductor",
  rows: { name: "lineSection", unit: "mm²", symbol: "S" },
  rowRule: "exact",
  columns: { lineMaterial: ["copper", "aluminium"] },
  gives: { unit: "mm²", symbol: "S_E" },
  source: [{ in: "AS/NZS 3000:2018", clause: "table 5.1", grade: "copied", seen: "Hastings table 5.1:undated" }],
  note: "much smaller than by IEC; the fault loop must still be proved. 1 and 1.5 mm² have special conditions",
  cells: `
    1    1    –
    1.5  1.5  –
    2.5  2.5  –
    4    2.5  –
    6    2.5  2.5
    10   4    2.5
    16   6    4
    25   6    6
    35   10   6
    50   16   10
    70   25   10
    95   25   16
    120  35   25
    150  50   25
    185  70   35
    240  95   50
    300  120  70
    400  120  95
    500  120  95
    630  120  120
  `,
});

/**
 * Is the earthing conductor as large as the active conductor asks for? @function
 *
 * @example
 * ```ts
 * import { earthingConductorFollowsActive } from "pv-to-grid/earthing";
 * earthingConductorFollowsActive({ value: "6 mm²", limit: "6 mm²" }).verdict; // "met"
 * ```
 */
export const earthingConductorFollowsActive = /* @__PURE__ */ condition({
  id: "earthing/earthing-conductor-follows-active",
  asks: "Is the earthing conductor as large as the active conductor asks for?",
  force: "requirement",
  value: { unit: "mm²", symbol: "S_E", about: "earthing conductor" },
  relation: "≥",
  limit: { unit: "mm²", symbol: "S_min", about: "section by table 5.1" },
  source: [{ in: "AS/NZS 3000:2018", clause: "5.3.3.1.2, table 5.1", grade: "copied", seen: "Hastings table 5.1:undated" }],
  worse: { "routes[].cable.size": "either", "routes[].cable.protectiveConductor": "down" },
});
