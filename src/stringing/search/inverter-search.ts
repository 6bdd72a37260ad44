import { CostTable, leastSum } from "./cost-table.js";
import { corridor, evenOrder, type Reach } from "./corridor.js";
import type { InverterTable } from "./inverter-table.js";
import { type Column, type PricedColumns, pricedColumns } from "./priced-columns.js";
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

/** A partial stringing: the first inverters are settled. */
interface Node {
  readonly first: number;
  readonly second: number;
  readonly cost: Cost;
  readonly bound: Cost;
  readonly parent: Node | null;
  readonly column: Column | null;
}

/** What a walk came to. */
export interface Walked {
  /** The best whole stringing that it met; `null` where none is cheaper than the limit. */
  readonly assignment: Assignment | null;
  readonly cost: Cost | null;
  /** Whether nothing cheaper than what it met, or than the limit, can exist. */
  readonly complete: boolean;
}

/** How far a walk goes. */
export interface Reins {
  /** Most partial stringings that are kept after each inverter. */
  readonly width: number;
  /** Only what is cheaper is of interest. */
  readonly limit: Cost;
  /** Most columns that are looked at in all. */
  readonly budget: number;
}

/** The search inverter by inverter, for one or two roofs: exact dynamic programming over what is left of each. */
export class InverterSearch {
  readonly #problem: Problem;
  readonly #order: readonly number[];
  readonly #columns: readonly PricedColumns[];
  readonly #tables: readonly InverterTable[];
  /** The least priced cost of the inverters from one on, by all the modules that are left: the pooled bound. */
  readonly #from: readonly CostTable[];
  readonly #trackersFrom: readonly number[];
  readonly #price: Cost;
  readonly #roofs: RoofTables | null;

  /**
   * @param price - what a module of the second roof is credited with over one of the first; any price gives a bound that holds
   * @param roofs - tables for a second bound; `null` where strings of several roofs may share a tracker
   */
  constructor(problem: Problem, tables: ReadonlyMap<string, InverterTable>, price: Cost, roofs: RoofTables | null) {
    this.#problem = problem;
    this.#price = price;
    this.#roofs = problem.roofs.length === 1 ? null : roofs;
    this.#order = evenOrder(problem);
    const priced = new Map([...tables].map(([model, table]) => [model, pricedColumns(table, price)]));
    const units = this.#order.map((index) => problem.units[index]!);
    this.#tables = units.map((unit) => tables.get(modelOf(unit))!);
    this.#columns = units.map((unit) => priced.get(modelOf(unit))!);
    this.#from = pooled(problem, this.#columns, price);
    const counts = units.map(({ trackers }) => trackers.length);
    this.#trackersFrom = [...counts, 0].map((_, index) => counts.slice(index).reduce((sum, count) => sum + count, 0));
  }

  /** What no stringing can cost less than. */
  bound(): Cost {
    const [first, second = 0] = this.#problem.roofs as [number, number?];
    return this.#boundOf(0, first, second, NOTHING, IMPOSSIBLY_HIGH);
  }

