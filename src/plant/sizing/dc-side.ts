import { recordedReadings } from "../commissioning/expected-readings.js";
import { missing } from "../../formula/index.js";
import { checkDatasheet } from "../../module/index.js";
import type {
  RecordedFinding,
  RecordedReading,
  RecordedRoute,
  RecordedString,
  RecordedTracker,
} from "../record/record.js";
import type { Recorder } from "../record/recorder.js";
import type { ArrayDesign } from "./arrays.js";
import { sizeArraySafety } from "./array-safety.js";
import { maximumCurrentOf } from "./currents.js";
import { type SizedDcRoute, sizeDcRoute } from "./dc-routes.js";
import { remind, type Sizing } from "./sizing.js";
import { type StringGroup, stringGroups, sizeStrings } from "./strings.js";
import { sizeTrackers, type SizedTracker } from "./trackers.js";

/** What the d.c. side of a plant came to. */
export interface DcSide {
  readonly groups: readonly StringGroup[];
  readonly strings: readonly RecordedString[];
  readonly trackers: readonly RecordedTracker[];
  readonly routes: readonly RecordedRoute[];
  readonly findings: readonly RecordedFinding[];
  readonly readings: readonly RecordedReading[];
}

/** Sizes everything from the modules to the inverters. */
export function sizeDcSide(sizing: Sizing, arrays: ReadonlyMap<string, ArrayDesign>, recorder: Recorder): DcSide {
  const { plant, checks } = sizing;
  for (const { module, roof } of uniqueTypes(arrays)) checks.push(...checkDatasheet(module, roof.moduleType));
  const groups = stringGroups(sizing, arrays);

  const trackers: RecordedTracker[] = [];
  const findings: RecordedFinding[] = [];
  const sized: SizedTracker[] = [];
  for (const [index, inverter] of plant.inverters.entries()) {
    const found = sizeTrackers(sizing, inverter, `inverters[${index}]`, groups, recorder);
    trackers.push(...found.trackers);
    sized.push(...found.sized);
    const own = groups.filter((group) => group.inverter === inverter);
    findings.push(...sizeArraySafety(sizing, inverter, `inverters[${index}]`, own, found.sized, recorder));
  }
  const routes = sizeRoutes(sizing, groups, sized, recorder);
  const strings = groups.map((group) => {
    const drop =
      routes.find((route) => route.groups.includes(group))?.drop.get(group) ??
      missing(`routes from ${group.array.roof.name} to ${group.inverter.name}`);
    return sizeStrings(sizing, group, drop, maximumCurrentOf(plant, group.array), recorder);
  });
  const readings = recordedReadings(plant, groups, recorder);
  return { groups, strings, trackers, routes: routes.map(({ recorded }) => recorded), findings, readings };
}

function uniqueTypes(arrays: ReadonlyMap<string, ArrayDesign>): readonly ArrayDesign[] {
  const seen = new Set<string>();
  return [...arrays.values()].filter(({ roof }) => !seen.has(roof.moduleType) && seen.add(roof.moduleType));
}

function sizeRoutes(
  sizing: Sizing,
  groups: readonly StringGroup[],
  trackers: readonly SizedTracker[],
  recorder: Recorder,
): readonly SizedDcRoute[] {
  const { plant } = sizing;
  return plant.routes.flatMap((route, index) => {
    if (!plant.roofs.some(({ name }) => name === route.from)) return [];
    const served = groups.filter(
      ({ array, inverter, tracker }) =>
        array.roof.name === route.from &&
        inverter.name === route.to &&
        (route.tracker === undefined || route.tracker === tracker.name),
    );
    if (served.length === 0) {
      const text = `No string uses the route from ${route.from} to ${route.to}: leave it out, or put strings on it.`;
      remind(sizing, { kind: "confirm", text, about: `${route.from}-${route.to}` });
      return [];
    }
    return [sizeDcRoute(sizing, route, index, served, trackers, recorder)];
  });
}
