import { awgArea } from "../../conductor/index.js";
import type { Named } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { bondingJumperArea, equivalentArea } from "./areas.js";
import { areaWithinBound } from "./conditions.js";
import { nfpa70_2020_250_166 } from "./direct-current.js";
import {
  nfpa70_2023_250_66_aluminium,
  nfpa70_2023_250_66_caps,
  nfpa70_2023_250_66_copper,
  nfpa70_2023_250_66_largest,
} from "./table-250-66.js";
import { aboveLastRow } from "./rows.js";

/** Electrode that a grounding conductor goes to, where it goes to that one only. */
export type SoleElectrode = "rod, pipe or plate" | "concrete-encased";

/** What decides the grounding electrode conductor of an a.c. service. */
export interface GroundingElectrodeQuestion {
  /** Area of one set of the largest ungrounded service conductors, and the number of parallel sets. */
  readonly serviceArea: Input<"area">;
  readonly sets: number;
  readonly serviceMaterial: "copper" | "aluminium";
  /** Material of the grounding electrode conductor. */
  readonly material: "copper" | "aluminium";
  /** The only electrode that the conductor goes to; left out or `null` where it goes to several or another kind. */
  readonly sole?: SoleElectrode | null;
}

/**
 * Size of the grounding electrode conductor of an a.c. service by table 250.66, no larger than a sole electrode ever asks for.
 *
 * @param question - service conductors, materials and electrode
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { groundingElectrodeConductor } from "pv-to-grid/earthing";
 * groundingElectrodeConductor({ serviceArea: "500 kcmil", sets: 2, serviceMaterial: "aluminium", material: "copper", sole: null }).name; // "2/0 AWG"
 * ```
 */
export function groundingElectrodeConductor(question: GroundingElectrodeQuestion): Named {
  const { serviceArea, sets, serviceMaterial, material, sole } = question;
  const conductorArea = equivalentArea({ setArea: serviceArea, setCount: sets });
  const table = serviceMaterial === "copper" ? nfpa70_2023_250_66_copper : nfpa70_2023_250_66_aluminium;
  const byTable = aboveLastRow(table, conductorArea)
    ? nfpa70_2023_250_66_largest({ material })
    : table({ conductorArea, material });
  if (!sole || (sole === "concrete-encased" && material === "aluminium")) return byTable;
  const cap = nfpa70_2023_250_66_caps({ electrode: sole, material });
  const larger =
    areaWithinBound({ value: awgArea({ conductorSize: byTable }), limit: awgArea({ conductorSize: cap }) }).verdict ===
    "not met";
  return larger ? cap : byTable;
}

/**
 * Size of a main, system or supply-side bonding jumper by table 250.102(C)(1): a named size, or an area above the table.
 *
 * @param question - service conductors and material of the jumper
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { bondingJumper } from "pv-to-grid/earthing";
 * const jumper = bondingJumper({ serviceArea: "1000 kcmil", sets: 2, serviceMaterial: "copper", material: "copper" });
 * "unit" in jumper && jumper.in("kcmil").text; // "250"
 * ```
 */
export function bondingJumper({
  serviceArea,
  sets,
  serviceMaterial,
  material,
}: Omit<GroundingElectrodeQuestion, "sole">): Named | Quantity<"area"> {
  const conductorArea = equivalentArea({ setArea: serviceArea, setCount: sets });
  const table = serviceMaterial === "copper" ? nfpa70_2023_250_66_copper : nfpa70_2023_250_66_aluminium;
  return aboveLastRow(table, conductorArea) ? bondingJumperArea({ conductorArea }) : table({ conductorArea, material });
}

/**
 * Size of the grounding electrode conductor of a solidly grounded d.c. system: as the largest conductor, within the bounds of 250.166.
 *
 * @param largestArea - area of the largest conductor of the system
 * @param material - material of the grounding electrode conductor
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { directCurrentElectrodeConductor } from "pv-to-grid/earthing";
 * directCurrentElectrodeConductor("10380 cmil", "copper").text; // "16510"
 * ```
 */
export function directCurrentElectrodeConductor(
  largestArea: Input<"area">,
  material: "copper" | "aluminium",
): Quantity<"area"> {
  const area = given(largestArea, "cmil");
  const least = awgArea({ conductorSize: nfpa70_2020_250_166({ bound: "not smaller than", material }) });
  const most = awgArea({ conductorSize: nfpa70_2020_250_166({ bound: "not required larger than", material }) });
  if (areaWithinBound({ value: area, limit: least }).verdict === "met") return least;
  return areaWithinBound({ value: area, limit: most }).verdict === "met" ? area : most;
}
