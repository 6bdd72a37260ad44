import { formula } from "../../formula/index.js";

/**
 * Conventional tripping current of a miniature circuit-breaker. @function
 *
 * @example
 * ```ts
 * import { breakerConventionalTrippingCurrent } from "pv-to-grid/device";
 * breakerConventionalTrippingCurrent({ ratedCurrent: "20 A" }).text; // "29"
 * ```
 */
export const breakerConventionalTrippingCurrent = /* @__PURE__ */ formula({
  id: "device/breaker-conventional-tripping-current",
  about: "conventional tripping current of a miniature circuit-breaker",
  takes: {
    ratedCurrent: { unit: "A", symbol: "I_n", about: "rated current of the breaker", above: 0, to: 125, usual: [0.5, 125] },
  },
  constants: {
    breakerTrippingShare: {
      value: "1.45",
      unit: "1",
      symbol: "k_2",
      about: "conventional tripping current over rated current",
      source: [
        { in: "IEC 60898-1:2015", clause: "table 7, test b", grade: "reproduced", seen: "Yuanky breaker page:undated, test procedure B" },
      ],
    },
  },
  gives: { unit: "A", symbol: "I_2" },
  expression: "breakerTrippingShare * ratedCurrent",
  source: [
    { in: "IEC 60898-1:2015", clause: "table 7, test b", grade: "reproduced", seen: "Yuanky breaker page:undated, test procedure B" },
  ],
  unproven: { because: "no publication found", sought: "conventional tripping current of a named breaker printed in amperes" },
});

/**
 * Conventional tripping current of a moulded-case breaker. @function
 *
 * @example
 * ```ts
 * import { mouldedCaseConventionalTrippingCurrent } from "pv-to-grid/device";
 * mouldedCaseConventionalTrippingCurrent({ ratedCurrent: "160 A" }).text; // "208"
 * ```
 */
export const mouldedCaseConventionalTrippingCurrent = /* @__PURE__ */ formula({
  id: "device/moulded-case-conventional-tripping-current",
  about: "conventional tripping current of a moulded-case breaker",
  takes: {
    ratedCurrent: { unit: "A", symbol: "I_n", about: "rated or set current of the breaker", above: 0, usual: [1, 6300] },
  },
  constants: {
    mouldedCaseTrippingShare: {
      value: "1.3",
      unit: "1",
      symbol: "k_2",
      about: "conventional tripping current over set current",
      source: [{ in: "IEC 60947-2:2016", clause: "table 6", grade: "memory" }],
    },
  },
  gives: { unit: "A", symbol: "I_2" },
  expression: "mouldedCaseTrippingShare * ratedCurrent",
  source: [{ in: "IEC 60947-2:2016", clause: "table 6", grade: "memory" }],
  unproven: { because: "no publication found", sought: "conventional tripping current of a moulded-case breaker printed in amperes" },
});

/**
 * Conventional fusing current of a gG fuse-link. @function
 *
 * @example
 * ```ts
 * import { fuseConventionalTrippingCurrent } from "pv-to-grid/device";
 * fuseConventionalTrippingCurrent({ ratedCurrent: "35 A" }).text; // "56"
 * ```
 */
export const fuseConventionalTrippingCurrent = /* @__PURE__ */ formula({
  id: "device/fuse-conventional-tripping-current",
  about: "conventional fusing current of a gG fuse-link",
  takes: {
    ratedCurrent: { unit: "A", symbol: "I_n", about: "rated current of the fuse-link", above: 0, to: 1250, usual: [1, 1250] },
  },
  constants: {
    smallestFuse: {
      value: "4",
      unit: "A",
      symbol: "I_n,1",
      about: "largest fuse-link of the first step",
      source: [{ in: "IEC 60269-1:2006", clause: "table 2", grade: "memory" }],
    },
    largerFuse: {
      value: "16",
      unit: "A",
      symbol: "I_n,2",
      about: "smallest fuse-link of the last step",
      source: [{ in: "IEC 60269-1:2006", clause: "table 2", grade: "memory" }],
    },
    smallestFuseShare: {
      value: "2.1",
      unit: "1",
      symbol: "k_2,1",
      about: "fusing current over rated current, up to 4 A",
      source: [{ in: "IEC 60269-1:2006", clause: "table 2", grade: "memory" }],
    },
    smallFuseShare: {
      value: "1.9",
      unit: "1",
      symbol: "k_2,2",
      about: "fusing current over rated current, above 4 A and below 16 A",
      source: [{ in: "IEC 60269-1:2006", clause: "table 2", grade: "memory" }],
    },
    fuseShare: {
      value: "1.6",
      unit: "1",
      symbol: "k_2,3",
      about: "fusing current over rated current, from 16 A",
      source: [{ in: "IEC 60269-1:2006", clause: "table 2", grade: "memory" }],
    },
  },
  gives: { unit: "A", symbol: "I_2" },
  expression:
    "ratedCurrent <= smallestFuse ? smallestFuseShare * ratedCurrent : ratedCurrent < largerFuse ? smallFuseShare * ratedCurrent : fuseShare * ratedCurrent",
  source: [{ in: "IEC 60269-1:2006", clause: "table 2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "conventional fusing current of a gG fuse printed in amperes" },
});

/**
 * Conventional fusing current of a gPV fuse-link. @function
 *
 * @example
 * ```ts
 * import { stringFuseConventionalTrippingCurrent } from "pv-to-grid/device";
 * stringFuseConventionalTrippingCurrent({ ratedCurrent: "20 A" }).text; // "29"
 * ```
 */
export const stringFuseConventionalTrippingCurrent = /* @__PURE__ */ formula({
  id: "device/string-fuse-conventional-tripping-current",
  about: "conventional fusing current of a gPV fuse-link",
  takes: {
    ratedCurrent: { unit: "A", symbol: "I_n", about: "rated current of the fuse-link", above: 0, usual: [0.5, 630] },
  },
  constants: {
    stringFuseShare: {
      value: "1.45",
      unit: "1",
      symbol: "k_2",
      about: "fusing current over rated current",
      source: [{ in: "IEC 60269-6:2010", clause: "5.6.2, table 101", grade: "memory" }],
    },
  },
  gives: { unit: "A", symbol: "I_2" },
  expression: "stringFuseShare * ratedCurrent",
  source: [{ in: "IEC 60269-6:2010", clause: "5.6.2, table 101", grade: "memory" }],
  unproven: { because: "no publication found", sought: "conventional fusing current of a gPV fuse printed in amperes" },
});
