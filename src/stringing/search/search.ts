import { InverterSearch } from "./inverter-search.js";
import type { Reins, Walked } from "./walk.js";
import { InverterTable } from "./inverter-table.js";
import { isLarge, searchInParts } from "./in-parts.js";
import { KindTables, kindsAreFew } from "./kind-tables.js";
import { pack } from "./packing.js";
import { allMultipliersOf } from "./prices.js";
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
import { TrackerBound } from "./tracker-bound.js";
import { TrackerSearch } from "./tracker-search.js";

/** How much work a search may do before it settles for the best that it has. */
interface Effort {
  /** Widths of the quick walks that come before the complete one. */
  readonly widths: readonly number[];
  /** Partial stringings that the complete walk may look at. */
  readonly budget: number;
  /** Width of a last walk where the complete one was broken off. */
  readonly lastWidth: number;
}

/** Enough for the sizes that are promised. */
const USUAL_EFFORT: Effort = { widths: [8, 64], budget: 4_000_000, lastWidth: 256 };
/** For more than two roofs, where each step is dear. */
const ROOFS_EFFORT: Effort = { widths: [8, 32], budget: 300_000, lastWidth: 64 };
/** And for many of them on many trackers. */
const SMALL_EFFORT: Effort = { widths: [8], budget: 400_000, lastWidth: 24 };
const MANY = 300;

function effortFor({ roofs, units }: Problem): Effort {
  const trackers = units.reduce((sum, unit) => sum + unit.trackers.length, 0);
  if (roofs.length < 3) return USUAL_EFFORT;
  return roofs.length * trackers > MANY ? SMALL_EFFORT : ROOFS_EFFORT;
}

/**
 * Finds the assignment of least cost. Strings of several roofs on one tracker are tried only where they could place more
 * modules or save a fuse, since one such tracker costs more than anything that comes after.
 */
export function search(problem: Problem): Found {
  if (isLarge(problem)) return searchInParts(problem, search);
  const effort = effortFor(problem);
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
  // A tracker for strings of several roofs costs one in the first word, after modules and fuses: it can only be worth its
  // while where the first word may still fall.
  const total = problem.roofs.reduce((sum, modules) => sum + modules, 0);
  const prices = problem.roofs.map(() => NOTHING);
  const [least] = new TrackerBound(problem, prices).at(0, 0, problem.roofs, total, Infinity);
  const floor = Math.max(least, -problem.worth * mostPlaced(problem));
  return first.cost[0] <= floor ? first : solve(problem, effort, false, first);
}

/** Modules that could be placed if each roof had all trackers to itself. */
function mostPlaced({ roofs, kinds, units }: Problem): number {
  return roofs.reduce((sum, modules, roof) => {
    let reached = new Set([0]);
    for (const kind of units.flatMap(({ trackers }) => trackers)) {
      const taken = new Set(kinds[kind]!.map(({ uses }) => uses[roof]!));
      const next = new Set(reached);
      for (const used of reached) for (const more of taken) if (used + more <= modules) next.add(used + more);
      if (next.size === reached.size) continue;
      reached = next;
    }
    return sum + Math.max(...reached);
  }, 0);
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
  if (roofs) settle(pack(problem, roofs.pieces(trackers, problem.roofs)));
  if (roofs && kindsAreFew(problem)) {
    const tables = new KindTables(problem);
    bound = larger(bound, tables.bound());
    settle(pack(problem, tables.pieces()));
  }
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
  return new InverterSearch(problem, tables, allMultipliersOf(problem, tables), roofs);
}
