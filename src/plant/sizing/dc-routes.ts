import { type Check, type Known, missing, whenKnown } from "../../formula/index.js";
import {
  routeVoltageChange,
  type RouteVoltageChange,
  sizeConductor,
  type SizedConductor,
  stretchTemperature,
} from "../../conductor/index.js";
import type { Quantity } from "../../quantity/index.js";
import { continuousCurrent, stringVoltage } from "../../string/index.js";
import type { RecordedRoute } from "../record/record.js";
import type { Recorder } from "../record/recorder.js";
import { cableName, cableOf, type PlantRoute, stretchesOf, terminalsOf } from "./cables.js";
import { maximumCurrentOf } from "./currents.js";
import { totalLength } from "./lengths.js";
import { dcDropWithinOwnersLimit } from "./owners-limits.js";
import { isNecWiring, sizeEquipmentGrounding } from "./nec.js";
import { noteChoice, type Sizing } from "./sizing.js";
import type { StringGroup } from "./strings.js";
import type { SizedTracker } from "./trackers.js";

/** A d.c. route with its cable, and the drop that the strings on it see. */
export interface SizedDcRoute {
  readonly recorded: RecordedRoute;
  readonly groups: readonly StringGroup[];
  readonly drop: ReadonlyMap<StringGroup, Known<Quantity<"ratio">>>;
}

/** Sizes the string cable of one route from a roof to an inverter. */
export function sizeDcRoute(
  sizing: Sizing,
  route: PlantRoute,
  index: number,
  groups: readonly StringGroup[],
  trackers: readonly SizedTracker[],
  recorder: Recorder,
): SizedDcRoute {
  const { plant, rules } = sizing;
  const path = `routes[${index}]`;
  const at = `${route.from}-${route.to}`;
  const circuits = groups.reduce((sum, { count }) => sum + count, 0);
  const [first] = groups;
  const cable = cableOf(route);
  const stretches = stretchesOf(route, path, circuits - 1);
  const current = first ? maximumCurrentOf(plant, first.array) : missing("strings");
  const mppCurrent = first ? first.array.module.mppCurrent : missing("strings");
  const stated = route.cable.size;
  noteChoice(sizing, `${path}.cable.size`, stated);

  const changes = (sized: Pick<SizedConductor, "size" | "ampacity">, group: StringGroup): RouteVoltageChange =>
    routeVoltageChange({
      circuit: "d.c.",
      nominalVoltage: stringVoltage({ modules: group.modules, moduleVoltage: group.array.module.mppVoltage }),
      wiring: rules.wiring,
      parts: stretches.map((stretch, part) => ({
        length: stretch.length,
        cable,
        size: sized.size!,
        current: group.array.module.mppCurrent,
        temperature: stretchTemperature(sized.ampacity!.stretches[part]!, group.array.module.mppCurrent),
      })),
    });
  const further = (size: Quantity<"area">, ampacity: NonNullable<SizedConductor["ampacity"]>): readonly Check[] => {
    const limit = plant.limits?.dcDrop;
    if (!limit || !first) return [];
    return [dcDropWithinOwnersLimit({ value: changes({ size, ampacity }, first).share, limit, at })];
  };
  const sized = sizeConductor({
    at,
    cable,
    stretches,
    loaded: 2,
    wiring: rules.wiring,
    carries: [{ what: "maximum current", current }, ...fusesOf(trackers, groups)],
    designCurrent: mppCurrent,
    continuousCurrent: current,
    terminals: first ? [terminalsOf(first.inverter, first.inverterPath, "dc", at)] : [],
    ...(stated === undefined || stated === "choose" ? {} : { size: stated }),
    further,
  });
  sizing.checks.push(...sized.checks);

  const grounding = isNecWiring(sizing) && sized.size ? groundingOf(sizing, at, current, sized.size) : null;
  const drop = new Map<StringGroup, Known<Quantity<"ratio">>>();
  for (const group of groups)
    drop.set(group, sized.size && sized.ampacity ? changes(sized, group).share : missing(`${path}.cable.size`));
  const change = first && sized.size && sized.ampacity ? changes(sized, first) : null;
  const lengths = route.stretches.map(({ length }) => length);
  return {
    groups,
    drop,
    recorded: {
      path,
      from: route.from,
      to: route.to,
      kind: "d.c.",
      cable: cableName(route),
      size: recorder.perhaps(sized.size),
      sizeName: sized.name,
      protectiveConductor: recorder.perhaps(grounding?.size),
      fixedBy: sized.fixedBy.map(({ id }) => id),
      length: recorder.number(totalLength({ lengths })),
      circuits,
      current: recorder.perhaps(current),
      ampacity: recorder.perhaps(sized.ampacity?.ampacity),
      voltageChange: recorder.perhaps(change?.change),
      voltageChangeShare: recorder.perhaps(change?.share),
      loss: recorder.perhaps(change?.loss),
      breaker: null,
      breakerCharacteristic: null,
      stretches: route.stretches.map(({ place, length }, part) => ({
        place,
        length: recorder.number(length),
        ampacity: recorder.perhaps(sized.ampacity?.stretches[part]?.ampacity),
        change: recorder.perhaps(change?.parts[part]?.change),
      })),
    },
  };
}

/** Equipment grounding conductor by the device that 690.9(B) would ask for, since string circuits may have none. */
function groundingOf(sizing: Sizing, at: string, maximumCurrent: Known<Quantity<"current">>, area: Quantity<"area">) {
  const device = whenKnown({ maximumCurrent }, (known) => continuousCurrent(known));
  return sizeEquipmentGrounding(sizing, at, device, area);
}

/** What the string cables must carry besides their own current: their fuse, or the reverse current where there is none. */
function fusesOf(
  trackers: readonly SizedTracker[],
  groups: readonly StringGroup[],
): { what: string; current: Known<Quantity<"current">> }[] {
  return trackers.flatMap(({ groups: own, fuse }) => {
    if (!fuse || !own.some((group) => groups.includes(group))) return [];
    const tracker = own[0]!.tracker.name;
    if (fuse.rating) return [{ what: `string fuse ${tracker}`, current: fuse.rating }];
    return [{ what: `reverse current ${tracker}`, current: fuse.reverseCurrent }];
  });
}
