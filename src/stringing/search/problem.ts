/**
 * The search in plain whole numbers: what each way of using a tracker consumes and costs. Ratings, voltages and rules are
 * settled before; nothing here knows of electricity.
 */

/** A cost in three words, compared word by word; every word is a whole number that a double holds exactly. */
export type Cost = readonly [number, number, number];

/** One way to use a tracker. */
export interface Way {
  /** Modules of each roof that it takes. */
  readonly uses: readonly number[];
  /** Modules that it takes in all. */
  readonly modules: number;
  /** Power of those modules, in the problem's unit of power. */
  readonly power: number;
  /** Cost above that of an empty tracker. */
  readonly cost: Cost;
  /** Whether it joins strings of several roofs. */
  readonly mixed: boolean;
}

/** An inverter: its trackers, each by the index of its kind, and the largest power of its array. */
export interface Unit {
  readonly trackers: readonly number[];
  readonly limit: number;
}

/** Modules to be placed, and the trackers that may take them. */
export interface Problem {
  /** Modules of each roof. */
  readonly roofs: readonly number[];
  /** Power of one module of each roof. */
  readonly powers: readonly number[];
  /** The ways of each kind of tracker, an empty one not among them. */
  readonly kinds: readonly (readonly Way[])[];
  readonly units: readonly Unit[];
  /** What the first word falls by with each module that is placed. */
  readonly worth: number;
}

/** The way of each tracker in order, as an index into the ways of its kind; −1 for an empty one. */
export type Assignment = readonly number[];

/** What a search found. */
export interface Found {
  readonly assignment: Assignment;
  readonly cost: Cost;
  /** No stringing can cost less than this. */
  readonly bound: Cost;
}

export const NOTHING: Cost = [0, 0, 0];
export const IMPOSSIBLE: Cost = [Infinity, Infinity, Infinity];

/** Whether one cost is less than another. */
export function isLess(a: Cost, b: Cost): boolean {
  return a[0] !== b[0] ? a[0] < b[0] : a[1] !== b[1] ? a[1] < b[1] : a[2] < b[2];
}

export function isSame(a: Cost, b: Cost): boolean {
  return a[0] === b[0] && a[1] === b[1] && a[2] === b[2];
}

export function sumOf(a: Cost, b: Cost): Cost {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

export function times(cost: Cost, count: number): Cost {
  return [cost[0] * count, cost[1] * count, cost[2] * count];
}

export function less(a: Cost, b: Cost): Cost {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

export function larger(a: Cost, b: Cost): Cost {
  return isLess(a, b) ? b : a;
}

/** For sorting by cost, the least first. */
export function compare(a: Cost, b: Cost): number {
  return a[0] !== b[0] ? a[0] - b[0] : a[1] !== b[1] ? a[1] - b[1] : a[2] - b[2];
}

/** What an assignment costs above empty trackers. */
export function costOf({ kinds, units }: Problem, assignment: Assignment): Cost {
  const trackers = units.flatMap((unit) => unit.trackers);
  return trackers.reduce<Cost>((sum, kind, at) => {
    const way = kinds[kind]![assignment[at]!];
    return way ? sumOf(sum, way.cost) : sum;
  }, NOTHING);
}

/** Units that are alike share a key. */
export function modelOf({ trackers, limit }: Unit): string {
  return `${trackers.join(",")}|${limit}`;
}
