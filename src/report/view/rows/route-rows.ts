import type { PlantRecord, RecordedRoute } from "../../../plant/index.js";
import { type Cell, filled, numbers, percent, type Row, words } from "../cell.js";
import { countedFact, fact, wasChosen } from "../description.js";
import { term } from "../words.js";

/** Index of a route in the description. */
export const routeIndex = ({ path }: RecordedRoute): number => Number(/\d+/.exec(path)?.[0] ?? -1);

/** A route: its cable, what it carries, what it loses, and the device at its end. */
export function routeRows(record: PlantRecord, route: RecordedRoute): readonly Row[] {
  const index = routeIndex(route);
  const { cable, size, sizeName, protectiveConductor, length, circuits, current, ampacity, fixedBy } = route;
  const { voltageChange, voltageChangeShare, loss, breaker, breakerCharacteristic } = route;
  const change = route.kind === "d.c." ? "voltage drop" : "voltage rise";
  const sized =
    size && sizeName !== null && /AWG|kcmil/.test(sizeName)
      ? [words(sizeName), words("="), ...numbers(size)]
      : numbers(size);
  return filled([
    { label: "cable", cells: cable === "" ? [] : [words(cable)] },
    {
      label: term("section", record),
      symbol: "S",
      cells: sized,
      chosen: wasChosen(record, "routes", index, "cable", "size"),
      fixedBy,
    },
    {
      label: term("protective conductor", record),
      symbol: "S_PE",
      cells: numbers(protectiveConductor),
      chosen: wasChosen(record, "routes", index, "cable", "protectiveConductor"),
    },
    { label: "length, one way", cells: numbers(length) },
    { label: "equal circuits", cells: circuits > 1 ? [countedFact(circuits, "strings")] : [] },
    { label: "current", symbol: "I", cells: numbers(current) },
    { label: "current-carrying capacity", symbol: "I_z", cells: numbers(ampacity) },
    { label: change, symbol: "ΔU", cells: joined(numbers(voltageChange), percent(voltageChangeShare)) },
    { label: "power lost", cells: numbers(loss) },
    {
      label: breakerCharacteristic?.startsWith("g") ? "fuse" : "circuit-breaker",
      symbol: "I_n",
      cells: breaker
        ? [...(breakerCharacteristic === null ? [] : [words(breakerCharacteristic)]), ...numbers(breaker)]
        : [],
      chosen: wasChosen(record, "routes", index, "breaker", "rating"),
    },
    { label: term("residual-current device", record), cells: fact(record, "routes", index, "rcd") },
  ]);
}

function joined(first: readonly Cell[], second: readonly Cell[]): readonly Cell[] {
  return first.length > 0 && second.length > 0 ? [...first, words("="), ...second] : [...first, ...second];
}
