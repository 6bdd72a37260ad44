import { formula } from "../../formula/index.js";
import { InputError, type Quantity } from "../../quantity/index.js";

/**
 * Largest share of an even voltage harmonic that a generator may cause under REBT ITC-BT-40.
 *
 * @function
 * @example
 * ```ts
 * import { rebtEvenHarmonicLimit } from "pv-to-grid/grid";
 * rebtEvenHarmonicLimit({ order: 5 }).text; // "0.008"
 * ```
 */
export const rebtEvenHarmonicLimit = /* @__PURE__ */ formula({
  id: "grid/rebt-even-harmonic-limit",
  about: "largest share of an even voltage harmonic that a generator may cause under REBT ITC-BT-40",
  takes: { order: { unit: "1", symbol: "n", about: "order of the harmonic", from: 2, to: 50, usual: [2, 50] } },
  constants: {
    evenHarmonicShare: { value: "0.04", unit: "1", symbol: "k_even", about: "share of even harmonics times their order", source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 6", grade: "copied" }] },
  },
  gives: { unit: "1", symbol: "u_n" },
  expression: "evenHarmonicShare / order",
  source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 6", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked harmonic of a generator against ITC-BT-40" },
});

/**
 * Largest share of an odd voltage harmonic that a generator may cause under REBT ITC-BT-40.
 *
 * @function
 * @example
 * ```ts
 * import { rebtOddHarmonicLimit } from "pv-to-grid/grid";
 * rebtOddHarmonicLimit({ order: 5 }).text; // "0.05"
 * ```
 */
export const rebtOddHarmonicLimit = /* @__PURE__ */ formula({
  id: "grid/rebt-odd-harmonic-limit",
  about: "largest share of an odd voltage harmonic that a generator may cause under REBT ITC-BT-40",
  takes: { order: { unit: "1", symbol: "n", about: "order of the harmonic", from: 2, to: 50, usual: [2, 50] } },
  constants: {
    thirdHarmonicLimit: { value: "0.05", unit: "1", symbol: "k_3", about: "share of the third harmonic", source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 6", grade: "copied" }] },
    oddHarmonicShare: { value: "0.25", unit: "1", symbol: "k_odd", about: "share of odd harmonics from the fifth times their order", source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 6", grade: "copied" }] },
  },
  gives: { unit: "1", symbol: "u_n" },
  expression: "order <= 3 ? thirdHarmonicLimit : oddHarmonicShare / order",
  source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 6", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked harmonic of a generator against ITC-BT-40" },
});

/**
 * Largest share of a voltage harmonic that a generator may cause under REBT ITC-BT-40, by its order.
 *
 * @throws InputError where the order is not a whole number from 2 to 50
 * @example
 * ```ts
 * import { rebtHarmonicLimit } from "pv-to-grid/grid";
 * rebtHarmonicLimit(5).in("%").text; // "5"
 * ```
 */
export function rebtHarmonicLimit(order: number): Quantity<"ratio"> {
  if (!Number.isInteger(order)) {
    const expected = "a whole number from 2 to 50";
    throw new InputError("harmonic", [
      { path: "order", code: "out-of-domain", message: `expected ${expected}`, expected, received: String(order) },
    ]);
  }
  return order % 2 === 0 ? rebtEvenHarmonicLimit({ order }) : rebtOddHarmonicLimit({ order });
}
