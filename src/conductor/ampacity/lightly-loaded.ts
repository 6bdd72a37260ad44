import { condition, formula } from "../../formula/index.js";

/**
 * Current up to which a conductor of a group counts as lightly loaded.
 *
 * @function
 * @example
 * ```ts
 * import { lightLoad } from "pv-to-grid/conductor";
 * lightLoad({ ampacity: "40 A" }).text; // "12"
 * ```
 */
export const lightLoad = /* @__PURE__ */ formula({
  id: "conductor/light-load", about: "current up to which a conductor of a group counts as lightly loaded",
  takes: {
    ampacity: { unit: "A", symbol: "I_z", about: "ampacity of the conductor in the group", above: 0, usual: [1, 5000] },
  },
  constants: {
    lightShare: { value: "0.3", unit: "1", symbol: "s", about: "share of the ampacity", source: [{ in: "IEC 60364-5-52:2009", clause: "523.5", grade: "memory" }] },
  },
  gives: { unit: "A", symbol: "I_l" },
  expression: "lightShare * ampacity",
  source: [{ in: "IEC 60364-5-52:2009", clause: "523.5", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked groups with lightly loaded conductors" },
});

/**
 * Is the conductor loaded so lightly that the rest of the group need not count it?
 *
 * @function
 */
export const lightlyLoaded = /* @__PURE__ */ condition({
  id: "conductor/lightly-loaded", asks: "Is the conductor loaded so lightly that the rest of the group need not count it?", force: "yield",
  value: { unit: "A", symbol: "I", about: "current of the conductor, never expected to be higher" }, relation: "≤",
  limit: { unit: "A", symbol: "I_l", about: "current up to which it counts as lightly loaded" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "523.5", grade: "memory" }],
});
