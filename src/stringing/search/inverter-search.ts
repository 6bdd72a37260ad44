import { corridor, evenOrder, type Reach } from "./corridor.js";
import { type Bound, InverterBounds } from "./inverter-bounds.js";
import type { InverterTable } from "./inverter-table.js";
import { type Column, type PricedColumns, pricedColumns } from "./priced-columns.js";
import type { Multipliers } from "./prices.js";
import {
  type Assignment,
  compare,
  type Cost,
  isLess,
  larger,
  modelOf,
  NOTHING,
  type Problem,
  sumOf,
  times,
} from "./problem.js";
import type { RoofTables } from "./roof-tables.js";
import { insert, type Reins, type Walked } from "./walk.js";

/** A partial stringing: the first inverters are settled. */
interface Node {
  readonly first: number;
  readonly second: number;
  readonly cost: Cost;
  readonly bound: Cost;
  readonly parent: Node | null;
  readonly column: Column | null;
}

/** The search inverter by inverter, for one or two roofs: exact dynamic programming over what is left of each. */
export class InverterSearch {
  readonly #problem: Problem;
  readonly #order: readonly number[];
  readonly #columns: readonly PricedColumns[];
  readonly #tables: readonly InverterTable[];
  readonly #bounds: InverterBounds;
  /** The same under multipliers for other proportions of what is left. */
  readonly #others: readonly InverterBounds[];
  readonly #trackersFrom: readonly number[];
  readonly #price: Cost;
  readonly #roofs: RoofTables | null;
  readonly #start: readonly [number, number];

