import { isMissing, type Known, missing } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import {
  type CheckedTracker,
  joinedTrackers,
  type StringFuse,
  stringFuse,
  trackerChecks,
  type TrackerLimits,
  type TrackerStrings,
} from "../../string/index.js";
import type { RecordedTracker } from "../record/record.js";
import type { Recorder } from "../record/recorder.js";
import { currentCorrectionOf } from "./currents.js";
import { finding, noteChoice, remind, type Sizing } from "./sizing.js";
import type { StringGroup } from "./strings.js";

type Inverter = StringGroup["inverter"];

/** A tracker, or several that are joined in parallel, with its strings and their fuses. */
export interface SizedTracker {
  readonly groups: readonly StringGroup[];
  readonly fuse: StringFuse | null;
}

function limitsOf(tracker: Inverter["trackers"][number], path: string): TrackerLimits {
  const { inputs, maximumInputCurrent, inputRating } = tracker;
  return {
    inputs,
    maximumInputCurrent,
    shortCircuitRating: finding(tracker.shortCircuitRating, `${path}.shortCircuitRating`),
    ...(inputRating === undefined ? {} : { inputRating }),
  };
}

function trackerStrings({ plant }: Sizing, group: StringGroup): TrackerStrings {
  const { array, modules, count, junction } = group;
  const { module, roof } = array;
  const currentCorrection = currentCorrectionOf(plant, array);
  return {
    name: roof.name,
    count,
    modules,
    moduleType: roof.moduleType,
    mppCurrent: module.mppCurrent,
    shortCircuitCurrent: module.shortCircuitCurrent,
    ...(currentCorrection === undefined ? {} : { currentCorrection }),
    ...(roof.azimuth && roof.tilt ? { orientations: [`${roof.azimuth.text}/${roof.tilt.text}`] } : {}),
    ...(junction === undefined ? {} : { junction }),
  };
}

/** Judges every tracker of an inverter with its strings, the fuses of the strings, and the inputs that stay empty. */
export function sizeTrackers(
  sizing: Sizing,
  inverter: Inverter,
  inverterPath: string,
  groups: readonly StringGroup[],
  recorder: Recorder,
): {
  readonly trackers: readonly RecordedTracker[];
  readonly sized: readonly SizedTracker[];
} {
  const trackers: RecordedTracker[] = [];
  const sized: SizedTracker[] = [];
  for (const [index, tracker] of inverter.trackers.entries()) {
    const own = groups.filter((group) => group.inverter === inverter && group.tracker === tracker);
    const at = `${inverter.name}/${tracker.name}`;
    if (own.length === 0) {
      remind(sizing, {
        kind: "seal",
        text: `Seal every d.c. input of tracker ${tracker.name} of ${inverter.name}; it carries no string.`,
        about: at,
      });
      trackers.push({
        inverter: inverter.name,
        tracker: tracker.name,
        inputs: tracker.inputs,
        inputsUsed: 0,
        inputsToSeal: tracker.inputs,
        mppCurrent: null,
        maximumCurrent: null,
      });
      continue;
    }
    const strings = own.map((group) => trackerStrings(sizing, group));
    const checked = trackerChecks({
      at,
      rules: sizing.rules.pv,
      strings,
      tracker: limitsOf(tracker, `${inverterPath}.trackers[${index}]`),
    });
    sizing.checks.push(...checked.checks);
    trackers.push(recorded(inverter, tracker, checked, recorder));
    const empty = checked.inputsToSeal.number;
    if (empty > 0) {
      const text = `Seal ${empty === 1 ? "the unused d.c. input" : `the ${empty} unused d.c. inputs`} of tracker ${tracker.name} of ${inverter.name}.`;
      remind(sizing, { kind: "seal", text, about: at });
    }
    const fuse = fuseOf(sizing, own, at, inverterPath);
    if (fuse) sizing.checks.push(...fuse.checks);
    sized.push({ groups: own, fuse });
  }
  sizing.checks.push(...joinedChecks(sizing, inverter, inverterPath, groups));
  return { trackers, sized };
}

function recorded(
  inverter: Inverter,
  tracker: Inverter["trackers"][number],
  checked: CheckedTracker,
  recorder: Recorder,
): RecordedTracker {
  return {
    inverter: inverter.name,
    tracker: tracker.name,
    inputs: tracker.inputs,
    inputsUsed: checked.inputsUsed.number,
    inputsToSeal: checked.inputsToSeal.number,
    mppCurrent: recorder.number(checked.mppCurrent),
    maximumCurrent: recorder.perhaps(checked.maximumCurrent),
  };
}

/** Fuses of the strings of one tracker, where there is more than one. */
function fuseOf(sizing: Sizing, groups: readonly StringGroup[], at: string, inverterPath: string): StringFuse | null {
  const [first] = groups as readonly [StringGroup, ...StringGroup[]];
  const strings = groups.reduce((sum, { count }) => sum + count, 0);
  const { plant, rules } = sizing;
  const routeIndex = plant.routes.findIndex(
    ({ from, to, tracker }) =>
      from === first.array.roof.name &&
      to === first.inverter.name &&
      (tracker ?? first.tracker.name) === first.tracker.name,
  );
  const stated = plant.routes[routeIndex]?.stringFuse;
  if (strings < 2 && (stated === undefined || stated === "none" || stated === "choose")) return null;
  if (routeIndex >= 0) noteChoice(sizing, `routes[${routeIndex}].stringFuse`, stated);
  const correction = currentCorrectionOf(plant, first.array);
  if (correction !== undefined && isMissing(correction)) return null;
  return stringFuse({
    at,
    rules: rules.pv,
    strings,
    shortCircuitCurrent: first.array.module.shortCircuitCurrent,
    ...(correction === undefined ? {} : { currentCorrection: correction }),
    maximumSeriesFuse: first.array.module.maximumSeriesFuse,
    backfeedCurrent: finding(first.inverter.backfeedCurrent, `${inverterPath}.backfeedCurrent`),
    fuse: stated ?? "choose",
  });
}

/** Trackers that the description joins are judged together, by what their maker declares for that mode. */
function joinedChecks(
  sizing: Sizing,
  inverter: Inverter,
  inverterPath: string,
  groups: readonly StringGroup[],
): CheckedTracker["checks"] {
  const { joinedTrackers: joined } = inverter;
  if (!Array.isArray(joined)) return [];
  return joined.flatMap(({ trackers, maximumInputCurrent, shortCircuitRating }, index) => {
    const path = `${inverterPath}.joinedTrackers[${index}]`;
    const members = inverter.trackers.filter(({ name }) => trackers.includes(name));
    const own = groups.filter((group) => group.inverter === inverter && members.includes(group.tracker));
    if (own.length === 0) return [];
    const declared: {
      maximumInputCurrent: Known<Quantity<"current">>;
      shortCircuitRating: Known<Quantity<"current">>;
    } = {
      maximumInputCurrent: maximumInputCurrent ?? missing(`${path}.maximumInputCurrent`),
      shortCircuitRating: shortCircuitRating ?? missing(`${path}.shortCircuitRating`),
    };
    const limits = members.map((tracker) =>
      limitsOf(tracker, `${inverterPath}.trackers[${inverter.trackers.indexOf(tracker)}]`),
    );
    const at = `${inverter.name}/${trackers.join("+")}`;
    return joinedTrackers({
      at,
      rules: sizing.rules.pv,
      trackers: limits,
      declared,
      strings: own.map((group) => trackerStrings(sizing, group)),
      joints: [],
    }).checks;
  });
}
