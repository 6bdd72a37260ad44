import { type Known, missing } from "../../formula/index.js";
import {
  type ArrayLightning,
  chooseArrayBonding,
  chooseEarthingConductor,
  chooseMainBonding,
  type EarthingSystem,
} from "../../earthing/index.js";
import type { Plant } from "../description/plant-description.js";
import type { RecordedFinding } from "../record/record.js";
import type { Recorder } from "../record/recorder.js";
import { finding, noteChoice, type Sizing } from "./sizing.js";

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
  return plant.roofs.map((roof, index) => {
    const stated = roof.bondingConductor;
    noteChoice(sizing, `roofs[${index}].bondingConductor`, stated);
    const choice = chooseArrayBonding({
      at: roof.name,
      section: stated ?? "choose",
      lightning: arrayLightningOf(plant),
    });
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

/** The earthing conductor and the main bonding of the installation, where its electrode is described. */
export function sizeMainEarthing(sizing: Sizing, recorder: Recorder): readonly RecordedFinding[] {
  const { plant, rules, checks } = sizing;
  const { electrode, supply, lightningProtection } = plant;
  if (!electrode || rules.wiring.startsWith("NFPA 70")) return [];
  noteChoice(sizing, "electrode.earthingConductor", electrode.earthingConductor);
  noteChoice(sizing, "electrode.mainBonding", electrode.mainBonding);
  const earthing = supply.earthing;
  const system: Known<EarthingSystem> =
    earthing === undefined || earthing === "solidly grounded" ? missing("supply.earthing") : earthing;
  const conductor = chooseEarthingConductor({
    at: supply.at,
    section: electrode.earthingConductor ?? "choose",
    material: electrode.material ?? "copper",
    supplySection: finding(supply.lineSection, "supply.lineSection"),
    burial: finding(electrode.buried, "electrode.buried"),
    lightningProtection:
      lightningProtection === undefined
        ? missing("lightningProtection")
        : lightningProtection === "none"
          ? "none"
          : "present",
  });
  const bonding = chooseMainBonding({
    at: supply.at,
    section: electrode.mainBonding ?? "choose",
    wiring: rules.wiring,
    earthing: system,
    earthingSection: conductor.section ?? missing("electrode.earthingConductor"),
    neutralSection: finding(electrode.neutralSection, "electrode.neutralSection"),
  });
  checks.push(...conductor.checks, ...bonding.checks);
  const row = (what: string, choice: typeof conductor): RecordedFinding => ({
    subject: "earthing",
    what,
    at: supply.at,
    value: recorder.perhaps(choice.section),
    checks: choice.checks.map(({ id }) => id),
  });
  return [row("earthing conductor", conductor), row("main bonding conductor, copper", bonding)];
}
