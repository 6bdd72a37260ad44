import { table } from "../../formula/index.js";

/**
 * Grounding electrode conductor by the largest ungrounded service conductor, of copper. @function
 *
 * @example
 * ```ts
 * import { nfpa70_2023_250_66_copper } from "pv-to-grid/earthing";
 * nfpa70_2023_250_66_copper({ conductorArea: "500 kcmil", material: "copper" }).name; // "1/0 AWG"
 * ```
 */
export const nfpa70_2023_250_66_copper = /* @__PURE__ */ table({
  id: "earthing/nfpa-70-2023-250-66-copper",
  about: "grounding electrode conductor by the largest ungrounded service conductor, of copper",
  rows: { name: "conductorArea", unit: "cmil", symbol: "A", above: 0, to: 1100000 },
  rowRule: "next above",
  columns: { material: ["copper", "aluminium"] },
  gives: { names: "conductor size", symbol: "GEC" },
  source: [
    { in: "NFPA 70:2017", clause: "table 250.66", grade: "copied" },
    { in: "NFPA 70:2023", clause: "table 250.66", grade: "copied" },
  ],
  cells: `
    66360    8 AWG    6 AWG
    105600   6 AWG    4 AWG
    167800   4 AWG    2 AWG
    350000   2 AWG    1/0 AWG
    600000   1/0 AWG  3/0 AWG
    1100000  2/0 AWG  4/0 AWG
  `,
});

/**
 * Grounding electrode conductor by the largest ungrounded service conductor, of aluminium. @function
 *
 * @example
 * ```ts
 * import { nfpa70_2023_250_66_aluminium } from "pv-to-grid/earthing";
 * nfpa70_2023_250_66_aluminium({ conductorArea: "1000 kcmil", material: "copper" }).name; // "2/0 AWG"
 * ```
 */
export const nfpa70_2023_250_66_aluminium = /* @__PURE__ */ table({
  id: "earthing/nfpa-70-2023-250-66-aluminium",
  about: "grounding electrode conductor by the largest ungrounded service conductor, of aluminium",
  rows: { name: "conductorArea", unit: "cmil", symbol: "A", above: 0, to: 1750000 },
  rowRule: "next above",
  columns: { material: ["copper", "aluminium"] },
  gives: { names: "conductor size", symbol: "GEC" },
  source: [
    { in: "NFPA 70:2017", clause: "table 250.66", grade: "copied" },
    { in: "NFPA 70:2023", clause: "table 250.66", grade: "copied" },
  ],
  cells: `
    105600   8 AWG    6 AWG
    167800   6 AWG    4 AWG
    250000   4 AWG    2 AWG
    500000   2 AWG    1/0 AWG
    900000   1/0 AWG  3/0 AWG
    1750000  2/0 AWG  4/0 AWG
  `,
});

/**
 * Grounding electrode conductor above the last row of the table by area. @function
 *
 * @example
 * ```ts
 * import { nfpa70_2023_250_66_largest } from "pv-to-grid/earthing";
 * nfpa70_2023_250_66_largest({ material: "copper" }).name; // "3/0 AWG"
 * ```
 */
export const nfpa70_2023_250_66_largest = /* @__PURE__ */ table({
  id: "earthing/nfpa-70-2023-250-66-largest",
  about: "grounding electrode conductor above the last row of the table by area",
  rows: { name: "material", names: "in the first column" },
  rowRule: "exact",
  gives: { names: "conductor size", symbol: "GEC" },
  source: [
    { in: "NFPA 70:2017", clause: "table 250.66, last row", grade: "copied" },
    { in: "NFPA 70:2023", clause: "table 250.66, last row", grade: "copied" },
  ],
  cells: `
    copper     3/0 AWG
    aluminium  250 kcmil
  `,
});

/**
 * Grounding electrode conductor that is always enough for an electrode on its own. @function
 *
 * @example
 * ```ts
 * import { nfpa70_2023_250_66_caps } from "pv-to-grid/earthing";
 * nfpa70_2023_250_66_caps({ electrode: "rod, pipe or plate", material: "copper" }).name; // "6 AWG"
 * ```
 */
export const nfpa70_2023_250_66_caps = /* @__PURE__ */ table({
  id: "earthing/nfpa-70-2023-250-66-caps",
  about: "grounding electrode conductor that is always enough for an electrode on its own",
  rows: { name: "electrode", names: "in the first column" },
  rowRule: "exact",
  columns: { material: ["copper", "aluminium"] },
  gives: { names: "conductor size", symbol: "GEC" },
  source: [
    { in: "NFPA 70:2020", clause: "250.66(A), (B)", grade: "copied" },
    { in: "NFPA 70:2017", clause: "250.66(A), (B)", grade: "copied" },
  ],
  note: "for a conductor that goes to that electrode only; a ring asks for the size of the ring",
  cells: `
    rod, pipe or plate  6 AWG  4 AWG
    concrete-encased    4 AWG  –
  `,
});
