import { CostTable, leastSum } from "./cost-table.js";
import {
  type Cost,
  isLess,
  less,
  modelOf,
  NOTHING,
  type Problem,
  sumOf,
  times,
  type Unit,
  type Way,
} from "./problem.js";

/**
 * What the trackers from one on must cost at least, for any number of roofs: an exact search over inverters and all
 * modules left, as if they lay on one roof, with a price for the modules of each.
 */
export class TrackerBound {
  readonly #total: number;
  readonly #prices: readonly Cost[];
  readonly #leastPower: number;
  /** By the inverter from which on they count. */
  readonly #from: CostTable[];
  /** For each inverter, by the tracker from which on they count within it. */
  readonly #within: readonly (readonly CostTable[])[];

  constructor(problem: Problem, prices: readonly Cost[]) {
    const { roofs, powers, units } = problem;
    this.#total = roofs.reduce((sum, modules) => sum + modules, 0);
    this.#prices = prices;
    this.#leastPower = Math.min(...powers);
    const known = new Map<string, readonly CostTable[]>();
    this.#within = units.map((unit) => {
      const tables = known.get(modelOf(unit)) ?? tablesOf(problem, unit, prices, this.#total);
      known.set(modelOf(unit), tables);
      return tables;
    });
    const end = new CostTable(this.#total + 1, 0);
    // Modules that are never placed are credited too; the dearest credit keeps the bound below all.
    const credit = prices.reduce((most, price) => (isLess(most, price) ? price : most), NOTHING);
    for (let left = 0; left <= this.#total; left += 1) end.set(left, times(credit, -left));
    this.#from = [end];
    for (const [index, unit] of [...units.entries()].reverse()) {
      const own = this.#within[index]![0]!;
      const table = new CostTable(this.#total + 1, Infinity);
      const most = Math.min(own.size - 1, this.#modulesWithin(unit.limit));
      for (let left = 0; left <= this.#total; left += 1)
        table.set(left, leastSum(own, 0, this.#from[0]!, left, Math.min(most, left)));
      this.#from.unshift(table);
    }
  }

  at(unit: number, position: number, left: readonly number[], modulesLeft: number, powerLeft: number): Cost {
    const priced = left.reduce<Cost>((sum, modules, roof) => sumOf(sum, times(this.#prices[roof]!, modules)), NOTHING);
    if (unit === this.#within.length) return NOTHING;
    if (position === 0) return sumOf(priced, this.#from[unit]!.get(modulesLeft));
    const rest = this.#within[unit]![position]!;
    const most = Math.min(rest.size - 1, modulesLeft, this.#modulesWithin(powerLeft));
    return sumOf(priced, leastSum(rest, 0, this.#from[unit + 1]!, modulesLeft, most));
  }

  #modulesWithin(power: number): number {
    return power === Infinity ? this.#total : Math.floor(power / this.#leastPower);
  }
}

function tablesOf(
  { kinds }: Problem,
  { trackers }: Unit,
  prices: readonly Cost[],
  total: number,
): readonly CostTable[] {
  const tables = [new CostTable(1, 0)];
  for (const kind of trackers.toReversed()) tables.unshift(withTracker(tables[0]!, kinds[kind]!, prices, total));
  return tables;
}

function withTracker(after: CostTable, ways: readonly Way[], prices: readonly Cost[], total: number): CostTable {
  const most = Math.min(total, after.size - 1 + Math.max(0, ...ways.map(({ modules }) => modules)));
  const table = new CostTable(most + 1, Infinity);
  table.words.set(after.words);
  for (const { modules, uses, cost } of ways) {
    const priced = uses.reduce((rest, taken, roof) => less(rest, times(prices[roof]!, taken)), cost);
    for (let used = 0; used <= Math.min(after.size - 1, most - modules); used += 1)
      table.lower(used + modules, after, used, ...priced);
  }
  return table;
}
