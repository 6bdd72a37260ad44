import type { Known } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import {
  type Ceiling,
  legalCeiling,
  type StringInput,
  stringChecks,
  type StringRange,
  stringRange,
  stringVoltage,
} from "../../string/index.js";
import type { Plant } from "../description/plant-description.js";
import type { RecordedLimit, RecordedString, RecordedVoltages } from "../record/record.js";
import type { Recorder } from "../record/recorder.js";
import { type ArrayDesign, present } from "./arrays.js";
import { chooseStrings } from "./chosen-strings.js";
import { arrayPlaceOf } from "./place.js";
import { finding, type Sizing } from "./sizing.js";

/** Equal strings of one roof on one tracker. */
export interface StringGroup {
  readonly inverter: Plant["inverters"][number];
  readonly inverterPath: string;
  readonly tracker: Plant["inverters"][number]["trackers"][number];
  readonly trackerPath: string;
  readonly array: ArrayDesign;
  readonly modules: number;
  readonly count: number;
  readonly junction: string | undefined;
  /** Its place in the description; `null` where the library chose it. */
  readonly path: string | null;
  /** Place in check ids: inverter, tracker, and the roof where a tracker carries several groups. */
  readonly at: string;
}

/** Every rating and ceiling that the cold string must not exceed. */
function ceilingsOf({ plant, rules }: Sizing, { inverter, inverterPath, array }: StringGroup): readonly Ceiling[] {
  const { module, roof } = array;
  const type = plant.moduleTypes[roof.moduleType]!;
  const dcSwitch = inverter.dcSwitch;
  return [
    { key: "inverter", limit: inverter.maximumDcVoltage },
    { key: "module", limit: module.maximumSystemVoltage },
    { key: "connector", name: "module", limit: finding(type.connectorVoltage, `${module.path}.connectorVoltage`) },
    {
      key: "connector",
      name: "inverter",
      limit: finding(inverter.connectorVoltage, `${inverterPath}.connectorVoltage`),
    },
    ...(typeof dcSwitch === "object" ? [{ key: "switch", limit: dcSwitch.ratedVoltage } as const] : []),
    { key: "legal ceiling", limit: legalCeiling({ rules: rules.pv, place: arrayPlaceOf(plant) }) },
  ];
}

/** What decides the length of the strings of one group. */
export function stringInputOf(sizing: Sizing, group: StringGroup, voltageDrop: Known<Quantity<"ratio">>): StringInput {
  const { inverter, inverterPath, array, at } = group;
  const { coldOpenCircuitVoltage, coldMppVoltage, hotMppVoltage, hotOpenCircuitVoltage } = array.voltages;
  return {
    at,
    module: { coldOpenCircuitVoltage, coldMppVoltage, hotMppVoltage, hotOpenCircuitVoltage },
    ceilings: ceilingsOf(sizing, group),
    mppVoltageRange: inverter.mppVoltageRange,
    startVoltage: finding(inverter.startVoltage, `${inverterPath}.startVoltage`),
    voltageDrop,
  };
}

/** Judges the strings of one group and records them. */
export function sizeStrings(
  sizing: Sizing,
  group: StringGroup,
  voltageDrop: Known<Quantity<"ratio">>,
  maximumCurrent: Known<Quantity<"current">>,
  recorder: Recorder,
): RecordedString {
  const { modules, count, inverter, tracker, array } = group;
  const input = stringInputOf(sizing, group, voltageDrop);
  const range = stringRange(input);
  sizing.checks.push(...stringChecks({ ...input, modules }).checks);
  const ofString = (moduleVoltage: Known<Quantity<"voltage">>): Quantity<"voltage"> | null => {
    const voltage = present(moduleVoltage);
    return voltage ? stringVoltage({ modules, moduleVoltage: voltage }) : null;
  };
  return {
    path: group.path,
    inverter: inverter.name,
    tracker: tracker.name,
    roof: array.roof.name,
    modules,
    count,
    shortest: recorder.perhaps(range.shortest),
    longest: recorder.perhaps(range.longest),
    limitedBy: { shortest: range.limitedBy.shortest?.id ?? null, longest: range.limitedBy.longest?.id ?? null },
    coldVoltage: recorder.perhaps(ofString(array.voltages.coldOpenCircuitVoltage)),
    hotVoltage: recorder.perhaps(ofString(array.voltages.hotMppVoltage)),
    maximumCurrent: recorder.perhaps(maximumCurrent),
    voltages: voltagesOf(array, ofString, recorder),
    limits: limitsOf(range, recorder),
  };
}

function voltagesOf(
  array: ArrayDesign,
  ofString: (voltage: Known<Quantity<"voltage">>) => Quantity<"voltage"> | null,
  recorder: Recorder,
): RecordedVoltages[] {
  const places = [
    ["coldest", array.atCold],
    ["standard test conditions", array.atStandard],
    ["hottest", array.atHot],
  ] as const;
  return places.flatMap(([at, module]) => {
    const cellTemperature = present(module.cellTemperature);
    const openCircuit = ofString(module.openCircuitVoltage);
    if (!cellTemperature || !openCircuit) return [];
    return [
      {
        at,
        cellTemperature: recorder.number(cellTemperature),
        openCircuit: recorder.number(openCircuit),
        mpp: recorder.perhaps(ofString(module.mppVoltage)),
      },
    ];
  });
}

function limitsOf({ limits }: StringRange, recorder: Recorder): RecordedLimit[] {
  return limits.flatMap(({ key, end, force, met, beyond }) => {
    const limit = (met ?? beyond)?.limit;
    if (typeof limit !== "object" || limit === null || !("unit" in limit)) return [];
    return [{ key, name: key, end, force, voltage: recorder.number(limit) }];
  });
}

/** A string as the description states it, or as the search chose it. */
interface NamedString {
  readonly inverter: string;
  readonly tracker: string;
  readonly roof: string;
  readonly modules: number;
  readonly count?: number | undefined;
  readonly junction?: string | undefined;
}

/** The groups of strings of a plant, stated or chosen. */
export function stringGroups(sizing: Sizing, arrays: ReadonlyMap<string, ArrayDesign>): readonly StringGroup[] {
  const { plant } = sizing;
  if (Array.isArray(plant.strings)) {
    sizing.verified.push("strings");
    return groupsOf(plant, arrays, plant.strings, (index) => `strings[${index}]`);
  }
  return groupsOf(plant, arrays, chooseStrings(sizing, arrays), () => null);
}

function groupsOf(
  plant: Plant,
  arrays: ReadonlyMap<string, ArrayDesign>,
  strings: readonly NamedString[],
  pathOf: (index: number) => string | null,
): readonly StringGroup[] {
  return strings.map((string, index) => {
    const inverterIndex = plant.inverters.findIndex(({ name }) => name === string.inverter);
    const inverter = plant.inverters[inverterIndex]!;
    const trackerIndex = inverter.trackers.findIndex(({ name }) => name === string.tracker);
    const inverterPath = `inverters[${inverterIndex}]`;
    const shared = strings.some(
      (other) => other !== string && other.inverter === string.inverter && other.tracker === string.tracker,
    );
    return {
      inverter,
      inverterPath,
      tracker: inverter.trackers[trackerIndex]!,
      trackerPath: `${inverterPath}.trackers[${trackerIndex}]`,
      array: arrays.get(string.roof)!,
      modules: string.modules,
      count: string.count ?? 1,
      junction: string.junction,
      path: pathOf(index),
      at: `${string.inverter}/${string.tracker}${shared ? `/${string.roof}/${string.modules}` : ""}`,
    };
  });
}
