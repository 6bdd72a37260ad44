import { condition, formula } from "../../../formula/index.js";

/**
 * Current-carrying conductors that lie together.
 *
 * @function
 * @example
 * ```ts
 * import { currentCarryingConductors } from "pv-to-grid/conductor";
 * currentCarryingConductors({ circuits: 3, loadedConductors: 2 }).text; // "6"
 * ```
 */
export const currentCarryingConductors = /* @__PURE__ */ formula({
  id: "conductor/current-carrying-conductors", about: "current-carrying conductors that lie together",
  takes: {
    circuits: { unit: "1", symbol: "n_c", about: "circuits together, each parallel set as one", from: 1, usual: [1, 100] },
    loadedConductors: { unit: "1", symbol: "n_l", about: "current-carrying conductors of each circuit", from: 1, to: 4 },
  },
  gives: { unit: "1", symbol: "n" },
  expression: "circuits * loadedConductors",
  source: [
    { in: "NFPA 70:2023", clause: "310.15(C)(1)", grade: "copied" },
  ],
  note: "both poles of every photovoltaic circuit count; equipment grounding conductors do not",
  unproven: { because: "definition" },
});

/**
 * Conductors that count for the adjustment table.
 *
 * @function
 * @example
 * ```ts
 * import { conductorsThatCount } from "pv-to-grid/conductor";
 * conductorsThatCount({ conductors: 60 }).text; // "41"
 * ```
 */
export const conductorsThatCount = /* @__PURE__ */ formula({
  id: "conductor/conductors-that-count", about: "conductors that count for the adjustment table",
  takes: { conductors: { unit: "1", symbol: "n", about: "current-carrying conductors together", from: 1, usual: [1, 400] } },
  constants: {
    lastBand: { value: "41", unit: "1", symbol: "n_last", about: "first number of the last band", source: [{ in: "NFPA 70:2023", clause: "table 310.15(C)(1)", grade: "copied" }] },
  },
  gives: { unit: "1", symbol: "n_t" },
  expression: "min(conductors, lastBand)",
  source: [{ in: "NFPA 70:2023", clause: "table 310.15(C)(1)", grade: "copied" }],
  unproven: { because: "definition" },
});

/**
 * Is the raceway short enough to need no adjustment?
 *
 * @function
 */
export const racewayIsShort = /* @__PURE__ */ condition({
  id: "conductor/raceway-is-short", asks: "Is the raceway short enough to need no adjustment?", force: "yield",
  value: { unit: "mm", symbol: "L", about: "length of the raceway or bundle" }, relation: "≤",
  limit: { unit: "mm", symbol: "L_max", about: "length up to which nothing is adjusted" },
  source: [{ in: "NFPA 70:2023", clause: "310.15(C)(1)", grade: "copied" }],
});
