import { iec60228_2004_sections } from "../conductor/index.js";
import { type Check, choose, type Choice } from "../formula/index.js";
import { given, type Input, type Quantity } from "../quantity/index.js";

/** A conductor that was chosen from the standard sections, or verified as stated. */
export interface SectionChoice {
  readonly section: Quantity<"area"> | null;
  /** How it was chosen; `null` where it was stated. */
  readonly choice: Choice<"mm²"> | null;
  readonly checks: readonly Check[];
  /** What the next smaller section fails. */
  readonly fixedBy: readonly Check[];
}

/** The smallest standard section that meets every requirement, or the verdicts on a stated one. */
export function chosenSection(
  section: Input<"area">,
  checksFor: (size: Quantity<"area">) => readonly Check[],
): SectionChoice {
  if (section !== "choose") {
    const stated = given(section, "mm²", "stated section");
    return Object.freeze({ section: stated, choice: null, checks: Object.freeze([...checksFor(stated)]), fixedBy: [] });
  }
  const choice = choose(iec60228_2004_sections, checksFor);
  return Object.freeze({ section: choice.chosen, choice, checks: choice.checks, fixedBy: choice.fixedBy });
}
