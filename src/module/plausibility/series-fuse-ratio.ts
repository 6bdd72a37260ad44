import { formula } from "../../formula/index.js";

/**
 * Rating of the largest series fuse over the short-circuit current.
 *
 * @function
 * @example
 * ```ts
 * import { seriesFuseRatio } from "pv-to-grid/module";
 * seriesFuseRatio({ maximumSeriesFuse: "15 A", shortCircuitCurrent: "8.37 A" }).show({ digits: 3 }); // "1.79"
 * ```
 */
export const seriesFuseRatio = /* @__PURE__ */ formula({
  id: "module/series-fuse-ratio",
  about: "rating of the largest series fuse over the short-circuit current",
  takes: {
    maximumSeriesFuse: { unit: "A", symbol: "I_MOD,max", about: "largest overcurrent protection rating of the module", above: 0, usual: [1, 60] },
    shortCircuitCurrent: { unit: "A", symbol: "I_SC", about: "short-circuit current", above: 0, usual: [0.05, 40] },
  },
  gives: { unit: "1", symbol: "r_fuse" },
  expression: "maximumSeriesFuse / shortCircuitCurrent",
  source: [{ in: "GuidEnR course:2011", clause: "reverse current that a module withstands", grade: "original" }],
});
