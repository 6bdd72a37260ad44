import { InverterSearch, type Reins, type Walked } from "./inverter-search.js";
import { InverterTable } from "./inverter-table.js";
import { pack } from "./packing.js";
import { priceOf } from "./prices.js";
import {
  type Assignment,
  type Cost,
  costOf,
  type Found,
  isLess,
  isSame,
  larger,
  modelOf,
  NOTHING,
  type Problem,
} from "./problem.js";
import { RoofTables } from "./roof-tables.js";
import { TrackerSearch } from "./tracker-search.js";

/** How much work a search may do before it settles for the best that it has. */
export interface Effort {
  /** Widths of the quick walks that come before the complete one. */
  readonly widths: readonly number[];
  /** Partial stringings that the complete walk may look at. */
  readonly budget: number;
  /** Width of a last walk where the complete one was broken off. */
  readonly lastWidth: number;
}

/** Enough for the sizes that are promised. */
export const USUAL_EFFORT: Effort = { widths: [8, 64], budget: 10_000_000, lastWidth: 512 };

/**
 * Finds the assignment of least cost. Strings of several roofs on one tracker are tried only where they could place more
 * modules or save a fuse, since one such tracker costs more than anything that comes after.
 */
export function search(problem: Problem, effort: Effort = USUAL_EFFORT): Found {
  const plain = { ...problem, kinds: problem.kinds.map((ways) => ways.map((way) => (way.mixed ? null : way))) };
  const kept = plain.kinds.map((ways) => ways.flatMap((way, index) => (way ? [index] : [])));
  const unmixed: Problem = { ...problem, kinds: plain.kinds.map((ways) => ways.flatMap((way) => way ?? [])) };
  const found = solve(unmixed, effort, true, null);
  const kinds = problem.units.flatMap(({ trackers }) => trackers);
  const first: Found = {
    ...found,
    assignment: found.assignment.map((way, at) => (way < 0 ? way : kept[kinds[at]!]![way]!)),
  };
  if (problem.kinds.every((ways) => ways.every(({ mixed }) => !mixed))) return first;
  const all = solve(problem, effort, false, first);
  return all;
}

interface Walker {
  bound: () => Cost;
  walk: (reins: Reins) => Walked;
}

function solve(problem: Problem, { widths, budget, lastWidth }: Effort, unmixed: boolean, known: Found | null): Found {
  const trackers = problem.units.reduce((sum, unit) => sum + unit.trackers.length, 0);
  const roofs = unmixed ? new RoofTables(problem, trackers) : null;
  const walker = walkerFor(problem, roofs);
  let best: { assignment: Assignment; cost: Cost } = known ?? {
    assignment: kindsOf(problem).map(() => -1),
    cost: NOTHING,
  };
  let bound = larger(walker.bound(), roofs ? roofs.bound(trackers, problem.roofs) : walker.bound());
  const settle = (assignment: Assignment | null): void => {
    if (!assignment) return;
    const cost = costOf(problem, assignment);
    if (isLess(cost, best.cost)) best = { assignment, cost };
  };
  // A tracker for strings of several roofs costs one in the first word, after modules and fuses.
  if (known && best.cost[0] <= bound[0]) return { ...best, bound: known.bound };
  if (roofs) settle(pack(problem, roofs.pieces(trackers, problem.roofs)));
  for (const width of [...widths, Infinity, lastWidth]) {
    if (isSame(best.cost, bound)) break;
    const { assignment, complete } = walker.walk({ width, limit: best.cost, budget });
    settle(assignment);
    if (complete) bound = best.cost;
  }
  return { ...best, bound };
}

function kindsOf({ units }: Problem): readonly number[] {
  return units.flatMap(({ trackers }) => trackers);
}

function walkerFor(problem: Problem, roofs: RoofTables | null): Walker {
  if (problem.roofs.length > 2)
    return new TrackerSearch(
      problem,
      problem.roofs.map(() => NOTHING),
      roofs,
    );
  const tables = new Map<string, InverterTable>();
  for (const unit of problem.units)
    if (!tables.has(modelOf(unit))) tables.set(modelOf(unit), new InverterTable(problem, unit));
  return new InverterSearch(problem, tables, priceOf(problem, tables), roofs);
}
