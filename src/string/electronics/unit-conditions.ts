import { condition, formula } from "../../formula/index.js";

/** Does the module-level unit bear the voltage of its modules at the lowest temperature? @function */
export const unitBearsVoltage = /* @__PURE__ */ condition({
  id: "string/unit-bears-voltage",
  asks: "Does the module-level unit bear the voltage of its modules at the lowest temperature?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC,cold", about: "open-circuit voltage of the modules of one unit at the lowest temperature" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_in,max", about: "largest input voltage of the unit" },
  source: [{ in: "common practice", clause: "ratings of module-level units", grade: "common-practice" }],
  worse: { "moduleTypes[].openCircuitVoltage": "up", "site.coldest": "down" },
});

/** Does the module-level unit bear the current of its modules? @function */
export const unitBearsCurrent = /* @__PURE__ */ condition({
  id: "string/unit-bears-current",
  asks: "Does the module-level unit bear the current of its modules?",
  force: "requirement",
  value: { unit: "A", symbol: "I_in", about: "current of its modules, as its rating is stated" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_in,max", about: "largest input current of the unit" },
  source: [{ in: "common practice", clause: "ratings of module-level units", grade: "common-practice" }],
  worse: { "moduleTypes[].shortCircuitCurrent": "up" },
});

/** Does the module-level unit take the power of its modules? @function */
export const unitTakesPower = /* @__PURE__ */ condition({
  id: "string/unit-takes-power",
  asks: "Does the module-level unit take the power of its modules?",
  force: "requirement",
  value: { unit: "W", symbol: "P_in", about: "power of its modules at standard test conditions" },
  relation: "≤",
  limit: { unit: "W", symbol: "P_in,max", about: "largest module power of the unit" },
  source: [{ in: "common practice", clause: "ratings of module-level units", grade: "common-practice" }],
  worse: { "moduleTypes[].maximumPower": "up" },
});

/** Can the units of the string together reach the voltage that the inverter holds? @function */
export const unitsReachStringVoltage = /* @__PURE__ */ condition({
  id: "string/units-reach-string-voltage",
  asks: "Can the units of the string together reach the voltage that the inverter holds?",
  force: "requirement",
  value: { unit: "V", symbol: "n · U_out,max", about: "largest output voltage of all units in series" },
  relation: "≥",
  limit: { unit: "V", symbol: "U_inv", about: "voltage that the inverter holds" },
  source: [{ in: "common practice", clause: "regulated strings", grade: "common-practice" }],
});

/** Is the power of the string within what the units and the inverter allow? @function */
export const regulatedPowerWithinLimit = /* @__PURE__ */ condition({
  id: "string/regulated-power-within-limit",
  asks: "Is the power of the string within what the units and the inverter allow?",
  force: "requirement",
  value: { unit: "W", symbol: "n · P", about: "power of the string at standard test conditions" },
  relation: "≤",
  limit: { unit: "W", symbol: "P_string,max", about: "largest power of one string" },
  source: [{ in: "common practice", clause: "regulated strings", grade: "common-practice" }],
  worse: { "moduleTypes[].maximumPower": "up" },
});

/** Is the number of units in the string within what the maker states? @function */
export const unitCountWithinMaker = /* @__PURE__ */ condition({
  id: "string/unit-count-within-maker",
  asks: "Is the number of units in the string within what the maker states?",
  force: "requirement",
  value: { unit: "1", symbol: "n", about: "units in series" },
  relation: "≤",
  limit: { unit: "1", symbol: "n_max", about: "most units in series by the maker" },
  source: [{ in: "common practice", clause: "regulated strings", grade: "common-practice" }],
});

/** Is the voltage that the inverter holds within its own largest d.c. voltage and the ceiling of the rules? @function */
export const regulatedVoltageWithinCeiling = /* @__PURE__ */ condition({
  id: "string/regulated-voltage-within-ceiling",
  asks: "Is the voltage that the inverter holds within its own largest d.c. voltage and the ceiling of the rules?",
  force: "requirement",
  value: { unit: "V", symbol: "U_max", about: "largest voltage of the regulated string by its maker" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_lim", about: "largest d.c. voltage of the inverter, or the ceiling of the rules" },
  source: [{ in: "NFPA 70:2020", clause: "690.7(B)", grade: "memory" }],
});

/**
 * Power that units in series pass at the voltage that the inverter holds. @function
 *
 * @example
 * ```ts
 * import { regulatedStringPower } from "pv-to-grid/string";
 * regulatedStringPower({ inverterVoltage: "380 V", outputCurrent: "15 A" }).text; // "5700"
 * ```
 */
export const regulatedStringPower = /* @__PURE__ */ formula({
  id: "string/regulated-string-power",
  about: "power that units in series pass at the voltage that the inverter holds",
  takes: {
    inverterVoltage: { unit: "V", symbol: "U_inv", about: "voltage that the inverter holds", above: 0, usual: [100, 1500] },
    outputCurrent: { unit: "A", symbol: "I_out,max", about: "largest output current of a unit", above: 0, usual: [1, 60] },
  },
  gives: { unit: "W", symbol: "P_string,max" },
  expression: "inverterVoltage * outputCurrent",
  source: [{ in: "common practice", clause: "units in series share one current", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Power of modules in series. @function
 *
 * @example
 * ```ts
 * import { stringPower } from "pv-to-grid/string";
 * stringPower({ modules: 14, modulePower: "440 W" }).text; // "6160"
 * ```
 */
export const stringPower = /* @__PURE__ */ formula({
  id: "string/string-power",
  about: "power of modules in series",
  takes: {
    modules: { unit: "1", symbol: "n", about: "modules", from: 1, usual: [1, 200] },
    modulePower: { unit: "W", symbol: "P_max", about: "maximum power of one module at standard test conditions", above: 0, usual: [5, 1000] },
  },
  gives: { unit: "W", symbol: "P_string" },
  expression: "modules * modulePower",
  source: [{ in: "common practice", clause: "powers add", grade: "common-practice" }],
  unproven: { because: "definition" },
});
