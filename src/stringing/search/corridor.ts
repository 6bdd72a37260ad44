import { modelOf, type Problem } from "./problem.js";

/** The modules that any one inverter may take: of the first roof, of the second, and in all. */
export interface Reach {
  readonly first: readonly [number, number];
  readonly second: readonly [number, number];
  readonly both: readonly [number, number];
}

/**
 * Inverters in an order in which the models alternate evenly: after any number of them, each model has had its share, to
 * within one inverter.
 */
export function evenOrder({ units }: Problem): readonly number[] {
  const groups = new Map<string, number[]>();
  for (const [index, unit] of units.entries()) groups.set(modelOf(unit), [...(groups.get(modelOf(unit)) ?? []), index]);
  const turns = [...groups.values()].flatMap((members) =>
    members.map((index, turn) => ({ index, due: (turn + 0.5) / members.length })),
  );
  return turns.sort((a, b) => a.due - b.due || a.index - b.index).map(({ index }) => index);
}

/**
 * How far the modules taken by the first inverters may stray from an even share of all, without loss.
 *
 * Vectors of the plane that sum to zero, none longer than one by some norm, can be put in an order whose partial sums are
 * never longer than two (Steinitz). Inverters of one model may change places, so among the best stringings there is one
 * whose partial sums keep that close to the straight line from nothing to all that is placed. With several models each
 * keeps to its own line, and the models alternate evenly; what is not placed bends the line by as much at most.
 */
export function corridor(
  problem: Problem,
  reach: Reach,
  unplaced: number,
): (inverters: number, first: number, second: number) => boolean {
  const { units, roofs } = problem;
  const models = new Set(units.map(modelOf)).size;
  const [firsts, seconds = 0] = roofs as [number, number?];
  const half = ([least, most]: readonly [number, number], total: number): number => {
    if (models > 1) return (2 * models + models / 2) * (most - least) + unplaced;
    const share = total / units.length;
    const bend = unplaced / units.length;
    return 2 * (Math.max(most - share, share - least) + bend) + unplaced;
  };
  const [x, y, z] = [half(reach.first, firsts), half(reach.second, seconds), half(reach.both, firsts + seconds)];
  return (inverters, first, second) => {
    const share = inverters / units.length;
    const [dx, dy] = [first - share * firsts, second - share * seconds];
    return Math.abs(dx) <= x && Math.abs(dy) <= y && Math.abs(dx + dy) <= z;
  };
}
