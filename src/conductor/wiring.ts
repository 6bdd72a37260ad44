import type { Grade } from "../source/index.js";

/** One entry of a closed list. */
export interface Listed<K extends string = string> {
  readonly key: K;
  readonly label: string;
  /** The document that the entry is from, with its edition. */
  readonly edition: string;
  readonly grade: Grade;
}

/** The wiring documents that the rules of this folder follow, each with its edition. */
export const wiringRules = [
  {
    key: "IEC 60364:2009-2017",
    label: "IEC 60364 and its national adoptions",
    edition: "2009 to 2017",
    grade: "copied",
  },
  {
    key: "BS 7671:2018",
    label: "BS 7671, requirements for electrical installations",
    edition: "2018",
    grade: "reproduced",
  },
  { key: "AS/NZS 3000:2018", label: "AS/NZS 3000, wiring rules", edition: "2018", grade: "memory" },
  { key: "NFPA 70:2017", label: "National Electrical Code 2017", edition: "2017", grade: "copied" },
  { key: "NFPA 70:2020", label: "National Electrical Code 2020", edition: "2020", grade: "copied" },
  { key: "NFPA 70:2023", label: "National Electrical Code 2023", edition: "2023", grade: "copied" },
] as const satisfies readonly Listed[];

/** A wiring document with its edition. */
export type WiringRules = (typeof wiringRules)[number]["key"];

/** Whether a document of wiring rules is an edition of NFPA 70. */
export function isNfpa70(wiring: WiringRules): boolean {
  return wiring.startsWith("NFPA 70");
}
