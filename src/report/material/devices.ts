import type { PlantRecord } from "../../plant/index.js";
import { routeIndex } from "../view/rows/route-rows.js";
import { words } from "../view/cell.js";
import { shown, shownText } from "../view/number-text.js";
import type { MaterialLine } from "./material-list.js";

interface Device {
  readonly what: string;
  readonly size: string;
  readonly where: string;
  readonly count: number;
}

/** Devices by rating and number; equal ones share a line. */
export function deviceLines(record: PlantRecord): readonly MaterialLine[] {
  const byKind = new Map<string, Device[]>();
  for (const device of [
    ...breakers(record),
    ...residualCurrent(record),
    ...stringFuses(record),
    ...surgeDevices(record),
  ]) {
    const key = `${device.what} ${device.size}`;
    byKind.set(key, [...(byKind.get(key) ?? []), device]);
  }
  return [...byKind.values()].map((same): MaterialLine => {
    const [{ what, size }] = same as [Device, ...Device[]];
    const count = same.reduce((sum, device) => sum + device.count, 0);
    return {
      group: "devices",
      what,
      size,
      quantity: words(String(count)),
      unit: count === 1 ? "piece" : "pieces",
      where: same.map(({ where }) => where).join("; "),
    };
  });
}

function breakers({ routes, plant }: PlantRecord): readonly Device[] {
  return routes.flatMap((route): Device[] => {
    const { from, to, breaker, breakerCharacteristic } = route;
    if (!breaker) return [];
    const fuse = breakerCharacteristic?.startsWith("g") === true;
    const described = plant.routes[routeIndex(route)]?.breaker;
    const capacity = described?.breakingCapacity === undefined ? "" : `, ${described.breakingCapacity}`;
    const phases = plant.inverters.find(({ name }) => name === from)?.phases;
    const poles = phases === undefined ? "" : `, ${phases} line pole${phases === 1 ? "" : "s"}`;
    const size = `${breakerCharacteristic === null ? "" : `${breakerCharacteristic} `}${shownText(shown(breaker))}${capacity}${poles}`;
    return [{ what: fuse ? "fuse" : "circuit-breaker", size, where: `${from} to ${to}`, count: 1 }];
  });
}

function residualCurrent({ plant }: PlantRecord): readonly Device[] {
  return plant.routes.flatMap(({ from, to, rcd }): Device[] => {
    if (typeof rcd !== "object") return [];
    const size = [
      rcd.type === undefined ? "type not stated" : `type ${rcd.type}`,
      rcd.ratedResidualCurrent,
      rcd.ratedCurrent,
    ]
      .filter((part) => part !== undefined)
      .join(", ");
    return [{ what: "residual-current device", size, where: `${from} to ${to}`, count: 1 }];
  });
}

function stringFuses({ plant, strings, findings }: PlantRecord): readonly Device[] {
  return plant.routes.flatMap(({ from, to, stringFuse }): Device[] => {
    if (stringFuse === undefined || stringFuse === "none") return [];
    const found = findings.find(({ what, at }) => what.includes("string fuse") && at.startsWith(to))?.value;
    const chosen = typeof found === "object" && found !== null ? shownText(shown(found)) : null;
    const rating = stringFuse === "choose" ? chosen : String(stringFuse);
    const count = strings
      .filter(({ roof, inverter }) => roof === from && inverter === to)
      .reduce((sum, string) => sum + string.count, 0);
    return rating === null
      ? []
      : [{ what: "string fuse, gPV", size: rating, where: `${from} to ${to}`, count: 2 * count }];
  });
}

// Devices that are built into the inverter come with it; the others are described by their place.
function surgeDevices({ plant }: PlantRecord): readonly Device[] {
  const described = (plant.surgeDevices ?? []).map(({ at, side, type, continuousVoltage }): Device => {
    const rating = continuousVoltage === undefined ? "" : `, ${String(continuousVoltage)}`;
    return {
      what: `${side} surge protective device`,
      size: `${type ?? "type not stated"}${rating}`,
      where: at,
      count: 1,
    };
  });
  const builtIn = (device: Device): boolean =>
    plant.inverters.some(({ name, surgeProtection }) => {
      const own = device.what.startsWith("d.c.") ? surgeProtection?.dc : surgeProtection?.ac;
      return device.where === name && own !== undefined && own !== "none";
    });
  return described.filter((device) => !builtIn(device));
}
