import { formula } from "../../formula/index.js";

/**
 * Voltage of a string that lacks one module, as a share of what is expected of it, read too high by an uncertainty. @function
 *
 * @example
 * ```ts
 * import { shareWithoutOne } from "pv-to-grid/commissioning";
 * shareWithoutOne({ modules: 20, uncertainty: 0 }).text; // "0.95"
 * ```
 */
export const shareWithoutOne = /* @__PURE__ */ formula({
  id: "commissioning/share-without-one",
  about: "voltage of a string that lacks one module, as a share of what is expected of it, read too high by an uncertainty",
  takes: {
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 1, usual: [1, 200] },
    uncertainty: { unit: "1", symbol: "u", about: "share by which a reading may be wrong", from: 0, below: 1, usual: [0, 0.2] },
  },
  gives: { unit: "1", symbol: "q" },
  expression: "(modules - 1) / modules * (1 + uncertainty)",
  source: [{ in: "common practice", clause: "a string that lacks a module", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Lowest share of what is expected that a tolerance admits. @function
 *
 * @example
 * ```ts
 * import { lowestShare } from "pv-to-grid/commissioning";
 * lowestShare({ bandTolerance: "5 %" }).text; // "0.95"
 * ```
 */
export const lowestShare = /* @__PURE__ */ formula({
  id: "commissioning/lowest-share",
  about: "lowest share of what is expected that a tolerance admits",
  takes: {
    bandTolerance: { unit: "1", symbol: "τ", about: "share by which a reading may differ from what is expected", above: 0, below: 1, usual: [0.001, 0.3] },
  },
  gives: { unit: "1", symbol: "q_min" },
  expression: "1 - bandTolerance",
  source: [{ in: "common practice", clause: "band about an expected value", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Share by which sound strings lie above one that lacks a module and is read too high by an uncertainty. @function
 *
 * @example
 * ```ts
 * import { spreadWithoutOne } from "pv-to-grid/commissioning";
 * spreadWithoutOne({ modules: 21, uncertainty: 0 }).text; // "0.05"
 * ```
 */
export const spreadWithoutOne = /* @__PURE__ */ formula({
  id: "commissioning/spread-without-one",
  about: "share by which sound strings lie above one that lacks a module and is read too high by an uncertainty",
  takes: {
    modules: { unit: "1", symbol: "n", about: "modules in series", above: 1, usual: [2, 200] },
    uncertainty: { unit: "1", symbol: "u", about: "share by which a reading may be wrong", from: 0, below: 1, usual: [0, 0.2] },
  },
  gives: { unit: "1", symbol: "s" },
  expression: "modules / ((modules - 1) * (1 + uncertainty)) - 1",
  source: [{ in: "common practice", clause: "a string that lacks a module", grade: "common-practice" }],
  unproven: { because: "definition" },
});
