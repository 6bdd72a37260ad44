import type { PlantRecord, RecordedRoute, RecordedString } from "../../../plant/index.js";
import { shown, shownText } from "../../view/number-text.js";
import { routeIndex } from "../../view/rows/route-rows.js";
import { type Note, type Part, wrapped } from "./column.js";
import {
  circuitBreaker,
  conductors,
  energyMeter,
  fuse,
  photovoltaicGenerator,
  residualCurrentDevice,
  switchDisconnector,
} from "./symbols.js";

type Inverter = PlantRecord["plant"]["inverters"][number];
type Route = PlantRecord["plant"]["routes"][number];

const LINE = 20;
const isFuse = (device: string): boolean => /^\s*(g|a)[A-Z]/.test(device);

/** The symbols from a string to its inverter. */
export function stringParts(record: PlantRecord, string: RecordedString): readonly Part[] {
  const { plant, routes } = record;
  const roof = plant.roofs.find(({ name }) => name === string.roof);
  const route = routes.find(({ from, to }) => from === string.roof && to === string.inverter);
  const inverter = plant.inverters.find(({ name }) => name === string.inverter);
  const chosen = record.chosen.includes("strings");
  const generator: Part = {
    draw: photovoltaicGenerator,
    notes: [
      ...wrapped(string.roof, LINE).map((text): Note => ({ text, weight: "bold" })),
      { text: `${string.count > 1 ? `${string.count} strings of ` : ""}${string.modules} ×`, chosen },
      ...wrapped(roof?.moduleType ?? "modules", LINE).map((text) => ({ text })),
    ],
  };
  return [
    generator,
    ...(route ? [...fuseParts(record, route), cablePart(record, route, 2)] : []),
    ...dcSwitchParts(inverter),
  ];
}

function fuseParts(record: PlantRecord, route: RecordedRoute): readonly Part[] {
  const index = routeIndex(route);
  const stated = record.plant.routes[index]?.stringFuse;
  if (stated === undefined || stated === "none") return [];
  const chosen = stated === "choose";
  const rating = chosen
    ? record.findings.find(({ what, at }) => what.includes("string fuse") && at.startsWith(route.to))?.value
    : stated;
  const text =
    typeof rating === "object" && rating !== null
      ? shownText(shown(rating))
      : rating === undefined || rating === null
        ? ""
        : String(rating);
  return [{ draw: fuse, notes: [{ text: "string fuse" }, { text: `gPV ${text}`, chosen }] }];
}

function dcSwitchParts(inverter: Inverter | undefined): readonly Part[] {
  const dcSwitch = inverter?.dcSwitch;
  if (typeof dcSwitch !== "object") return [];
  return [
    {
      draw: switchDisconnector,
      notes: [{ text: "d.c. switch" }, { text: `${dcSwitch.ratedCurrent}, ${dcSwitch.ratedVoltage}` }],
    },
  ];
}

/** A cable with its number of line conductors, its section and its length. */
export function cablePart(record: PlantRecord, route: RecordedRoute, lines: number): Part {
  const { size, sizeName, protectiveConductor, length, cable } = route;
  const index = routeIndex(route);
  const chosen = (key: string): boolean => record.chosen.includes(`routes[${index}].cable.${key}`);
  const section = sizeName ?? (size ? shownText(shown(size)) : "not sized");
  return {
    draw: (x, y) => conductors(x, y, lines),
    notes: [
      ...wrapped(cable, LINE).map((text) => ({ text })),
      { text: section, chosen: chosen("size") },
      ...(protectiveConductor
        ? [{ text: `PE ${shownText(shown(protectiveConductor))}`, chosen: chosen("protectiveConductor") }]
        : []),
      { text: shownText(shown(length)) },
    ],
  };
}

/** The symbols of an a.c. route: its cable, then the devices at the board. */
export function acRouteParts(record: PlantRecord, route: RecordedRoute, phases: number): readonly Part[] {
  const index = routeIndex(route);
  const { breaker, breakerCharacteristic } = route;
  const chosen = record.chosen.includes(`routes[${index}].breaker.rating`);
  const device: readonly Part[] = breaker
    ? [
        {
          draw: isFuse(breakerCharacteristic ?? "") ? fuse : circuitBreaker,
          notes: [
            {
              text: `${breakerCharacteristic === null ? "" : `${breakerCharacteristic} `}${shownText(shown(breaker))}`,
              chosen,
            },
          ],
        },
      ]
    : [];
  return [cablePart(record, route, Math.max(phases, 2)), ...rcdParts(record.plant.routes[index]?.rcd), ...device];
}

function rcdParts(rcd: Route["rcd"]): readonly Part[] {
  if (typeof rcd !== "object") return [];
  const text = [rcd.type === undefined ? "RCD" : `RCD type ${rcd.type}`, rcd.ratedResidualCurrent]
    .filter((part) => part !== undefined)
    .join(", ");
  return [{ draw: residualCurrentDevice, notes: [{ text }] }];
}

/** The symbols from the board of the supply to the network. */
export function supplyParts({ plant }: PlantRecord): readonly Part[] {
  const board = plant.boards?.find(({ name }) => name === plant.supply.at);
  const mainSwitch: readonly Part[] =
    board?.mainSwitch === undefined
      ? []
      : [{ draw: switchDisconnector, notes: [{ text: "main switch" }, { text: String(board.mainSwitch) }] }];
  const device = plant.supply.serviceDevice ?? board?.supplyDevice;
  const service: readonly Part[] =
    device === undefined
      ? []
      : [
          {
            draw: isFuse(device) ? fuse : circuitBreaker,
            notes: [{ text: "service device" }, ...wrapped(device, LINE).map((text) => ({ text }))],
          },
        ];
  return [...mainSwitch, { draw: energyMeter, notes: [{ text: "meter" }] }, ...service];
}