  /** @param roofs - tables for a further bound; `null` where strings of several roofs may share a tracker */
  constructor(
    problem: Problem,
    tables: ReadonlyMap<string, InverterTable>,
    [multipliers, ...others]: readonly [Multipliers, ...Multipliers[]],
    roofs: RoofTables | null,
  ) {
    this.#problem = problem;
    this.#price = multipliers.difference;
    this.#roofs = problem.roofs.length === 1 ? null : roofs;
    this.#start = [problem.roofs[0]!, problem.roofs[1] ?? 0];
    this.#order = evenOrder(problem);
    const priced = new Map([...tables].map(([model, table]) => [model, pricedColumns(table, this.#price)]));
    const units = this.#order.map((index) => problem.units[index]!);
    this.#tables = units.map((unit) => tables.get(modelOf(unit))!);
    this.#columns = units.map((unit) => priced.get(modelOf(unit))!);
    this.#bounds = new InverterBounds(problem, this.#tables, multipliers);
    this.#others = others.map((each) => new InverterBounds(problem, this.#tables, each));
    const counts = units.map(({ trackers }) => trackers.length);
    this.#trackersFrom = [...counts, 0].map((_, index) => counts.slice(index).reduce((sum, count) => sum + count, 0));
  }

  /** What no stringing can cost less than. */
  bound(): Cost {
    return this.#boundOf(0, ...this.#start, NOTHING, UNLIMITED);
  }

  walk({ width, limit, budget }: Reins): Walked {
    const [first, second] = this.#start;
    const units = this.#columns.length;
    const whole = width === Infinity;
    const within = whole ? corridor(this.#problem, this.#reach(limit), this.#unplaced(limit)) : null;
    let layer: readonly Node[] = [{ first, second, cost: NOTHING, bound: this.bound(), parent: null, column: null }];
    let looked = 0;
    for (let unit = 0; unit < units; unit += 1) {
      const found = new Map<number, Node>();
      for (const node of layer) {
        looked += within
          ? this.#expand(node, unit, limit, found, (a, b) => within(unit + 1, first - a, second - b))
          : this.#promising(node, unit, limit, width, found);
        if (looked > budget) return { assignment: null, cost: null, complete: false };
      }
      layer = whole ? [...found.values()] : this.#best([...found.values()], unit + 1, width, limit);
    }
    const best = layer.reduce<Node | null>(
      (least, node) => (least && !isLess(node.cost, least.cost) ? least : node),
      null,
    );
    return { assignment: best ? this.#assignmentOf(best) : null, cost: best?.cost ?? null, complete: whole };
  }

  /** The bounds in turn, the quick ones first, until one of them shows that a node cannot beat the limit. */
  #boundOf(unit: number, first: number, second: number, cost: Cost, limit: Cost): Cost {
    if (unit === this.#columns.length) return cost;
    const [a, b, c] = this.#bounds.pooled(unit, first, second);
    const quick = { a, b, c };
    this.#raise(quick, unit, first, second);
    let rest: Cost = [quick.a, quick.b, quick.c];
    if (!this.#roofs || !isLess(sumOf(cost, rest), limit)) return sumOf(cost, rest);
    const trackers = this.#trackersFrom[unit]!;
    rest = larger(rest, this.#roofs.apart([first, second], trackers));
    if (!isLess(sumOf(cost, rest), limit)) return sumOf(cost, rest);
    return sumOf(cost, larger(rest, this.#roofs.bound(trackers, [first, second])));
  }

  /** Raises a bound of what is left to what the quick bounds say of it. */
  #raise(bound: Bound, unit: number, first: number, second: number): void {
    this.#bounds.raise(bound, unit, first, second, false);
    for (const bounds of this.#others) bounds.raise(bound, unit, first, second, true);
  }

  /** The numbers of modules that the next inverter may take, with what a stringing that goes on so must cost at least. */
  #counts(node: Node, unit: number, limit: Cost): { modules: number; bound: Cost }[] {
    const { least } = this.#columns[unit]!;
    const base = sumOf(node.cost, times(this.#price, node.second));
    const left = node.first + node.second;
    const after = this.#bounds.pooledFrom(unit + 1);
    const counts: { modules: number; bound: Cost }[] = [];
    for (let modules = 0; modules <= Math.min(left, least.size - 1); modules += 1) {
      if (!least.has(modules)) continue;
      const bound = sumOf(base, sumOf(least.get(modules), after.get(left - modules)));
      if (isLess(bound, limit)) counts.push({ modules, bound });
    }
    return counts;
  }

  /** Adds everything that may follow a node and beat the limit; says how many columns were looked at. */
  #expand(
    node: Node,
    unit: number,
    limit: Cost,
    found: Map<number, Node>,
    within: (first: number, second: number) => boolean,
  ): number {
    const { byModules } = this.#columns[unit]!;
    let looked = 0;
    for (const { modules, bound } of this.#counts(node, unit, limit)) {
      for (const column of byModules[modules]!) {
        looked += 1;
        if (!isLess(sumOf(bound, column.excess), limit)) break;
        const [first, second] = [node.first - column.first, node.second - column.second];
        if (first < 0 || second < 0 || !within(first, second)) continue;
        const key = first * (this.#start[1] + 1) + second;
        const cost = sumOf(node.cost, column.cost);
        const known = found.get(key);
        if (known && !isLess(cost, known.cost)) continue;
        const sure = this.#boundOf(unit + 1, first, second, cost, limit);
        if (isLess(sure, limit)) found.set(key, { first, second, cost, bound: sure, parent: node, column });
      }
    }
    return looked;
  }

  /** Adds the most promising of what may follow a node. */
  #promising(node: Node, unit: number, limit: Cost, width: number, found: Map<number, Node>): number {
    const { byModules } = this.#columns[unit]!;
    const last = unit + 1 === this.#columns.length;
    const top: Node[] = [];
    let looked = 0;
    const order = this.#ranked;
    const most = Math.min(width, EACH);
    const rest = { a: 0, b: 0, c: 0 };
    for (const { modules, bound } of this.#counts(node, unit, limit).sort((a, b) => compare(a.bound, b.bound))) {
      if (top.length === most && isLess(top.at(-1)!.bound, bound)) break;
      for (const column of byModules[modules]!) {
        looked += 1;
        const hope = sumOf(bound, column.excess);
        if (top.length === most && isLess(top.at(-1)!.bound, hope)) break;
        const [first, second] = [node.first - column.first, node.second - column.second];
        if (first < 0 || second < 0) continue;
        const cost = sumOf(node.cost, column.cost);
        [rest.a, rest.b, rest.c] = [hope[0] - cost[0], hope[1] - cost[1], hope[2] - cost[2]];
        if (!last) this.#raise(rest, unit + 1, first, second);
        const sure: Cost = [cost[0] + rest.a, cost[1] + rest.b, cost[2] + rest.c];
        if (isLess(sure, limit)) insert(top, { first, second, cost, bound: sure, parent: node, column }, most, order);
      }
    }
    for (const next of top) {
      const key = next.first * (this.#start[1] + 1) + next.second;
      const known = found.get(key);
      if (!known || isLess(next.cost, known.cost)) found.set(key, next);
    }
    return looked;
  }

  // Of equals those come first that leave both roofs in the proportion in which they began.
  readonly #ranked = (a: Node, b: Node): number => compare(a.bound, b.bound) || this.#off(a) - this.#off(b);

  #off({ first, second }: Node): number {
    return Math.abs(first * this.#start[1] - second * this.#start[0]);
  }

  #best(nodes: Node[], unit: number, width: number, limit: Cost): readonly Node[] {
    return nodes
      .sort(this.#ranked)
      .slice(0, width * REFINED)
      .map((node) => ({ ...node, bound: this.#boundOf(unit, node.first, node.second, node.cost, limit) }))
      .filter(({ bound }) => isLess(bound, limit))
      .sort(this.#ranked)
      .slice(0, width);
  }

  /** What inverters may take in a stringing that is cheaper than the limit. */
  #reach(limit: Cost): Reach {
    const reach = { first: [Infinity, 0], second: [Infinity, 0], both: [Infinity, 0] } as Record<
      keyof Reach,
      [number, number]
    >;
    const widen = (range: [number, number], value: number): void => {
      range[0] = Math.min(range[0], value);
      range[1] = Math.max(range[1], value);
    };
    const alike = new Set(this.#columns).size === 1;
    const [firsts, seconds] = this.#start;
    for (const { byModules } of new Set(this.#columns)) {
      for (const [modules, columns] of byModules.entries()) {
        for (const { first, second, cost } of columns) {
          if (first > firsts || second > seconds) continue;
          // Only where all inverters are alike may any of them be tried as the first.
          if (alike && !isLess(this.#boundOf(1, firsts - first, seconds - second, cost, limit), limit)) continue;
          widen(reach.first, first);
          widen(reach.second, second);
          widen(reach.both, modules);
        }
      }
    }
    return reach;
  }

  /** Modules that a stringing cheaper than the limit may leave unplaced. */
  #unplaced(limit: Cost): number {
    const total = this.#start[0] + this.#start[1];
    return limit[0] === Infinity ? total : Math.max(0, total + Math.ceil(limit[0] / this.#problem.worth));
  }

  #assignmentOf(node: Node): Assignment {
    const columns: Column[] = [];
    for (let at: Node | null = node; at?.column; at = at.parent) columns.unshift(at.column);
    const ways = this.#problem.units.map((): readonly number[] => []);
    for (const [place, { first, second }] of columns.entries())
      ways[this.#order[place]!] = this.#tables[place]!.waysFor(first, second);
    return ways.flat();
  }
}

const REFINED = 4;
/** Most that are kept of what may follow one node. */
const EACH = 48;
const UNLIMITED: Cost = [Infinity, Infinity, Infinity];
