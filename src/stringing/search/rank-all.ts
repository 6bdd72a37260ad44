import { type Assignment, type Cost, NOTHING, type Problem } from "./problem.js";
import { TrackerSearch } from "./tracker-search.js";

const MOST_STATES = 20_000;
const MOST_LOOKS = 400_000;

/** The best assignments, one for each cost; `null` where the plant is too large to rank them without gaps. */
export function rankAll(
  problem: Problem,
  count: number,
): readonly { readonly assignment: Assignment; readonly cost: Cost }[] | null {
  const states = problem.roofs.reduce((product, modules) => product * (modules + 1), 1);
  const trackers = problem.units.reduce((sum, unit) => sum + unit.trackers.length, 0);
  if (states * trackers > MOST_STATES) return null;
  const walker = new TrackerSearch(
    problem,
    problem.roofs.map(() => NOTHING),
    null,
  );
  return walker.rank(count, MOST_LOOKS);
}
