import { type Check, condition, formula, isMissing, type Known } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import { isNec, type PvRules } from "../rules.js";
import type { ArrayPlace } from "../voltage/voltage-ceilings.js";

/**
 * Voltage from which the NEC asks for d.c. arc-fault protection. @function
 *
 * @example
 * ```ts
 * import { arcFaultVoltage } from "pv-to-grid/string";
 * arcFaultVoltage({}).text; // "80"
 * ```
 */
export const arcFaultVoltage = /* @__PURE__ */ formula({
  id: "string/arc-fault-voltage",
  about: "voltage from which the NEC asks for d.c. arc-fault protection",
  takes: {},
  constants: {
    arcFaultThreshold: { value: "80", unit: "V", symbol: "80 V", about: "d.c. voltage between any two conductors", source: [{ in: "NFPA 70:2020", clause: "690.11", grade: "memory" }] },
  },
  gives: { unit: "V", symbol: "U_arc" },
  expression: "arcFaultThreshold",
  source: [{ in: "NFPA 70:2020", clause: "690.11", grade: "memory" }],
  unproven: { because: "definition" },
});

/** Is the array's largest voltage below the one from which arc-fault protection is due? @function */
export const belowArcFaultVoltage = /* @__PURE__ */ condition({
  id: "string/below-arc-fault-voltage",
  asks: "Is the array's largest voltage below the one from which arc-fault protection is due?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC,cold", about: "open-circuit voltage of the string at the lowest temperature" },
  relation: "<",
  limit: { unit: "V", symbol: "U_arc", about: "voltage from which it is due" },
  source: [{ in: "NFPA 70:2020", clause: "690.11", grade: "memory" }],
  note: "decides the need; it is no requirement of its own",
});

/** Is there d.c. arc-fault protection where the rules ask for it? @function */
export const arcFaultProtectionPresent = /* @__PURE__ */ condition({
  id: "string/arc-fault-protection-present",
  asks: "Is there d.c. arc-fault protection where the rules ask for it?",
  force: "requirement",
  value: { named: true, about: "where the protection is" },
  relation: "one of",
  limit: { named: true, about: "places that serve" },
  source: [
    { in: "NFPA 70:2020", clause: "690.11", grade: "memory" },
    { in: "IEC 63027:undated", clause: "detection and interruption", grade: "memory" },
  ],
});

/** Where d.c. arc-fault protection may be. */
export type ArcFaultProtection = "in the inverter" | "separate" | "none";

/** What arc-fault protection depends on. */
export interface ArcFaultInput {
  readonly at?: string;
  readonly rules: PvRules;
  readonly place: Known<ArrayPlace>;
  readonly coldVoltage: Known<Input<"voltage">>;
  readonly protection: Known<ArcFaultProtection>;
}

/** Whether arc-fault protection is due, and whether it is there. */
export interface ArcFault {
  /** `null` while an input is missing. */
  readonly required: boolean | null;
  readonly because: string;
  readonly checks: readonly Check[];
}

/**
 * D.c. arc-fault protection: due under NEC 690.11 for arrays on buildings from 80 V, not asked for by the other rule sets.
 *
 * @example
 * ```ts
 * import { arcFault } from "pv-to-grid/string";
 * import { missing } from "pv-to-grid/formula";
 * arcFault({ rules: "NFPA 70:2023", place: "dwelling", coldVoltage: "520 V", protection: missing("inverters[0].arcFaultProtection") }).checks[0]?.verdict; // "open"
 * ```
 */
export function arcFault({ at = "", rules, place, coldVoltage, protection }: ArcFaultInput): ArcFault {
  if (!isNec(rules)) return none("the rule set does not ask for it");
  if (place === "ground") return none("the array is not on or in a building");
  const lacks = [place, coldVoltage].flatMap((side) => (isMissing(side) ? side.missing : []));
  if (lacks.length > 0) {
    const open = arcFaultProtectionPresent({ missing: lacks, at });
    return Object.freeze({ required: null, because: "not known yet", checks: Object.freeze([open]) });
  }
  const below = belowArcFaultVoltage({ value: coldVoltage, limit: arcFaultVoltage({}), at });
  if (below.verdict === "met") return none("the voltage stays below the threshold");
  const present = arcFaultProtectionPresent({ value: protection, limit: ["in the inverter", "separate"], at });
  return Object.freeze({
    required: true,
    because: "an array on a building from 80 V",
    checks: Object.freeze([present]),
  });
}

function none(because: string): ArcFault {
  return Object.freeze({ required: false, because, checks: Object.freeze([]) });
}
