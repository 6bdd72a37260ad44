import { type Check, condition, formula, type Known, whenKnown } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";

/**
 * Current that the cable of a generator must carry under REBT ITC-BT-40.
 *
 * @function
 * @example
 * ```ts
 * import { rebtGeneratorCableCurrent } from "pv-to-grid/grid";
 * rebtGeneratorCableCurrent({ generatorCurrent: "16 A" }).text; // "20"
 * ```
 */
export const rebtGeneratorCableCurrent = /* @__PURE__ */ formula({
  id: "grid/rebt-generator-cable-current",
  about: "current that the cable of a generator must carry under REBT ITC-BT-40",
  takes: { generatorCurrent: { unit: "A", symbol: "I_gen", about: "largest current of the generator", from: 0, usual: [0, 10000] } },
  constants: {
    generatorCableFactor: { value: "1.25", unit: "1", symbol: "125 %", about: "rating of the connection cable over the largest current of the generator", source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 5", grade: "copied" }] },
  },
  gives: { unit: "A", symbol: "I_cable" },
  expression: "generatorCableFactor * generatorCurrent",
  source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 5", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked generator cable under ITC-BT-40" },
});

/**
 * Does the cable carry 125 % of the generator's largest current?
 *
 * @function
 * @example
 * ```ts
 * import { generatorCableCarriesMargin } from "pv-to-grid/grid";
 * generatorCableCarriesMargin({ value: "20 A", limit: "20 A" }).verdict; // "met"
 * ```
 */
export const generatorCableCarriesMargin = /* @__PURE__ */ condition({
  id: "grid/generator-cable-carries-margin",
  asks: "Does the cable carry 125 % of the generator's largest current?",
  force: "requirement",
  value: { unit: "A", symbol: "I_cable", about: "125 % of the largest current of the generator" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_z", about: "ampacity of the cable" },
  source: [{ in: "REBT:2002", clause: "ITC-BT-40, section 5", grade: "copied" }],
});

/** The cable between a generator and its connection under REBT ITC-BT-40. */
export function generatorCableChecks(cable: {
  readonly generatorCurrent: Known<Input<"current">>;
  readonly ampacity: Known<Input<"current">>;
  readonly at: string;
}): readonly Check[] {
  const { generatorCurrent, ampacity, at } = cable;
  const value = whenKnown({ generatorCurrent }, rebtGeneratorCableCurrent);
  return [generatorCableCarriesMargin({ value, limit: ampacity, at, remedy: "a larger cable" })];
}
