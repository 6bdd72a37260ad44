import { type Known, missing } from "../../formula/index.js";
import { type ArrayLightning, chooseArrayBonding } from "../../earthing/index.js";
import type { Plant } from "../description/plant-description.js";
import type { RecordedFinding } from "../record/record.js";
import type { Recorder } from "../record/recorder.js";
import type { Sizing } from "./sizing.js";

/** How the array stands to a lightning protection system. */
export function arrayLightningOf({ lightningProtection }: Plant): Known<ArrayLightning> {
  switch (lightningProtection) {
    case undefined:
      return missing("lightningProtection");
    case "none":
      return "no lightning protection";
    case "separation distance kept":
      return "separation distance kept";
    case "separation distance not kept":
      return "lightning current can flow";
  }
}

/** The bonding conductor of each roof's metalwork. */
export function sizeArrayBonding(sizing: Sizing, recorder: Recorder): readonly RecordedFinding[] {
  const { plant, rules, checks } = sizing;
  if (rules.wiring.startsWith("NFPA 70")) return [];
  return plant.roofs.map((roof) => {
    const choice = chooseArrayBonding({ at: roof.name, section: "choose", lightning: arrayLightningOf(plant) });
    checks.push(...choice.checks);
    return {
      subject: "earthing",
      what: "bonding conductor of the modules' metalwork, copper",
      at: roof.name,
      value: recorder.perhaps(choice.section),
      checks: choice.checks.map(({ id }) => id),
    };
  });
}
