import { condition, table } from "../../formula/index.js";

/**
 * Smallest copper conductor that bonds the metalwork of an array. @function
 *
 * @example
 * ```ts
 * import { arrayBondingMinimum } from "pv-to-grid/earthing";
 * arrayBondingMinimum({ situation: "no lightning protection" }).text; // "6"
 * ```
 */
export const arrayBondingMinimum = /* @__PURE__ */ table({
  id: "earthing/array-bonding-minimum",
  about: "smallest copper conductor that bonds the metalwork of an array",
  rows: { name: "situation", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "mm²", symbol: "S_b" },
  source: [
    { in: "DEHN Lightning Protection Guide:2014", clause: "fig. 9.18.1, p. 365", grade: "original" },
    { in: "IEC 60364-7-712:2017", clause: "712.542", grade: "reproduced", seen: "LSP bonding page:undated" },
  ],
  cellGrades: {
    reproduced: ["lightning current can flow", "bonding bar as down conductor"],
  },
  note: "16 mm² until it is known that no lightning current can flow",
  cells: `
    no lightning protection        6
    separation distance kept       6
    lightning current can flow     16
    bonding bar as down conductor  50
  `,
});

/**
 * Is the bonding conductor of the array large enough? @function
 *
 * @example
 * ```ts
 * import { arrayBondingLargeEnough } from "pv-to-grid/earthing";
 * arrayBondingLargeEnough({ value: "6 mm²", limit: "16 mm²" }).verdict; // "not met"
 * ```
 */
export const arrayBondingLargeEnough = /* @__PURE__ */ condition({
  id: "earthing/array-bonding-large-enough",
  asks: "Is the bonding conductor of the array large enough?",
  force: "requirement",
  value: { unit: "mm²", symbol: "S_b", about: "bonding conductor of the array" },
  relation: "≥",
  limit: { unit: "mm²", symbol: "S_min", about: "smallest bonding conductor of the array" },
  source: [{ in: "IEC 60364-7-712:2017", clause: "712.542", grade: "reproduced", seen: "LSP bonding page:undated" }],
  worse: { "roofs[].bondingConductor": "down" },
});
