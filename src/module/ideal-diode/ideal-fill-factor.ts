import { formula } from "../../formula/index.js";

/**
 * Fill factor of a cell without resistances, by the empirical rule of Green.
 *
 * @function
 * @example
 * ```ts
 * import { idealFillFactor } from "pv-to-grid/module";
 * idealFillFactor({ normalisedVoltage: "25.22" }).show(); // "0.8377"
 * ```
 */
export const idealFillFactor = /* @__PURE__ */ formula({
  id: "module/ideal-fill-factor",
  about: "fill factor of a cell without resistances, by the empirical rule of Green",
  takes: {
    normalisedVoltage: { unit: "1", symbol: "v", about: "open-circuit voltage of one cell over its thermal voltage", above: 10, to: 100 },
  },
  constants: {
    greenOffset: { value: "0.72", unit: "1", symbol: "0.72", about: "offset of the empirical rule", source: [{ in: "Green:1982", clause: "fill factor", grade: "reproduced", seen: "PVEducation:undated, fill factor" }] },
  },
  gives: { unit: "1", symbol: "FF_0" },
  expression: "(normalisedVoltage - log(normalisedVoltage + greenOffset)) / (normalisedVoltage + 1)",
  source: [{ in: "Green:1982", clause: "fill factor", grade: "reproduced", seen: "PVEducation:undated, fill factor" }],
  unproven: { because: "no publication found", sought: "worked fill factors with the normalised voltage printed" },
  note: "to about 1e-4 for a normalised voltage above 10",
});
