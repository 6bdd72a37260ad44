import { isMissing, type Known } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { chosenSection } from "../chosen-section.js";
import { asnzs3000_2018_5_1, earthingConductorFollowsActive } from "./asnzs3000-5-1.js";
import type { ProtectiveConductorChoice } from "./choice.js";

/** What decides an earthing conductor by AS/NZS 3000. */
export interface ActiveEarthQuestion {
  readonly at: string;
  /** `"choose"`, or the stated one. */
  readonly section: Input<"area">;
  readonly lineSection: Known<Input<"area">>;
  readonly lineMaterial: "copper" | "aluminium";
}

/**
 * Chooses the smallest earthing conductor of copper, or verifies a stated one, by table 5.1 of AS/NZS 3000.
 *
 * @param question - the active conductor and its material
 * @throws InputError where the table has no such active conductor
 * @example
 * ```ts
 * import { chooseActiveEarth } from "pv-to-grid/earthing";
 * chooseActiveEarth({ at: "INV1", section: "choose", lineSection: "16 mm²", lineMaterial: "copper" }).section?.text; // "6"
 * ```
 */
export function chooseActiveEarth({
  at,
  section,
  lineSection,
  lineMaterial,
}: ActiveEarthQuestion): ProtectiveConductorChoice {
  const required: Known<Quantity<"area">> = isMissing(lineSection)
    ? lineSection
    : asnzs3000_2018_5_1({ lineSection, lineMaterial });
  const chosen = chosenSection(section, (size) => [
    earthingConductorFollowsActive({ at, value: size, limit: required }),
  ]);
  const undecided = section === "choose" && isMissing(required);
  return Object.freeze({ ...chosen, section: undecided ? null : chosen.section, required });
}
