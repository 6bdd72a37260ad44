import { type Check, isMissing, type Known } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { chosenSection, type SectionChoice } from "../chosen-section.js";
import { strictThenMild } from "../strict-then-mild.js";
import { arrayBondingLargeEnough, arrayBondingMinimum } from "./array-bonding.js";

/** How an array stands to a lightning protection system. */
export type ArrayLightning = "no lightning protection" | "separation distance kept" | "lightning current can flow";

/** What decides the bonding conductor of an array's metalwork, of copper. */
export interface ArrayBondingQuestion {
  readonly at: string;
  /** `"choose"`, or the stated one. */
  readonly section: Input<"area">;
  readonly lightning: Known<ArrayLightning>;
}

/**
 * Chooses the smallest bonding conductor of an array's metalwork, or verifies a stated one; 16 mm² until it is known that
 * no lightning current can flow.
 *
 * @param question - how the array stands to a lightning protection system
 * @throws InputError where the stated section is not a section
 * @example
 * ```ts
 * import { missing } from "pv-to-grid/formula";
 * import { chooseArrayBonding } from "pv-to-grid/earthing";
 * chooseArrayBonding({ at: "South", section: "choose", lightning: missing("lightningProtection") }).section?.text; // "16"
 * ```
 */
export function chooseArrayBonding({ at, section, lightning }: ArrayBondingQuestion): SectionChoice {
  const under = (situation: ArrayLightning, value: Quantity<"area">): Check =>
    arrayBondingLargeEnough({ at, value, limit: arrayBondingMinimum({ situation }) });
  return chosenSection(section, (value): readonly Check[] => {
    if (!isMissing(lightning)) return [under(lightning, value)];
    const strict = under("lightning current can flow", value);
    if (section === "choose") return [strict];
    const open = (): Check => arrayBondingLargeEnough({ at, value, missing: lightning.missing });
    return [strictThenMild(strict, under("no lightning protection", value), open)];
  });
}
