import { formula } from "../../formula/index.js";

/**
 * Area of parallel conductors taken as one. @function
 *
 * @example
 * ```ts
 * import { equivalentArea } from "pv-to-grid/earthing";
 * equivalentArea({ setArea: "250 kcmil", setCount: "2" }).text; // "500000"
 * ```
 */
export const equivalentArea = /* @__PURE__ */ formula({
  id: "earthing/equivalent-area",
  about: "area of parallel conductors taken as one",
  takes: {
    setArea: { unit: "cmil", symbol: "A_1", about: "area of the conductor of one set", above: 0, usual: [1000, 2000000] },
    setCount: { unit: "1", symbol: "n", about: "number of parallel sets", from: 1, to: 30 },
  },
  gives: { unit: "cmil", symbol: "A" },
  expression: "setArea * setCount",
  source: [
    { in: "NFPA 70:2017", clause: "250.66, 250.102(C)(2)", grade: "copied" },
    { in: "NFPA 70:2023", clause: "250.66, 250.102(C)(2)", grade: "copied" },
  ],
});

/**
 * Area of an equipment grounding conductor beside enlarged conductors. @function
 *
 * @example
 * ```ts
 * import { enlargedGroundingArea } from "pv-to-grid/earthing";
 * enlargedGroundingArea({ tableArea: "10380 cmil", installedArea: "41740 cmil", leastArea: "16510 cmil" }).show({ digits: 6 }); // "26242.4 cmil"
 * ```
 */
export const enlargedGroundingArea = /* @__PURE__ */ formula({
  id: "earthing/enlarged-grounding-area",
  about: "area of an equipment grounding conductor beside enlarged conductors",
  takes: {
    tableArea: { unit: "cmil", symbol: "A_t", about: "area of the conductor by the table", above: 0, usual: [1000, 2000000] },
    installedArea: { unit: "cmil", symbol: "A_i", about: "area of the ungrounded conductors as installed", above: 0, usual: [1000, 20000000] },
    leastArea: { unit: "cmil", symbol: "A_m", about: "area of the smallest ungrounded conductors that carry the current", above: 0, usual: [1000, 20000000] },
  },
  gives: { unit: "cmil", symbol: "A_EGC" },
  expression: "tableArea * installedArea / leastArea",
  source: [
    { in: "NFPA 70:2020", clause: "250.122(B)", grade: "copied" },
    { in: "NFPA 70:2017", clause: "250.122(B)", grade: "copied" },
  ],
  unproven: { because: "no publication found", sought: "250.122(B) worked in circular mils; only forum threads were found" },
  note: "by the areas of chapter 9 table 8, not by unrounded ones",
});

/**
 * Area of a bonding jumper above the last row of its table. @function
 *
 * @example
 * ```ts
 * import { bondingJumperArea } from "pv-to-grid/earthing";
 * bondingJumperArea({ conductorArea: "2000 kcmil" }).text; // "250000"
 * ```
 */
export const bondingJumperArea = /* @__PURE__ */ formula({
  id: "earthing/bonding-jumper-area",
  about: "area of a bonding jumper above the last row of its table",
  takes: {
    conductorArea: { unit: "cmil", symbol: "A", about: "area of the conductor, of all parallel ones together", above: 0, usual: [1000, 20000000] },
  },
  constants: {
    jumperShare: {
      value: "0.125", unit: "1", symbol: "12.5 %", about: "share of the largest ungrounded conductor",
      source: [
        { in: "NFPA 70:2017", clause: "table 250.102(C)(1), note 1", grade: "copied" },
        { in: "NFPA 70:2023", clause: "table 250.102(C)(1), note 1", grade: "copied" },
      ],
    },
  },
  gives: { unit: "cmil", symbol: "A_j" },
  expression: "jumperShare * conductorArea",
  source: [
    { in: "NFPA 70:2017", clause: "table 250.102(C)(1), note 1", grade: "copied" },
    { in: "NFPA 70:2023", clause: "table 250.102(C)(1), note 1", grade: "copied" },
  ],
  unproven: { because: "no publication found", sought: "250.102(C)(1) jumper above 1100 kcmil worked in numbers" },
});
