import { condition, table } from "../../formula/index.js";

/**
 * Smallest combined protective and neutral conductor of a fixed installation. @function
 *
 * @example
 * ```ts
 * import { iec60364_5_54_2011_pen_minimum } from "pv-to-grid/earthing";
 * iec60364_5_54_2011_pen_minimum({ material: "copper" }).text; // "10"
 * ```
 */
export const iec60364_5_54_2011_pen_minimum = /* @__PURE__ */ table({
  id: "earthing/iec-60364-5-54-2011-pen-minimum",
  about: "smallest combined protective and neutral conductor of a fixed installation",
  rows: { name: "material", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "mm²", symbol: "S_PEN" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "543.4.1", grade: "memory" }],
  cells: `
    copper     10
    aluminium  16
  `,
});

/**
 * Is the combined protective and neutral conductor large enough? @function
 *
 * @example
 * ```ts
 * import { penLargeEnough } from "pv-to-grid/earthing";
 * penLargeEnough({ value: "6 mm²", limit: "10 mm²" }).verdict; // "not met"
 * ```
 */
export const penLargeEnough = /* @__PURE__ */ condition({
  id: "earthing/pen-large-enough",
  asks: "Is the combined protective and neutral conductor large enough?",
  force: "requirement",
  value: { unit: "mm²", symbol: "S_PEN", about: "combined protective and neutral conductor" },
  relation: "≥",
  limit: { unit: "mm²", symbol: "S_min", about: "smallest combined conductor" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "543.4.1", grade: "memory" }],
  worse: { "routes[].cable.size": "down" },
});

/**
 * Is there no residual current device in the combined conductor? @function
 *
 * @example
 * ```ts
 * import { noResidualDeviceInPen } from "pv-to-grid/earthing";
 * noResidualDeviceInPen({ value: "none", limit: ["none"] }).verdict; // "met"
 * ```
 */
export const noResidualDeviceInPen = /* @__PURE__ */ condition({
  id: "earthing/no-residual-device-in-pen",
  asks: "Is there no residual current device in the combined conductor?",
  force: "requirement",
  value: { named: true, about: "residual current device in a TN-C circuit" },
  relation: "one of",
  limit: { named: true, about: "what a TN-C circuit may have" },
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.4.5", grade: "memory" }],
});
