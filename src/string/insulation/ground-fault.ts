import { condition, formula } from "../../formula/index.js";

/**
 * Voltage of a d.c. circuit above which the NEC asks for ground-fault protection. @function
 *
 * @example
 * ```ts
 * import { groundFaultVoltage } from "pv-to-grid/string";
 * groundFaultVoltage({}).text; // "30"
 * ```
 */
export const groundFaultVoltage = /* @__PURE__ */ formula({
  id: "string/ground-fault-voltage",
  about: "voltage of a d.c. circuit above which the NEC asks for ground-fault protection",
  takes: {},
  constants: {
    groundFaultVoltageThreshold: { value: "30", unit: "V", symbol: "30 V", about: "d.c. voltage of the circuit", source: [{ in: "NFPA 70:2020", clause: "690.41(B)", grade: "copied", seen: "California Electrical Code:2022, 690.41(B)" }] },
  },
  gives: { unit: "V", symbol: "U_gf" },
  expression: "groundFaultVoltageThreshold",
  source: [{ in: "NFPA 70:2020", clause: "690.41(B)", grade: "copied", seen: "California Electrical Code:2022, 690.41(B)" }],
  unproven: { because: "definition" },
});

/**
 * Current of a d.c. circuit above which the NEC asks for ground-fault protection. @function
 *
 * @example
 * ```ts
 * import { groundFaultCurrent } from "pv-to-grid/string";
 * groundFaultCurrent({}).text; // "8"
 * ```
 */
export const groundFaultCurrent = /* @__PURE__ */ formula({
  id: "string/ground-fault-current",
  about: "current of a d.c. circuit above which the NEC asks for ground-fault protection",
  takes: {},
  constants: {
    groundFaultCurrentThreshold: { value: "8", unit: "A", symbol: "8 A", about: "d.c. current of the circuit", source: [{ in: "NFPA 70:2020", clause: "690.41(B)", grade: "copied", seen: "California Electrical Code:2022, 690.41(B)" }] },
  },
  gives: { unit: "A", symbol: "I_gf" },
  expression: "groundFaultCurrentThreshold",
  source: [{ in: "NFPA 70:2020", clause: "690.41(B)", grade: "copied", seen: "California Electrical Code:2022, 690.41(B)" }],
  unproven: { because: "definition" },
});

/** Does the circuit's voltage stay within the one up to which no ground-fault protection is due? @function */
export const withinGroundFaultVoltage = /* @__PURE__ */ condition({
  id: "string/within-ground-fault-voltage",
  asks: "Does the circuit's voltage stay within the one up to which no ground-fault protection is due?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC,cold", about: "largest voltage of the circuit" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_gf", about: "voltage up to which none is due" },
  source: [{ in: "NFPA 70:2020", clause: "690.41(B)", grade: "copied", seen: "California Electrical Code:2022, 690.41(B)" }],
  note: "decides the need; it is no requirement of its own",
});

/** Does the circuit's current stay within the one up to which no ground-fault protection is due? @function */
export const withinGroundFaultCurrent = /* @__PURE__ */ condition({
  id: "string/within-ground-fault-current",
  asks: "Does the circuit's current stay within the one up to which no ground-fault protection is due?",
  force: "requirement",
  value: { unit: "A", symbol: "I_max", about: "maximum current of the circuit" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_gf", about: "current up to which none is due" },
  source: [{ in: "NFPA 70:2020", clause: "690.41(B)", grade: "copied", seen: "California Electrical Code:2022, 690.41(B)" }],
  note: "decides the need; it is no requirement of its own",
});

/** Is the array's insulation to earth measured before the inverter connects? @function */
export const insulationMeasured = /* @__PURE__ */ condition({
  id: "string/insulation-measured",
  asks: "Is the array's insulation to earth measured before the inverter connects?",
  force: "requirement",
  value: { named: true, about: "what watches the insulation" },
  relation: "one of",
  limit: { named: true, about: "what serves" },
  source: [
    { in: "IEC 62109-2:2011", clause: "4.8.2", grade: "memory" },
    { in: "IEC 62548-1:2023", clause: "earth-fault protection", grade: "memory" },
  ],
});

/** Is the array's ground-fault protection there? @function */
export const groundFaultProtectionPresent = /* @__PURE__ */ condition({
  id: "string/ground-fault-protection-present",
  asks: "Is the array's ground-fault protection there?",
  force: "requirement",
  value: { named: true, about: "ground-fault protection of the array" },
  relation: "one of",
  limit: { named: true, about: "what serves" },
  source: [{ in: "NFPA 70:2020", clause: "690.41(B)", grade: "copied", seen: "California Electrical Code:2022, 690.41(B)" }],
});
