import { isQuantity, type Quantity } from "../../quantity/index.js";
import { stepOf } from "../../formula/index.js";
import {
  conductorLength,
  lengthToOrder,
  type PlantRecord,
  type RecordedNumber,
  type RecordedRoute,
} from "../../plant/index.js";
import type { Cell } from "../view/cell.js";
import { fact, words } from "../view/description.js";
import { shown, shownText } from "../view/number-text.js";
import { routeIndex } from "../view/rows/route-rows.js";
import { deviceLines } from "./devices.js";

/** One line of the material list. */
export interface MaterialLine {
  readonly group: "cables" | "modules and inverters" | "devices";
  readonly what: string;
  readonly size: string;
  readonly quantity: Cell;
  readonly unit: string;
  /** Where it belongs. */
  readonly where: string;
}

/** Allowance on cable lengths where the caller gives none. */
export const CABLE_ALLOWANCE = "10 %";

/** What the plant is built of: cables by type and section, modules, inverters, devices by rating. */
export function materialList(record: PlantRecord, allowance: string = CABLE_ALLOWANCE): readonly MaterialLine[] {
  return [...moduleLines(record), ...cableLines(record, allowance), ...deviceLines(record)];
}

function moduleLines(record: PlantRecord): readonly MaterialLine[] {
  const { plant } = record;
  const modules = plant.roofs.map(({ name, moduleType }, index): MaterialLine => ({
    group: "modules and inverters",
    what: "module",
    size: moduleType,
    quantity: fact(record, "roofs", index, "modules")[0]!,
    unit: "pieces",
    where: name,
  }));
  const inverters = plant.inverters.map(({ name, apparentPower }): MaterialLine => ({
    group: "modules and inverters",
    what: "inverter",
    size: typeof apparentPower === "number" ? `${apparentPower} VA` : apparentPower,
    quantity: words("1"),
    unit: "piece",
    where: name,
  }));
  return [...modules, ...inverters];
}

interface Laid {
  readonly route: RecordedRoute;
  readonly what: string;
  readonly size: string;
  readonly length: Quantity<"length">;
}

function cableLines(record: PlantRecord, allowance: string): readonly MaterialLine[] {
  const byType = new Map<string, Laid[]>();
  for (const laid of record.routes.flatMap((route) => laidAlong(record, route))) {
    const key = `${laid.what} ${laid.size}`;
    byType.set(key, [...(byType.get(key) ?? []), laid]);
  }
  return [...byType.values()].map((parts): MaterialLine => {
    const [{ what, size }] = parts as [Laid, ...Laid[]];
    const total = lengthToOrder({ lengths: parts.map(({ length }) => length), cableAllowance: allowance });
    return {
      group: "cables",
      what,
      size,
      quantity: made(total, parts),
      unit: "m",
      where: parts.map(({ route }) => `${route.from} to ${route.to}`).join("; "),
    };
  });
}

/** Cables of one route by what has to be bought: one of several cores, or one for each conductor. */
function laidAlong(record: PlantRecord, route: RecordedRoute): readonly Laid[] {
  const { kind, cable, size, sizeName, protectiveConductor, length, circuits, from } = route;
  const described = record.plant.routes[routeIndex(route)]?.cable;
  const parallel = described?.parallel ?? 1;
  const section = sizeName ?? (size ? shownText(shown(size)) : "not sized");
  const laid = (what: string, name: string, cables: number): Laid => ({
    route,
    what,
    size: name,
    length: conductorLength({
      length: `${length.value} ${length.unit}`,
      circuits: String(circuits),
      cables: String(cables),
    }),
  });
  if (kind === "d.c.") return [laid(cable, section, 2 * parallel)];
  if (described?.kind !== "single-core") {
    const earth =
      protectiveConductor && size && protectiveConductor.value !== size.value
        ? `, PE ${shownText(shown(protectiveConductor))}`
        : "";
    return [laid(cable, `${section}${earth}`, parallel)];
  }
  const phases = record.plant.inverters.find(({ name }) => name === from)?.phases ?? 3;
  const neutral = described.neutral === "none" ? 0 : 1;
  return [
    laid(cable, section, (phases + neutral) * parallel),
    ...(protectiveConductor ? [laid("protective conductor", shownText(shown(protectiveConductor)), 1)] : []),
  ];
}

/** A length reckoned here, with its working. */
function made(total: Quantity<"length">, parts: readonly Laid[]): Cell {
  const { about, equation, substituted } = stepOf(total);
  const lengths = parts.map(({ length }) => stepOf(length).substituted ?? "");
  const { uses } = stepOf(total);
  const allowance = uses["cableAllowance"];
  const share = isQuantity(allowance) ? ` where a = ${allowance.text}` : "";
  return {
    kind: "made",
    value: total.text,
    unit: total.unit,
    about,
    equation: equation ?? "",
    substituted: `${substituted ?? ""}; lengths: ${lengths.join("; ")}${share}`,
    from: parts.map(({ route }): RecordedNumber => route.length),
  };
}
