import { type Known, isMissing, table } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { Grade } from "../../source/index.js";
import type { PvRules } from "../rules.js";

/** Where an array stands, for the rules that limit its voltage or ask for shutdown. */
export const arrayPlaces = [
  { key: "dwelling", label: "on or in a one- or two-family dwelling", edition: "any", grade: "common-practice" },
  { key: "building", label: "on or in another building", edition: "any", grade: "common-practice" },
  { key: "ground", label: "not on or in a building", edition: "any", grade: "common-practice" },
] as const satisfies readonly { key: string; label: string; edition: string; grade: Grade }[];

/** Where an array stands. */
export type ArrayPlace = (typeof arrayPlaces)[number]["key"];

/**
 * Highest d.c. voltage that a rule set allows, by where the array stands. @function
 *
 * @example
 * ```ts
 * import { voltageCeilings } from "pv-to-grid/string";
 * voltageCeilings({ arrayPlace: "dwelling", rules: "NFPA 70:2020" }).text; // "600"
 * ```
 */
export const voltageCeilings = /* @__PURE__ */ table({
  id: "string/voltage-ceilings",
  about: "highest d.c. voltage that a rule set allows, by where the array stands",
  rows: { name: "arrayPlace", names: "in the first column" },
  rowRule: "exact",
  columns: { rules: ["IEC 62548-1:2023", "IEC 60364-7-712:2017", "AS/NZS 5033:2021", "NFPA 70:2017", "NFPA 70:2020", "NFPA 70:2023"] },
  gives: { unit: "V", symbol: "U_law" },
  source: [
    { in: "AS/NZS 4777.1:2024", clause: "4.3.2", grade: "reproduced", seen: "Solar Victoria checklist:undated, performance 1" },
    { in: "NFPA 70:2020", clause: "690.7", grade: "copied", seen: "California Electrical Code:2022, 690.7" },
    { in: "NFPA 70:2023", clause: "690.7 and 690.31(G)", grade: "reproduced", seen: "North American Clean Energy:2022, item 2" },
    { in: "IEC 62548-1:2023", clause: "scope, 1 500 V d.c.", grade: "memory" },
    { in: "IEC 60364-7-712:2017", clause: "scope of IEC 60364, 1 500 V d.c.", grade: "memory" },
  ],
  cells: `
    dwelling  1500  1500  1000  600   600   600
    building  1500  1500  1500  1000  1000  1000
    ground    1500  1500  1500  1500  1500  1500
  `,
  cellGrades: {
    copied: ["dwelling | NFPA 70:2020", "building | NFPA 70:2020", "ground | NFPA 70:2020"],
    memory: [
      "dwelling | IEC 62548-1:2023", "building | IEC 62548-1:2023", "ground | IEC 62548-1:2023",
      "dwelling | IEC 60364-7-712:2017", "building | IEC 60364-7-712:2017", "ground | IEC 60364-7-712:2017",
      "dwelling | NFPA 70:2017", "building | NFPA 70:2017", "ground | NFPA 70:2017", "ground | NFPA 70:2023",
    ],
  },
  differences: [
    { cell: "dwelling | AS/NZS 5033:2021", ships: "1000", others: "600", why: "600 V stood in the 2014 edition and still stands in a newsletter; the 2024 rule of AS/NZS 4777.1 prints 1 000 V" },
    { cell: "ground | NFPA 70:2020", ships: "1500", others: "none", why: "the 1 500 V sentence exempts listed equipment from parts of article 490; it is taken as the ceiling of this library" },
  ],
});

/** The ceiling of a rule set, or what is missing to find it. */
export function legalCeiling(given: {
  readonly rules: PvRules;
  readonly place: Known<ArrayPlace>;
}): Known<Quantity<"voltage">> {
  return isMissing(given.place) ? given.place : voltageCeilings({ arrayPlace: given.place, rules: given.rules });
}
