import type { Assignment, Problem } from "./problem.js";
import type { Piece } from "./roof-tables.js";

/**
 * Places trackers in inverters, the heaviest first and each where most room is left, so that no power limit is passed;
 * `null` where that does not come out. A failure proves nothing.
 */
export function pack({ units, kinds }: Problem, pieces: readonly Piece[]): Assignment | null {
  const starts = units.map((_, at) => units.slice(0, at).reduce((sum, { trackers }) => sum + trackers.length, 0));
  const assignment = units.flatMap(({ trackers }) => trackers.map(() => -1));
  const room = units.map(({ limit }) => limit);
  const placed = units.map(() => 0);
  for (const { kind, index, way } of [...pieces].sort((a, b) => b.way.power - a.way.power)) {
    let best: { unit: number; slot: number; index: number } | null = null;
    for (const [unit, { trackers }] of units.entries()) {
      if (room[unit]! < way.power || (best && !roomier(room, placed, unit, best.unit))) continue;
      for (let at = 0; at < trackers.length; at += 1) {
        const slot = starts[unit]! + at;
        const own = trackers[at] === kind ? index : sameWay(kinds[trackers[at]!]!, kinds[kind]![index]!);
        if (assignment[slot] !== -1 || own < 0) continue;
        best = { unit, slot, index: own };
        break;
      }
    }
    if (!best) return null;
    assignment[best.slot] = best.index;
    room[best.unit]! -= way.power;
    placed[best.unit]! += 1;
  }
  return assignment;
}

function roomier(room: readonly number[], placed: readonly number[], a: number, b: number): boolean {
  return room[a] !== room[b] ? room[a]! > room[b]! : placed[a]! < placed[b]!;
}

// A piece of one kind of tracker may go to another kind that has the very same way.
function sameWay(ways: Problem["kinds"][number], { uses, cost }: Problem["kinds"][number][number]): number {
  return ways.findIndex(
    (other) =>
      other.uses.every((taken, roof) => taken === uses[roof]) && other.cost.every((word, at) => word === cost[at]),
  );
}
