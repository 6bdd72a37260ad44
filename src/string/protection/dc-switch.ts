import { type Check, condition, formula, type Known } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import { whole } from "../count.js";
import { coldVoltageWithinSwitch } from "../voltage/ceiling-conditions.js";

/** Can the array be disconnected from the inverter under load? @function */
export const dcSwitchPresent = /* @__PURE__ */ condition({
  id: "string/dc-switch-present",
  asks: "Can the array be disconnected from the inverter under load?",
  force: "requirement",
  value: { named: true, about: "where the d.c. switch is" },
  relation: "one of",
  limit: { named: true, about: "places that serve" },
  source: [
    { in: "IEC 60364-7-712:2017", clause: "712.536", grade: "memory" },
    { in: "NFPA 70:2020", clause: "690.13 and 690.15", grade: "memory" },
    { in: "SS 638:undated", clause: "712.537.2.2.5L", grade: "copied", seen: "SS 638 summary:undated" },
  ],
});

/** Does the d.c. switch carry the maximum current of the array? @function */
export const switchCarriesCurrent = /* @__PURE__ */ condition({
  id: "string/switch-carries-current",
  asks: "Does the d.c. switch carry the maximum current of the array?",
  force: "requirement",
  value: { unit: "A", symbol: "I_max", about: "maximum current through one pole" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_e", about: "rated operational current of the switch" },
  source: [{ in: "UTE C15-712-1:2010", clause: "14.1", grade: "reproduced", seen: "GuidEnR course:2011, rating of switching devices" }],
  worse: { "strings[].count": "up", "moduleTypes[].shortCircuitCurrent": "up", "inverters[].dcSwitch.ratedCurrent": "down" },
});

/** Does the d.c. switch break the current that other strings may drive through it in either direction? @function */
export const switchBreaksReverseCurrent = /* @__PURE__ */ condition({
  id: "string/switch-breaks-reverse-current",
  asks: "Does the d.c. switch break the current that other strings may drive through it in either direction?",
  force: "requirement",
  value: { unit: "A", symbol: "I_R", about: "largest reverse current" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_e", about: "rated operational current of the switch" },
  source: [{ in: "IEC 60947-3:undated", clause: "annex D, reverse current duty", grade: "memory" }],
  worse: { "strings[].count": "up", "inverters[].dcSwitch.ratedCurrent": "down" },
});

/** Is the utilisation category of the d.c. switch made for the array? @function */
export const switchCategoryFits = /* @__PURE__ */ condition({
  id: "string/switch-category-fits",
  asks: "Is the utilisation category of the d.c. switch made for the array?",
  force: "requirement",
  value: { named: true, about: "utilisation category" },
  relation: "one of",
  limit: { named: true, about: "categories that fit" },
  source: [
    { in: "IEC 60947-3:undated", clause: "annex D, categories DC-PV", grade: "memory" },
    { in: "SS 638:undated", clause: "712.537.2.2.5L", grade: "copied", seen: "SS 638 summary:undated" },
  ],
});

/** Does the d.c. switch open both poles of every circuit? @function */
export const switchOpensAllPoles = /* @__PURE__ */ condition({
  id: "string/switch-opens-all-poles",
  asks: "Does the d.c. switch open both poles of every circuit?",
  force: "requirement",
  value: { unit: "1", symbol: "p", about: "poles of the switch" },
  relation: "≥",
  limit: { unit: "1", symbol: "p_due", about: "poles of the circuits that pass through it" },
  source: [{ in: "UTE C15-712-1:2010", clause: "14.1", grade: "reproduced", seen: "GuidEnR course:2011, rating of switching devices" }],
  worse: { "inverters[].dcSwitch.poles": "down" },
});

/**
 * Poles of the d.c. circuits that pass through a switch. @function
 *
 * @example
 * ```ts
 * import { polesOfCircuits } from "pv-to-grid/string";
 * polesOfCircuits({ circuits: 2 }).text; // "4"
 * ```
 */
export const polesOfCircuits = /* @__PURE__ */ formula({
  id: "string/poles-of-circuits",
  about: "poles of the d.c. circuits that pass through a switch",
  takes: { circuits: { unit: "1", symbol: "N_c", about: "d.c. circuits, each with two poles", from: 1, usual: [1, 12] } },
  gives: { unit: "1", symbol: "p_due" },
  expression: "2 * circuits",
  source: [{ in: "UTE C15-712-1:2010", clause: "14.1", grade: "reproduced", seen: "GuidEnR course:2011, rating of switching devices" }],
  unproven: { because: "definition" },
});

/** Ratings of a separate d.c. switch. */
export interface DcSwitch {
  readonly ratedCurrent: Known<Input<"current">>;
  readonly ratedVoltage: Known<Input<"voltage">>;
  readonly category: Known<string>;
  readonly poles: Known<number>;
}

/** What passes through a d.c. switch. */
export interface DcSwitchInput {
  readonly at?: string;
  /** Strings in parallel on its poles. */
  readonly strings: number;
  /** Circuits that pass through it, each with two poles; left out, one. */
  readonly circuits?: number;
  readonly maximumCurrent: Known<Input<"current">>;
  /** Left out where only one string is there. */
  readonly reverseCurrent?: Known<Input<"current">>;
  readonly coldVoltage: Known<Input<"voltage">>;
  /** `"built in"` has the inverter's own ratings. */
  readonly dcSwitch: Known<"none" | "built in" | DcSwitch>;
}

const ONE_STRING = ["DC-PV1", "DC-PV2", "DC-21B"];
const MANY_STRINGS = ["DC-PV2"];

/**
 * Judges the d.c. switch: whether there is one, its current, voltage, category and poles.
 *
 * @example
 * ```ts
 * import { dcSwitchChecks } from "pv-to-grid/string";
 * const checks = dcSwitchChecks({
 *   strings: 2, maximumCurrent: "35.25 A", reverseCurrent: "17.625 A", coldVoltage: "620 V",
 *   dcSwitch: { ratedCurrent: "32 A", ratedVoltage: "1000 V", category: "DC-PV2", poles: 2 },
 * });
 * checks.filter((check) => check.verdict === "not met").map((check) => check.id).join(); // "string/switch-carries-current"
 * ```
 */
export function dcSwitchChecks(input: DcSwitchInput): readonly Check[] {
  const { at = "", strings, circuits = 1, maximumCurrent, reverseCurrent, coldVoltage, dcSwitch } = input;
  const serves = ["separate", "built in"];
  if (typeof dcSwitch === "string") return [dcSwitchPresent({ value: dcSwitch, limit: serves, at })];
  if ("missing" in dcSwitch) return [dcSwitchPresent({ value: dcSwitch, limit: serves, at })];
  const { ratedCurrent, ratedVoltage, category, poles } = dcSwitch;
  const fitting = strings > 1 ? MANY_STRINGS : ONE_STRING;
  return [
    dcSwitchPresent({ value: "separate", limit: serves, at }),
    switchCarriesCurrent({ value: maximumCurrent, limit: ratedCurrent, at }),
    ...(reverseCurrent === undefined || strings < 2
      ? []
      : [switchBreaksReverseCurrent({ value: reverseCurrent, limit: ratedCurrent, at })]),
    coldVoltageWithinSwitch({ value: coldVoltage, limit: ratedVoltage, at }),
    switchCategoryFits({ value: category, limit: fitting, at }),
    switchOpensAllPoles({
      value: typeof poles === "number" ? whole(poles) : poles,
      limit: polesOfCircuits({ circuits: whole(circuits) }),
      at,
    }),
  ];
}
