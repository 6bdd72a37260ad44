import { condition } from "../../formula/index.js";

/**
 * Is the earthing conductor as large as a protective conductor for its supply? @function
 *
 * @example
 * ```ts
 * import { earthingConductorLargeEnough } from "pv-to-grid/earthing";
 * earthingConductorLargeEnough({ value: "16 mm²", limit: "16 mm²" }).verdict; // "met"
 * ```
 */
export const earthingConductorLargeEnough = /* @__PURE__ */ condition({
  id: "earthing/earthing-conductor-large-enough",
  asks: "Is the earthing conductor as large as a protective conductor for its supply?",
  force: "requirement",
  value: { unit: "mm²", symbol: "S_E", about: "earthing conductor" },
  relation: "≥",
  limit: { unit: "mm²", symbol: "S_PE", about: "section by table or by calculation" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "542.3.1 with 543.1", grade: "memory" }],
  worse: { "electrode.earthingConductor": "down" },
});

/**
 * Is the earthing conductor large enough to last, with a lightning protection system where there is one? @function
 *
 * @example
 * ```ts
 * import { earthingConductorLasts } from "pv-to-grid/earthing";
 * earthingConductorLasts({ value: "6 mm²", limit: "16 mm²" }).verdict; // "not met"
 * ```
 */
export const earthingConductorLasts = /* @__PURE__ */ condition({
  id: "earthing/earthing-conductor-lasts",
  asks: "Is the earthing conductor large enough to last, with a lightning protection system where there is one?",
  force: "requirement",
  value: { unit: "mm²", symbol: "S_E", about: "earthing conductor" },
  relation: "≥",
  limit: { unit: "mm²", symbol: "S_min", about: "smallest earthing conductor" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "542.3.1", grade: "memory" }],
  worse: { "electrode.earthingConductor": "down", "lightningProtection": "either" },
});

/**
 * Is the buried earthing conductor large enough for corrosion and damage? @function
 *
 * @example
 * ```ts
 * import { buriedEarthingConductorLasts } from "pv-to-grid/earthing";
 * buriedEarthingConductorLasts({ value: "16 mm²", limit: "25 mm²" }).verdict; // "not met"
 * ```
 */
export const buriedEarthingConductorLasts = /* @__PURE__ */ condition({
  id: "earthing/buried-earthing-conductor-lasts",
  asks: "Is the buried earthing conductor large enough for corrosion and damage?",
  force: "requirement",
  value: { unit: "mm²", symbol: "S_E", about: "earthing conductor" },
  relation: "≥",
  limit: { unit: "mm²", symbol: "S_min", about: "smallest buried conductor" },
  source: [
    { in: "IEC 60364-5-54:2002", clause: "table 54.2 (then 54.1)", grade: "reproduced", seen: "Eland bonding page:undated, tables" },
  ],
  worse: { "electrode.earthingConductor": "down" },
});
