import { type Check, isMissing, type Known } from "../../formula/index.js";
import type { WiringRules } from "../../conductor/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { chosenSection, type SectionChoice } from "../chosen-section.js";
import type { EarthingSystem } from "../systems.js";
import {
  bs7671_2018_54_8,
  bs7671_2018_54_8_above,
  mainBondingLargeEnough,
  mainBondingSection,
  neutralWithinTable,
} from "./main-bonding.js";

/** What decides a main bonding conductor of copper. */
export interface MainBondingQuestion {
  readonly at: string;
  /** `"choose"`, or the stated one. */
  readonly section: Input<"area">;
  readonly wiring: WiringRules;
  readonly earthing: Known<EarthingSystem>;
  /** Earthing conductor of the installation, in copper. */
  readonly earthingSection: Known<Input<"area">>;
  /** Neutral of the supply, in copper, for supplies whose neutral is also the protective conductor. */
  readonly neutralSection: Known<Input<"area">>;
}

/**
 * Chooses the smallest main bonding conductor of copper, or verifies a stated one.
 *
 * @param question - earthing system, earthing conductor, and the supply's neutral where it is also the protective conductor
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { missing } from "pv-to-grid/formula";
 * import { chooseMainBonding } from "pv-to-grid/earthing";
 * const bonding = chooseMainBonding({
 *   at: "Main board", section: "choose", wiring: "IEC 60364:2009-2017", earthing: "TN-S", earthingSection: "35 mm²", neutralSection: missing("supply.neutral"),
 * });
 * bonding.section?.text; // "25"
 * ```
 */
export function chooseMainBonding(question: MainBondingQuestion): SectionChoice {
  const { at, section } = question;
  const limit = requiredBonding(question);
  const chosen = chosenSection(section, (value): readonly Check[] => [mainBondingLargeEnough({ at, value, limit })]);
  const undecided = section === "choose" && isMissing(limit);
  return undecided ? Object.freeze({ ...chosen, section: null }) : chosen;
}

function requiredBonding({
  wiring,
  earthing,
  earthingSection,
  neutralSection,
}: MainBondingQuestion): Known<Quantity<"area">> {
  if (isMissing(earthing)) return earthing;
  const combined = earthing === "TN-C-S" || earthing === "TN-C";
  if (wiring !== "BS 7671:2018" || !combined) {
    return isMissing(earthingSection) ? earthingSection : mainBondingSection({ earthingSection });
  }
  if (isMissing(neutralSection)) return neutralSection;
  const neutral = given(neutralSection, "mm²");
  const last = given(bs7671_2018_54_8.rows().at(-1)!, "mm²");
  const tabulated = neutralWithinTable({ value: neutral, limit: last }).verdict === "met";
  return tabulated
    ? bs7671_2018_54_8({ neutralSection: neutral })
    : bs7671_2018_54_8_above({ neutral: "above 150 mm²" });
}
