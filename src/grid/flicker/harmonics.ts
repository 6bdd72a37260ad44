import { formula } from "../../formula/index.js";

/**
 * Largest share of a voltage harmonic that a generator may cause under REBT ITC-BT-40.
 *
 * @function
 * @example
 * ```ts
 * import { rebtHarmonicLimit } from "pv-to-grid/grid";
 * rebtHarmonicLimit({ order: 5 }).in("%").text; // "5"
 * ```
 */
export const rebtHarmonicLimit = /* @__PURE__ */ formula({
  id: "grid/rebt-harmonic-limit",
  about: "largest share of a voltage harmonic that a generator may cause under REBT ITC-BT-40",
  takes: { order: { unit: "1", symbol: "n", about: "order of the harmonic", from: 2, to: 50, usual: [2, 50] } },
  constants: {
    evenHarmonicShare: { value: "0.04", unit: "1", symbol: "k_even", about: "share of even harmonics times their order", source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 6", grade: "copied" }] },
    thirdHarmonicShareLimit: { value: "0.05", unit: "1", symbol: "k_3", about: "share of the third harmonic", source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 6", grade: "copied" }] },
    oddHarmonicShare: { value: "0.25", unit: "1", symbol: "k_odd", about: "share of odd harmonics from the fifth times their order", source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 6", grade: "copied" }] },
  },
  requires: [{ that: "floor(order) == order", because: "the order of a harmonic is a whole number" }],
  gives: { unit: "1", symbol: "u_n" },
  expression: "order == 2 * floor(order / 2) ? evenHarmonicShare / order : order == 3 ? thirdHarmonicShareLimit : oddHarmonicShare / order",
  source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 6", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked harmonic of a generator against ITC-BT-40" },
});
