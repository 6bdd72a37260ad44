import { type Check, isMissing, type Known } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { chosenSection, type SectionChoice } from "../chosen-section.js";
import { protectiveConductorSection } from "../protective-conductor/from-line-conductor.js";
import { strictThenMild } from "../strict-then-mild.js";
import { buriedEarthingConductorLasts, earthingConductorLargeEnough, earthingConductorLasts } from "./conditions.js";
import { iec60364_5_54_2002_buried_minimum, iec60364_5_54_2011_earthing_minimum } from "./minimum.js";

/** Protection of a buried conductor, or that it is not buried. */
export type Burial = "not buried" | "corrosion and mechanical damage" | "corrosion only" | "neither";

/** What decides an earthing conductor. */
export interface EarthingConductorQuestion {
  readonly at: string;
  /** `"choose"`, or the stated one. */
  readonly section: Input<"area">;
  readonly material: "copper" | "steel";
  /** Largest line conductor of the supply, of copper. */
  readonly supplySection: Known<Input<"area">>;
  readonly burial: Known<Burial>;
  /** Whether a lightning protection system is connected. */
  readonly lightningProtection: Known<"none" | "present">;
}

/**
 * Chooses the smallest earthing conductor, or verifies a stated one; as with a lightning protection system until it is
 * known that there is none.
 *
 * @param question - supply, burial, material and lightning protection
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { missing } from "pv-to-grid/formula";
 * import { chooseEarthingConductor } from "pv-to-grid/earthing";
 * const conductor = chooseEarthingConductor({
 *   at: "Main board", section: "choose", material: "copper", supplySection: "10 mm²", burial: "not buried", lightningProtection: missing("lightningProtection"),
 * });
 * conductor.section?.text; // "16"
 * ```
 */
export function chooseEarthingConductor(question: EarthingConductorQuestion): SectionChoice {
  return chosenSection(question.section, (size) => checksFor(question, size));
}

function checksFor(question: EarthingConductorQuestion, value: Quantity<"area">): readonly Check[] {
  const { at, material, supplySection, burial, lightningProtection } = question;
  const checks: Check[] = [];
  // The table by the line conductor holds for the same material; steel is held by its own minimum.
  if (material === "copper") {
    const limit = isMissing(supplySection) ? supplySection : protectiveConductorSection({ lineSection: supplySection });
    checks.push(earthingConductorLargeEnough({ at, value, limit }));
  }
  const lasting = (lightning: "none" | "present"): Check =>
    earthingConductorLasts({
      at,
      value,
      limit: iec60364_5_54_2011_earthing_minimum({ lightningProtection: lightning, material }),
    });
  if (!isMissing(lightningProtection)) checks.push(lasting(lightningProtection));
  else {
    const open = (): Check => earthingConductorLasts({ at, value, missing: lightningProtection.missing });
    const verdict = strictThenMild(lasting("present"), lasting("none"), open);
    // A conductor that is still to be chosen is chosen for the stricter case.
    checks.push(question.section === "choose" ? lasting("present") : verdict);
  }
  if (isMissing(burial)) checks.push(buriedEarthingConductorLasts({ at, value, missing: burial.missing }));
  else if (burial !== "not buried") {
    const limit = iec60364_5_54_2002_buried_minimum({ protection: burial, material });
    checks.push(buriedEarthingConductorLasts({ at, value, limit }));
  }
  return checks;
}
