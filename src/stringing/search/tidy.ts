import { type Assignment, modelOf, type Problem, type Way } from "./problem.js";

/**
 * The same stringing in a tidy order: equal trackers of an inverter, and equal inverters, take the roofs in their order,
 * the longest strings first and the empty places last.
 */
export function tidy({ units, kinds }: Problem, assignment: Assignment): Assignment {
  let at = 0;
  const own = units.map(({ trackers }) => {
    const ways = trackers.map((kind, place) => ({ kind, place, way: assignment[at + place]! }));
    at += trackers.length;
    return trackers.map((kind, place) => {
      const alike = ways.filter((each) => each.kind === kind);
      const rank = alike.findIndex((each) => each.place === place);
      return alike.map(({ way }) => way).sort((a, b) => order(kinds[kind]![a], kinds[kind]![b]))[rank]!;
    });
  });
  const waysOf = (unit: number): readonly (Way | undefined)[] =>
    units[unit]!.trackers.map((kind, place) => kinds[kind]![own[unit]![place]!]);
  const tidied = [...own];
  for (const model of new Set(units.map(modelOf))) {
    const members = units.flatMap((unit, index) => (modelOf(unit) === model ? [index] : []));
    const sorted = [...members].sort((a, b) => orderOfUnits(waysOf(a), waysOf(b)));
    for (const [rank, member] of members.entries()) tidied[member] = own[sorted[rank]!]!;
  }
  return tidied.flat();
}

function order(a: Way | undefined, b: Way | undefined): number {
  if (!a || !b) return Number(!a) - Number(!b);
  const first = ({ uses }: Way): number => uses.findIndex((taken) => taken > 0);
  return first(a) - first(b) || b.modules - a.modules;
}

function orderOfUnits(a: readonly (Way | undefined)[], b: readonly (Way | undefined)[]): number {
  for (const [place, way] of a.entries()) {
    const difference = order(way, b[place]);
    if (difference !== 0) return difference;
  }
  return 0;
}
