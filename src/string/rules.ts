import type { Grade } from "../source/index.js";

/** The documents by which the PV side may be judged, each with its edition. */
export const pvRuleSets = [
  { key: "IEC 62548-1:2023", label: "IEC 62548-1, PV arrays", edition: "2023", grade: "memory" },
  { key: "IEC 60364-7-712:2017", label: "IEC 60364-7-712, PV power supply systems", edition: "2017", grade: "memory" },
  { key: "AS/NZS 5033:2021", label: "AS/NZS 5033, PV arrays", edition: "2021", grade: "reproduced" },
  { key: "NFPA 70:2017", label: "NEC, article 690", edition: "2017", grade: "copied" },
  { key: "NFPA 70:2020", label: "NEC, article 690", edition: "2020", grade: "copied" },
  { key: "NFPA 70:2023", label: "NEC, article 690", edition: "2023", grade: "copied" },
] as const satisfies readonly { key: string; label: string; edition: string; grade: Grade }[];

/** A PV rule set by its document and edition. */
export type PvRules = (typeof pvRuleSets)[number]["key"];

/** The editions of the NEC among the PV rule sets. */
export type NecRules = Extract<PvRules, `NFPA 70:${string}`>;

/** Whether a PV rule set is an edition of the NEC. */
export function isNec(rules: PvRules): rules is NecRules {
  return rules.startsWith("NFPA 70:");
}
