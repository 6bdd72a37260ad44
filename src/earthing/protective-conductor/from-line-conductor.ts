import { formula } from "../../formula/index.js";

/**
 * Smallest protective conductor of the same material, from the line conductor. @function
 *
 * @example
 * ```ts
 * import { protectiveConductorSection } from "pv-to-grid/earthing";
 * protectiveConductorSection({ lineSection: "25 mm²" }).text; // "16"
 * ```
 */
export const protectiveConductorSection = /* @__PURE__ */ formula({
  id: "earthing/protective-conductor-section",
  about: "smallest protective conductor of the same material, from the line conductor",
  takes: {
    lineSection: { unit: "mm²", symbol: "S", about: "cross-section of the line conductor", above: 0, usual: [0.5, 2000] },
  },
  constants: {
    lowerLineSection: {
      value: "16",
      unit: "mm²",
      symbol: "S_1",
      about: "line conductor up to which both are equal",
      source: [
        { in: "IEC 60364-5-54:2011", clause: "543.1.2, table 54.2", grade: "reproduced", seen: "Mitolo:2009, table 11.4, p. 186" },
      ],
    },
    upperLineSection: {
      value: "35",
      unit: "mm²",
      symbol: "S_2",
      about: "line conductor from which half of it is needed",
      source: [
        { in: "IEC 60364-5-54:2011", clause: "543.1.2, table 54.2", grade: "reproduced", seen: "Mitolo:2009, table 11.4, p. 186" },
      ],
    },
  },
  gives: { unit: "mm²", symbol: "S_PE" },
  expression: "lineSection <= lowerLineSection ? lineSection : lineSection <= upperLineSection ? lowerLineSection : lineSection / 2",
  source: [{ in: "IEC 60364-5-54:2011", clause: "543.1.2, table 54.2", grade: "reproduced", seen: "Mitolo:2009, table 11.4, p. 186" }],
  note: "the next larger standard size is taken; not for a line conductor sized by a smaller short-circuit than the fault to earth",
});

/**
 * Smallest protective conductor of another material than the line conductor, from the section for the same material. @function
 *
 * @example
 * ```ts
 * import { protectiveConductorOfOtherMaterial } from "pv-to-grid/earthing";
 * protectiveConductorOfOtherMaterial({ sameMaterialSection: "16 mm²", lineFactor: "115", protectiveFactor: "52" }).show(); // "35.38 mm²"
 * ```
 */
export const protectiveConductorOfOtherMaterial = /* @__PURE__ */ formula({
  id: "earthing/protective-conductor-of-other-material",
  about: "smallest protective conductor of another material than the line conductor, from the section for the same material",
  takes: {
    sameMaterialSection: { unit: "mm²", symbol: "S_same", about: "section for the same material", above: 0, usual: [0.5, 2000] },
    lineFactor: { unit: "A·√s/mm²", symbol: "k_1", about: "adiabatic factor of the line conductor", above: 0, usual: [20, 250] },
    protectiveFactor: { unit: "A·√s/mm²", symbol: "k_2", about: "adiabatic factor of the protective conductor", above: 0, usual: [20, 250] },
  },
  gives: { unit: "mm²", symbol: "S_PE" },
  expression: "lineFactor / protectiveFactor * sameMaterialSection",
  source: [{ in: "IEC 60364-5-54:2011", clause: "543.1.2, table 54.2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "table 54.2 with k_1/k_2 worked in numbers, protective conductor of steel" },
});
