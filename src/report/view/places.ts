import type { PlantRecord, RecordedCheck, RecordedRoute, RecordedString } from "../../plant/index.js";
import { numbers, type Row, words } from "./cell.js";
import { boardRows, connectionRows } from "./rows/board-rows.js";
import { inverterRows } from "./rows/inverter-rows.js";
import { moduleRows } from "./rows/module-rows.js";
import { routeIndex, routeRows } from "./rows/route-rows.js";
import { capitalised, term } from "./words.js";
import { stringRows } from "./rows/string-rows.js";

export type PlaceKind =
  "module" | "string" | "d.c. route" | "inverter" | "a.c. route" | "board" | "connection point" | "earth" | "plant";

/** A place on the way of the energy, with what was found there. */
export interface Place {
  /** Anchor of the place, the same for the same record. */
  readonly id: string;
  readonly kind: PlaceKind;
  readonly name: string;
  /** Names by which the `at` of a check finds the place. */
  readonly at: readonly string[];
  readonly rows: readonly Row[];
  readonly checks: readonly RecordedCheck[];
  readonly string?: RecordedString;
  readonly route?: RecordedRoute;
}

/** A place before the checks are dealt out. */
type Station = Omit<Place, "id" | "checks">;

/** Every place of the plant in the order in which the current flows, earth beside them. */
export function placesOf(record: PlantRecord): readonly Place[] {
  const stations = stationsOf(record);
  const found = new Map<Station, RecordedCheck[]>(stations.map((station) => [station, []]));
  for (const check of record.checks) found.get(stationOf(stations, check))!.push(check);
  const findings = new Map<Station, Row[]>();
  for (const finding of record.findings) {
    const station = stationOf(stations, { rule: `${finding.subject}/`, at: finding.at });
    const { value, what } = finding;
    const cells = typeof value === "string" ? [words(value)] : numbers(value);
    const shownAlready = station.rows.some(({ label }) => label === what);
    if (cells.length > 0 && !shownAlready)
      findings.set(station, [...(findings.get(station) ?? []), { label: what, cells }]);
  }
  return stations
    .map((station, index) => ({
      ...station,
      id: `place-${index + 1}`,
      rows: [...station.rows, ...(findings.get(stations[index]!) ?? [])],
      checks: found.get(stations[index]!)!,
    }))
    .filter(({ kind, checks, rows }) => !["earth", "plant"].includes(kind) || checks.length > 0 || rows.length > 0);
}

function stationsOf(record: PlantRecord): readonly Station[] {
  const { plant, strings, routes } = record;
  const boards = plant.boards ?? [];
  const route = (found: RecordedRoute): Station => ({
    kind: `${found.kind} route`,
    name: `${found.from} to ${found.to}${trackerOf(record, found)}`,
    at: [
      `${found.from}-${found.to}${trackerOf(record, found).replace(", tracker ", "/")}`,
      `${found.from}-${found.to}`,
    ],
    rows: routeRows(record, found),
    route: found,
  });
  return [
    ...plant.roofs.map(({ name, moduleType }, index): Station => ({
      kind: "module",
      name,
      at: [name, moduleType],
      rows: moduleRows(record, index),
    })),
    ...plant.inverters.flatMap(({ name }, index): Station[] => [
      ...strings.filter(({ inverter }) => inverter === name).map((string) => stringStation(record, string)),
      ...routes.filter(({ kind, to }) => kind === "d.c." && to === name).map(route),
      { kind: "inverter", name, at: [name], rows: inverterRows(record, index) },
      ...routes.filter(({ kind, from }) => kind === "a.c." && from === name).map(route),
    ]),
    ...boards.flatMap(({ name }, index): Station[] => [
      { kind: "board", name, at: [name], rows: boardRows(record, index) },
      ...routes.filter(({ kind, from }) => kind === "a.c." && from === name).map(route),
    ]),
    { kind: "connection point", name: `at ${plant.supply.at}`, at: [plant.supply.at], rows: connectionRows(record) },
    { kind: "earth", name: "Earth", at: [], rows: [] },
    { kind: "plant", name: plant.name, at: [], rows: [] },
  ];
}

/** The tracker of a route, where the routes of one roof differ. */
function trackerOf({ plant }: PlantRecord, route: RecordedRoute): string {
  const tracker = plant.routes[routeIndex(route)]?.tracker;
  return tracker === undefined ? "" : `, tracker ${tracker}`;
}

function stringStation(record: PlantRecord, string: RecordedString): Station {
  const { inverter, tracker, roof, modules } = string;
  const at = `${inverter}/${tracker}`;
  const shared = record.strings.some(
    (other) => other !== string && other.inverter === inverter && other.tracker === tracker,
  );
  return {
    kind: "string",
    name: `on ${inverter} ${tracker}${shared ? `, ${roof}` : ""}`,
    at: shared ? [`${at}/${roof}/${modules}`, `${at}/${roof}`] : [at],
    rows: stringRows(record, string),
    string,
  };
}

/** Kinds that the rules of a subject belong to, wherever their place is named. */
const BELONGS: Readonly<Record<string, PlaceKind>> = { grid: "connection point" };
/** Kinds for the rules of a subject whose place is none of the known names. */
const ELSE: Readonly<Record<string, PlaceKind>> = { earthing: "earth", surge: "earth" };

/** The place of a check: the one whose name its `at` is, or begins with, the longest name first. */
function stationOf(stations: readonly Station[], { rule, at }: Pick<RecordedCheck, "rule" | "at">): Station {
  const subject = rule.split("/")[0]!;
  const ofKind = (kind: PlaceKind): Station => stations.find((station) => station.kind === kind)!;
  if (BELONGS[subject]) return ofKind(BELONGS[subject]);
  let best: { readonly station: Station; readonly length: number } | undefined;
  for (const station of stations) {
    for (const name of station.at) {
      const fits = at === name || at.startsWith(`${name}/`);
      if (fits && name.length > (best?.length ?? -1)) best = { station, length: name.length };
    }
  }
  return best?.station ?? ofKind(ELSE[subject] ?? "plant");
}

/** The kind of a place, in words. */
export const placeHead = ({ kind }: Place, record: PlantRecord): string =>
  capitalised(kind === "plant" ? "whole plant" : term(kind, record));

/** The name of a place after its kind; an inverter that is called “Inverter” is not called so twice. */
export function placeName({ kind, name }: Place): string {
  return kind === "earth" || kind === "plant" || name.toLowerCase() === kind ? "" : ` ${name}`;
}

/** How many checks of a place ended how. */
export function tallyOf(checks: readonly RecordedCheck[]): Readonly<Record<RecordedCheck["verdict"], number>> {
  const tally = { met: 0, "not-met": 0, open: 0 };
  for (const { verdict } of checks) tally[verdict] += 1;
  return tally;
}
