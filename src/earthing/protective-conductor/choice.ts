import { type Check, isMissing, type Known, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { adiabaticSection } from "../adiabatic/section.js";
import { chosenSection, type SectionChoice } from "../chosen-section.js";
import {
  protectiveConductorFollowsLine,
  protectiveConductorWithstands,
  separateConductorLargeEnough,
} from "./conditions.js";
import { protectiveConductorOfOtherMaterial, protectiveConductorSection } from "./from-line-conductor.js";
import { iec60364_5_54_2011_separate_minimum } from "./minimum.js";

/** How a protective conductor is laid. */
export type ProtectivePlacing = "in cable" | "separate, protected" | "separate, unprotected";

/** What decides a protective conductor by IEC 60364-5-54. */
export interface ProtectiveConductorQuestion {
  /** Place of the plant, for the ids of the checks. */
  readonly at: string;
  /** `"choose"`, or the stated one. */
  readonly section: Input<"area">;
  readonly placing: ProtectivePlacing;
  readonly material: "copper" | "aluminium";
  /** By table from the line conductor, or by the adiabatic equation from the fault. */
  readonly method: "by table" | "by calculation";
  readonly lineSection: Known<Input<"area">>;
  /** By table, for another material than the line conductor: the adiabatic factors of both; `null` for the same. */
  readonly factors: Known<{
    readonly line: Input<"adiabaticFactor">;
    readonly protective: Input<"adiabaticFactor">;
  }> | null;
  /** By calculation: fault current, time until disconnection and the adiabatic factor of the protective conductor. */
  readonly fault: Known<{
    readonly current: Input<"current">;
    readonly time: Input<"time">;
    readonly factor: Input<"adiabaticFactor">;
  }>;
}

/** The protective conductor that was chosen or verified. */
export interface ProtectiveConductorChoice extends SectionChoice {
  /** What the table or the equation asks for, before rounding up. */
  readonly required: Known<Quantity<"area">>;
}

/**
 * Chooses the smallest standard protective conductor, or verifies a stated one, by IEC 60364-5-54.
 *
 * @param question - line conductor, materials, placing, and the fault where the section is calculated
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { missing } from "pv-to-grid/formula";
 * import { chooseProtectiveConductor } from "pv-to-grid/earthing";
 * const conductor = chooseProtectiveConductor({
 *   at: "INV1", section: "choose", placing: "in cable", material: "copper", method: "by table", lineSection: "95 mm²", factors: null, fault: missing("supply.loop"),
 * });
 * conductor.section?.text; // "50"
 * ```
 */
export function chooseProtectiveConductor(question: ProtectiveConductorQuestion): ProtectiveConductorChoice {
  const { at, section, placing, material, method } = question;
  const required = method === "by table" ? byTable(question) : byCalculation(question);
  const follows = method === "by table" ? protectiveConductorFollowsLine : protectiveConductorWithstands;
  const chosen = chosenSection(section, (size): readonly Check[] => {
    const checks = [follows({ at, value: size, limit: required })];
    if (placing !== "in cable") {
      const limit = iec60364_5_54_2011_separate_minimum({ placing, material });
      checks.push(separateConductorLargeEnough({ at, value: size, limit }));
    }
    return checks;
  });
  // Without what decides it, the smallest size would pass: no check refuses what is open.
  const undecided = section === "choose" && isMissing(required);
  return Object.freeze({ ...chosen, section: undecided ? null : chosen.section, required });
}

function byTable({ lineSection, factors }: ProtectiveConductorQuestion): Known<Quantity<"area">> {
  return whenKnown({ lineSection, factors: factors ?? "same material" }, (known): Quantity<"area"> => {
    const same = protectiveConductorSection({ lineSection: known.lineSection });
    if (typeof known.factors === "string") return same;
    const { line, protective } = known.factors;
    return protectiveConductorOfOtherMaterial({
      sameMaterialSection: same,
      lineFactor: line,
      protectiveFactor: protective,
    });
  });
}

function byCalculation({ fault }: ProtectiveConductorQuestion): Known<Quantity<"area">> {
  if (isMissing(fault)) return fault;
  return adiabaticSection({
    faultCurrent: fault.current,
    disconnectionTime: fault.time,
    adiabaticFactor: fault.factor,
  });
}
