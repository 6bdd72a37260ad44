import { condition, formula } from "../../formula/index.js";

/**
 * Apparent power of all inverters behind a transformer together. @function
 *
 * @example
 * ```ts
 * import { plantApparentPower } from "pv-to-grid/protection";
 * plantApparentPower({ apparentPowers: ["15 kVA", "5 kVA"] }).text; // "20000"
 * ```
 */
export const plantApparentPower = /* @__PURE__ */ formula({
  id: "protection/plant-apparent-power",
  about: "apparent power of all inverters behind a transformer together",
  takes: {
    apparentPowers: { each: "VA", symbol: "S_i", about: "apparent power of each inverter", from: 0 },
  },
  gives: { unit: "VA", symbol: "Σ S" },
  expression: "sum(apparentPowers)",
  source: [{ in: "common practice", clause: "plain addition, so at least the true value", grade: "common-practice" }],
  unproven: { because: "composition only" },
});

/**
 * Does the transformer carry all inverters behind it? @function
 *
 * @example
 * ```ts
 * import { transformerCarriesPlant } from "pv-to-grid/protection";
 * transformerCarriesPlant({ value: "20 kVA", limit: "400 kVA" }).verdict; // "met"
 * ```
 */
export const transformerCarriesPlant = /* @__PURE__ */ condition({
  id: "protection/transformer-carries-plant",
  asks: "Does the transformer carry all inverters behind it?",
  force: "requirement",
  value: { unit: "VA", symbol: "Σ S", about: "apparent power of the inverters together" },
  relation: "≤",
  limit: { unit: "VA", symbol: "S_n", about: "rated power of the transformer" },
  source: [{ in: "common practice", clause: "rating of the transformer", grade: "common-practice" }],
  worse: { "inverters[].apparentPower": "up", "transformer.apparentPower": "down" },
});

/**
 * Does the low-voltage side of the transformer have the neutral that the inverters ask for? @function
 *
 * @example
 * ```ts
 * import { transformerNeutralSuits } from "pv-to-grid/protection";
 * transformerNeutralSuits({ value: "not brought out", limit: ["earthed"] }).verdict; // "not met"
 * ```
 */
export const transformerNeutralSuits = /* @__PURE__ */ condition({
  id: "protection/transformer-neutral-suits",
  asks: "Does the low-voltage side of the transformer have the neutral that the inverters ask for?",
  force: "requirement",
  value: { named: true, about: "neutral of the low-voltage side" },
  relation: "one of",
  limit: { named: true, about: "what the inverters ask for" },
  source: [{ in: "common practice", clause: "instructions of the inverter", grade: "common-practice" }],
});
