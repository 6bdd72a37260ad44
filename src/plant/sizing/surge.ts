import { isMissing, type Known, missing } from "../../formula/index.js";
import {
  acSurgeNeed,
  acSurgeProtection,
  type BuildingKind,
  dcSurgeNeed,
  dcSurgeProtection,
  type LightningSituation,
  type Need,
  surgeCautions,
  type SurgeVerdict,
} from "../../surge/index.js";
import type { Plant } from "../description/plant-description.js";
import type { RecordedFinding } from "../record/record.js";
import { highestColdVoltage, maximumArrayCurrent } from "./array-safety.js";
import { totalLength } from "./lengths.js";
import { caution, finding, remind, type Sizing } from "./sizing.js";
import type { StringGroup } from "./strings.js";

type SurgeDevice = NonNullable<Plant["surgeDevices"]>[number];

function lightningOf({ lightningProtection }: Plant): Known<LightningSituation> {
  if (lightningProtection === undefined) return missing("lightningProtection");
  return lightningProtection === "none" ? "no lightning protection" : lightningProtection;
}

function buildingOf({ site }: Plant): Known<BuildingKind> {
  switch (site.building) {
    case undefined:
      return missing("site.building");
    case "individual residential":
      return "dwelling";
    case "ground-mounted plant":
      return "ground-mounted plant";
    default:
      return "other building";
  }
}

function deviceAt(
  { surgeDevices = [] }: Plant,
  at: string,
  side: SurgeDevice["side"],
): { device: SurgeDevice | undefined; path: string } {
  const index = surgeDevices.findIndex((item) => item.at === at && item.side === side);
  return { device: surgeDevices[index], path: `surgeDevices[${index}]` };
}

/** Surge protection on both sides: whether it is needed, and what the stated devices are worth. */
export function sizeSurge(sizing: Sizing, groups: readonly StringGroup[]): readonly RecordedFinding[] {
  const { plant, rules } = sizing;
  const ground =
    plant.site.building === undefined ? missing("site.building") : plant.site.building === "ground-mounted plant";
  for (const text of surgeCautions({
    lightning: lightningOf(plant),
    groundMounted: ground,
    earthing: finding(plant.supply.earthing, "supply.earthing"),
  })) {
    caution(sizing, text);
  }
  // The decision rules are those of IEC practice; an NEC record leaves surge protection to its own list of devices.
  if (rules.wiring.startsWith("NFPA 70")) return [];
  return [...plant.inverters.flatMap((inverter, index) => dcSide(sizing, inverter, index, groups)), acSide(sizing)];
}

function dcSide(
  sizing: Sizing,
  inverter: Plant["inverters"][number],
  index: number,
  groups: readonly StringGroup[],
): readonly RecordedFinding[] {
  const { plant } = sizing;
  const at = inverter.name;
  const own = groups.filter((group) => group.inverter === inverter);
  const routes = plant.routes.filter((route) => route.to === at && plant.roofs.some(({ name }) => name === route.from));
  if (own.length === 0 || routes.length === 0) return [];
  const lengths = routes.map((route) => totalLength({ lengths: route.stretches.map(({ length }) => length) }));
  const need = dcSurgeNeed({
    at,
    building: buildingOf(plant),
    lightningDensity: finding(plant.site.lightningDensity, "site.lightningDensity"),
    routes: lengths,
  });
  const { device, path } = deviceAt(plant, at, "d.c.");
  const longest = lengths.reduce((most, length) => (length.number > most.number ? length : most));
  const verdict = dcSurgeProtection({
    at,
    needed: need.needed,
    lightning: lightningOf(plant),
    coldVoltage: highestColdVoltage(own),
    maximumCurrent: maximumArrayCurrent(sizing, own),
    cableLength: longest,
    impulseWithstand: finding(inverter.impulseWithstand?.dc, `inverters[${index}].impulseWithstand.dc`),
    device: device
      ? {
          type: finding(device.type, `${path}.type`),
          continuousVoltage: finding(device.continuousVoltage, `${path}.continuousVoltage`),
          shortCircuitRating: finding(device.shortCircuitRating, `${path}.shortCircuitRating`),
          protectionLevel: finding(device.protectionLevel, `${path}.protectionLevel`),
          leadLength: finding(device.leadLength, `${path}.leadLength`),
        }
      : "none",
  });
  return [row(sizing, "d.c. surge protective device", at, need, verdict, device)];
}

function acSide(sizing: Sizing): RecordedFinding {
  const { plant } = sizing;
  const { site, supply } = plant;
  const at = supply.at;
  const need = acSurgeNeed({
    at,
    consequence: finding(site.consequence, "site.consequence"),
    surroundings: finding(site.surroundings, "site.surroundings"),
    nationalFactor: finding(site.nationalFactor, "site.nationalFactor"),
    lines: finding(supply.lines, "supply.lines"),
    lightningDensity: finding(site.lightningDensity, "site.lightningDensity"),
  });
  const { device, path } = deviceAt(plant, at, "a.c.");
  const board = plant.boards?.find(({ name }) => name === at);
  const index = plant.inverters.findIndex(({ impulseWithstand }) => impulseWithstand?.ac !== undefined);
  const verdict = acSurgeProtection({
    at,
    place: "service entrance",
    needed: need.needed,
    lightning: lightningOf(plant),
    lineToEarth: finding(supply.lineToNeutral, "supply.lineToNeutral"),
    deviceAhead: finding(board?.supplyDevice?.ratedCurrent, "boards[].supplyDevice"),
    impulseWithstand: finding(plant.inverters[index]?.impulseWithstand?.ac, "inverters[].impulseWithstand.ac"),
    device: device
      ? {
          type: finding(device.type, `${path}.type`),
          continuousVoltage: finding(device.continuousVoltage, `${path}.continuousVoltage`),
          nominalDischargeCurrent: finding(device.nominalDischargeCurrent, `${path}.nominalDischargeCurrent`),
          largestBackUpFuse: finding(device.largestBackUpFuse, `${path}.largestBackUpFuse`),
          earthSection: finding(device.earthSection, `${path}.earthSection`),
          protectionLevel: finding(device.protectionLevel, `${path}.protectionLevel`),
          leadLength: finding(device.leadLength, `${path}.leadLength`),
        }
      : "none",
  });
  return row(sizing, "a.c. surge protective device", at, need, verdict, device);
}

function row(
  sizing: Sizing,
  what: string,
  at: string,
  need: Need,
  verdict: SurgeVerdict,
  device: SurgeDevice | undefined,
): RecordedFinding {
  // Whether a device is needed is a question of its own; a need that is met by a device is no failure.
  sizing.checks.push(...verdict.checks);
  if (!device && need.needed === true) {
    const types = isMissing(verdict.types) ? "" : ` of ${verdict.types.join(" or ")}`;
    remind(sizing, { kind: "supply", text: `Supply a ${what}${types} at ${at}: ${need.because}.`, about: at });
  }
  const needed = isMissing(need.needed) ? "open" : need.needed ? "needed" : "not needed";
  const value = device
    ? `${device.type ?? "type not stated"} (${needed}: ${need.because})`
    : `none (${needed}: ${need.because})`;
  return { subject: "surge", what, at, value, checks: verdict.checks.map(({ id }) => id) };
}
