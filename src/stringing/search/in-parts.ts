import { type Cost, costOf, type Found, type Problem } from "./problem.js";

/** Sizes up to which a plant is searched as a whole. */
const MOST_MODULES = 8000;
const MOST_TRACKERS = 400;

/** Whether a plant is searched in parts. */
export function isLarge({ roofs, units }: Problem): boolean {
  return totalOf(roofs) > MOST_MODULES || trackersOf(units) > MOST_TRACKERS;
}

/**
 * Searches a large plant part by part: each part has its share of the inverters and of every roof, and what a part leaves
 * unused goes on to the next. The result is the best of its parts and not proven for the whole; the bound is the cost of
 * placing every module for nothing.
 */
export function searchInParts(problem: Problem, search: (part: Problem) => Found): Found {
  const { roofs, units } = problem;
  const parts = Math.ceil(
    Math.max((totalOf(roofs) * SPARE) / MOST_MODULES, (trackersOf(units) * SPARE) / MOST_TRACKERS),
  );
  const starts = units.map((_, at) => trackersOf(units.slice(0, at)));
  const assignment: number[] = units.flatMap(({ trackers }) => trackers.map(() => -1));
  let left = [...roofs];
  for (let part = 0; part < parts; part += 1) {
    const own = units.flatMap((_, at) => (at % parts === part ? [at] : []));
    const share = left.map((modules) => Math.ceil(modules / (parts - part)));
    const found = search({ ...problem, roofs: share, units: own.map((at) => units[at]!) });
    let taken = 0;
    for (const at of own) {
      for (const [place, kind] of units[at]!.trackers.entries()) {
        const way = found.assignment[taken + place]!;
        assignment[starts[at]! + place] = way;
        left = left.map((modules, roof) => modules - (problem.kinds[kind]![way]?.uses[roof] ?? 0));
      }
      taken += units[at]!.trackers.length;
    }
  }
  return { assignment, cost: costOf(problem, assignment), bound: cheapest(problem) };
}

// Leaves room for what earlier parts hand on.
const SPARE = 1.25;

function totalOf(roofs: readonly number[]): number {
  return roofs.reduce((sum, modules) => sum + modules, 0);
}

function trackersOf(units: Problem["units"]): number {
  return units.reduce((sum, { trackers }) => sum + trackers.length, 0);
}

function cheapest({ roofs, kinds, units, worth }: Problem): Cost {
  const least = kinds.map((ways) => ways.reduce((low, { cost }) => Math.min(low, cost[2]), 0));
  const third = units.reduce((sum, { trackers }) => sum + trackers.reduce((low, kind) => low + least[kind]!, 0), 0);
  return [-worth * totalOf(roofs), 0, third];
}