  walk({ width, limit, budget }: Reins): Walked {
    const [first, second = 0] = this.#problem.roofs as [number, number?];
    const units = this.#columns.length;
    const within = corridor(this.#problem, this.#reach(limit), this.#unplaced(limit));
    let layer: readonly Node[] = [{ first, second, cost: NOTHING, bound: this.bound(), parent: null, column: null }];
    let complete = true;
    let looked = 0;
    for (let unit = 0; unit < units; unit += 1) {
      const found = new Map<number, Node>();
      const most = width === Infinity ? Infinity : width * CANDIDATES;
      for (const node of layer) {
        looked += this.#expand(node, unit, limit, most, found, (a, b) => within(unit + 1, first - a, second - b));
        if (looked > budget) return { assignment: null, cost: null, complete: false };
      }
      if (width === Infinity) layer = [...found.values()];
      else {
        complete = false;
        layer = this.#best([...found.values()], unit + 1, width, limit);
      }
    }
    const best = layer.reduce<Node | null>(
      (least, node) => (least && !isLess(node.cost, least.cost) ? least : node),
      null,
    );
    return { assignment: best ? this.#assignmentOf(best) : null, cost: best?.cost ?? null, complete };
  }

  #pooledAt(unit: number, first: number, second: number): Cost {
    return sumOf(this.#from[unit]!.get(first + second), times(this.#price, second));
  }

  #boundOf(unit: number, first: number, second: number, cost: Cost, limit: Cost): Cost {
    if (unit === this.#columns.length) return cost;
    const simple = this.#pooledAt(unit, first, second);
    if (!this.#roofs || !isLess(sumOf(cost, simple), limit)) return sumOf(cost, simple);
    const trackers = this.#trackersFrom[unit]!;
    const apart = larger(simple, this.#roofs.apart([first, second], trackers));
    if (!isLess(sumOf(cost, apart), limit)) return sumOf(cost, apart);
    return sumOf(cost, larger(apart, this.#roofs.bound(trackers, [first, second])));
  }

  /** Adds what may follow a node, the most promising numbers of modules first; says how many columns were looked at. */
  #expand(
    node: Node,
    unit: number,
    limit: Cost,
    most: number,
    found: Map<number, Node>,
    within: (first: number, second: number) => boolean,
  ): number {
    const { least, byModules } = this.#columns[unit]!;
    const base = sumOf(node.cost, times(this.#price, node.second));
    const left = node.first + node.second;
    const after = this.#from[unit + 1]!;
    const whole = most === Infinity;
    const width = (this.#problem.roofs[1] ?? 0) + 1;
    let looked = 0;
    let added = 0;
    const counts: { modules: number; bound: Cost }[] = [];
    for (let modules = 0; modules <= Math.min(left, least.size - 1); modules += 1) {
      if (!least.has(modules)) continue;
      const bound = sumOf(base, sumOf(least.get(modules), after.get(left - modules)));
      if (isLess(bound, limit)) counts.push({ modules, bound });
    }
    if (!whole) counts.sort((a, b) => compare(a.bound, b.bound) || b.modules - a.modules);
    for (const { modules, bound } of counts) {
      if (added >= most) break;
      for (const column of byModules[modules]!) {
        looked += 1;
        const hope = sumOf(bound, column.excess);
        if (!isLess(hope, limit)) break;
        const [first, second] = [node.first - column.first, node.second - column.second];
        if (first < 0 || second < 0 || (whole && !within(first, second))) continue;
        const key = first * width + second;
        const cost = sumOf(node.cost, column.cost);
        const known = found.get(key);
        if (known && !isLess(cost, known.cost)) continue;
        const sure = whole ? this.#boundOf(unit + 1, first, second, cost, limit) : hope;
        if (!isLess(sure, limit)) continue;
        found.set(key, { first, second, cost, bound: sure, parent: node, column });
        added += 1;
      }
    }
    return looked;
  }

  // Of equals those come first that leave both roofs in the proportion in which they began.
  #best(nodes: Node[], unit: number, width: number, limit: Cost): readonly Node[] {
    const [firsts, seconds = 0] = this.#problem.roofs as [number, number?];
    const off = ({ first, second }: Node): number => Math.abs(first * seconds - second * firsts);
    const order = (a: Node, b: Node): number => compare(a.bound, b.bound) || off(a) - off(b);
    return nodes
      .sort(order)
      .slice(0, width * REFINED)
      .map((node) => ({ ...node, bound: this.#boundOf(unit, node.first, node.second, node.cost, limit) }))
      .filter(({ bound }) => isLess(bound, limit))
      .sort(order)
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
    const one = new Set(this.#columns).size === 1;
    const [firsts, seconds = 0] = this.#problem.roofs as [number, number?];
    const base = times(this.#price, seconds);
    for (const { byModules, least } of new Set(this.#columns)) {
      for (const [modules, columns] of byModules.entries()) {
        if (columns.length === 0 || modules > firsts + seconds) continue;
        const bound = sumOf(base, sumOf(least.get(modules), this.#from[1]!.get(firsts + seconds - modules)));
        for (const { first, second, excess } of columns) {
          // Only where all inverters are alike may any of them be tried as the first.
          if (one && !isLess(sumOf(bound, excess), limit)) break;
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
    const total = this.#problem.roofs.reduce((sum, modules) => sum + modules, 0);
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

const CANDIDATES = 40;
const REFINED = 4;
const IMPOSSIBLY_HIGH: Cost = [Infinity, Infinity, Infinity];

/** An exact search over the inverters and all modules left, as if they lay on one roof. */
function pooled({ roofs }: Problem, columns: readonly PricedColumns[], price: Cost): readonly CostTable[] {
  const total = roofs.reduce((sum, modules) => sum + modules, 0);
  const end = new CostTable(total + 1, 0);
  // Modules that are never placed are credited too; the dearest credit keeps the bound below all.
  const credit = larger(price, NOTHING);
  for (let left = 0; left <= total; left += 1) end.set(left, times(credit, -left));
  const tables = [end];
  for (const { least } of columns.toReversed()) {
    const table = new CostTable(total + 1, Infinity);
    for (let left = 0; left <= total; left += 1)
      table.set(left, leastSum(least, 0, tables[0]!, left, Math.min(left, least.size - 1)));
    tables.unshift(table);
  }
  return tables;
}
