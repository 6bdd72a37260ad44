import type { PlantRecord } from "../../../plant/index.js";

type Inverter = PlantRecord["plant"]["inverters"][number];

/** Inverters that differ in their names only, drawn once. */
export interface Alike {
  readonly inverter: Inverter;
  readonly names: readonly string[];
}

/** Groups inverters that have the same data, strings and route, in the order of the description. */
export function alikeInverters(record: PlantRecord, inverters: readonly Inverter[]): readonly Alike[] {
  const groups = new Map<string, { inverter: Inverter; names: string[] }>();
  for (const inverter of inverters) {
    const key = signature(record, inverter);
    const known = groups.get(key);
    if (known) known.names.push(inverter.name);
    else groups.set(key, { inverter, names: [inverter.name] });
  }
  return [...groups.values()];
}

function signature({ strings, routes, plant }: PlantRecord, inverter: Inverter): string {
  const { name, ...data } = inverter;
  const own = strings
    .filter((string) => string.inverter === name)
    .map(({ tracker, roof, modules, count }) => [
      tracker,
      plant.roofs.find((known) => known.name === roof)?.moduleType,
      modules,
      count,
    ]);
  const ways = routes
    .filter(({ from, to }) => from === name || to === name)
    .map(({ kind, to, cable, sizeName, protectiveConductor, breaker, length }) => [
      kind,
      kind === "a.c." ? to : "",
      cable,
      sizeName,
      protectiveConductor?.value,
      breaker?.value,
      length.value,
    ]);
  return JSON.stringify([data, own, ways]);
}

/** Several names in short: the first, the last, and how many. */
export function namesText(names: readonly string[]): string {
  const [first = ""] = names;
  const last = names.at(-1) ?? "";
  if (names.length === 1) return first;
  return names.length === 2 ? `${first} and ${last}` : `${first} … ${last} (${names.length})`;
}
