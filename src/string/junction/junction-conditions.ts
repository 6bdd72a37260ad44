import { condition, formula } from "../../formula/index.js";

/** Has the branch or combiner an input for each of its strings? @function */
export const junctionHasInputs = /* @__PURE__ */ condition({
  id: "string/junction-has-inputs",
  asks: "Has the branch or combiner an input for each of its strings?",
  force: "requirement",
  value: { unit: "1", symbol: "N", about: "strings that it joins" },
  relation: "≤",
  limit: { unit: "1", symbol: "N_in", about: "its inputs" },
  source: [{ in: "common practice", clause: "one input a string", grade: "common-practice" }],
  worse: { "strings[].count": "up", "junctions[].inputs": "down" },
});

/** Does the branch or combiner carry the maximum current of its strings in the heat that it works in? @function */
export const junctionCarriesCurrent = /* @__PURE__ */ condition({
  id: "string/junction-carries-current",
  asks: "Does the branch or combiner carry the maximum current of its strings in the heat that it works in?",
  force: "requirement",
  value: { unit: "A", symbol: "I_max", about: "maximum current of the strings together" },
  relation: "≤",
  limit: { unit: "A", symbol: "k · I_r", about: "rated current of its trunk, busbar or plug, times the factor for the heat inside" },
  source: [{ in: "IEC 62548-1:2023", clause: "component requirements", grade: "memory" }],
  worse: { "strings[].count": "up", "moduleTypes[].shortCircuitCurrent": "up", "junctions[].ratedCurrent": "down", "junctions[].derating": "down" },
});

/** Is the string's open-circuit voltage at the lowest temperature within the rated voltage of the branch or combiner? @function */
export const coldVoltageWithinJunction = /* @__PURE__ */ condition({
  id: "string/cold-voltage-within-junction",
  asks: "Is the string's open-circuit voltage at the lowest temperature within the rated voltage of the branch or combiner?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC,cold", about: "open-circuit voltage of the string at the lowest temperature" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_r", about: "rated voltage of the branch or combiner" },
  source: [
    { in: "UTE C15-712-1:2010", clause: "14.1", grade: "reproduced", seen: "GuidEnR course:2011, rating of switching devices" },
    { in: "IEC 62548-1:2023", clause: "component requirements", grade: "memory" },
  ],
  worse: { "strings[].modules": "up", "site.coldest": "down", "junctions[].ratedVoltage": "down" },
});

/** Can the combiner be switched off under load? @function */
export const combinerHasLoadBreakSwitch = /* @__PURE__ */ condition({
  id: "string/combiner-has-load-break-switch",
  asks: "Can the combiner be switched off under load?",
  force: "requirement",
  value: { named: true, about: "switch of the combiner" },
  relation: "one of",
  limit: { named: true, about: "switches that serve" },
  source: [
    { in: "IEC 62548-1:2023", clause: "disconnection of sub-arrays", grade: "memory" },
    { in: "NFPA 70:2020", clause: "690.15", grade: "memory" },
  ],
});

/**
 * Rating that a device keeps in the heat that it works in. @function
 *
 * @example
 * ```ts
 * import { deratedCurrent } from "pv-to-grid/string";
 * deratedCurrent({ ratedCurrent: "63 A", derating: "0.8" }).text; // "50.4"
 * ```
 */
export const deratedCurrent = /* @__PURE__ */ formula({
  id: "string/derated-current",
  about: "rating that a device keeps in the heat that it works in",
  takes: {
    ratedCurrent: { unit: "A", symbol: "I_r", about: "rated current", above: 0, usual: [1, 5000] },
    derating: { unit: "1", symbol: "k", about: "factor for the temperature inside", above: 0, to: 1, usual: [0.5, 1] },
  },
  gives: { unit: "A", symbol: "k · I_r" },
  expression: "derating * ratedCurrent",
  source: [{ in: "common practice", clause: "makers' derating", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Share of the power that blocking diodes take. @function
 *
 * @example
 * ```ts
 * import { diodeLoss } from "pv-to-grid/string";
 * diodeLoss({ diodeVoltage: "0.8 V", mppVoltage: "640 V" }).text; // "0.00125"
 * ```
 */
export const diodeLoss = /* @__PURE__ */ formula({
  id: "string/diode-loss",
  about: "share of the power that blocking diodes take",
  takes: {
    diodeVoltage: { unit: "V", symbol: "U_F", about: "forward voltage of the diodes in one string", from: 0, usual: [0, 3] },
    mppVoltage: { unit: "V", symbol: "U_MPP", about: "maximum-power-point voltage of the string", above: 0, usual: [10, 1500] },
  },
  gives: { unit: "1", symbol: "p_D" },
  expression: "diodeVoltage / mppVoltage",
  source: [{ in: "common practice", clause: "the diode carries the string's current", grade: "common-practice" }],
  unproven: { because: "definition" },
});
