import { CostTable, leastSum } from "./cost-table.js";
import type { InverterTable } from "./inverter-table.js";
import { leastPriced } from "./priced-columns.js";
import type { Multipliers } from "./prices.js";
import { type Cost, isLess, less, type Problem, sumOf, times } from "./problem.js";

/**
 * What the inverters from one on must cost at least, seen in three ways that each forget one thing. The *pooled* way knows
 * how many modules are left in all and forgets of which roof they are, but for a price. The two others know how many are
 * left of one roof, and pay each module of the other at a price. Every price gives a bound that holds.
 */
export class InverterBounds {
  readonly #pooled: readonly CostTable[];
  readonly #first: readonly CostTable[];
  readonly #second: readonly CostTable[];
  readonly #price: Cost;
  readonly #multipliers: Multipliers;

  constructor({ roofs }: Problem, tables: readonly InverterTable[], multipliers: Multipliers) {
    const [firsts, seconds = 0] = roofs as [number, number?];
    this.#multipliers = multipliers;
    this.#price = multipliers.difference;
    // Modules that are never placed are credited too; the dearest credit keeps the bound below all.
    const credit = isLess(this.#price, [0, 0, 0]) ? ([0, 0, 0] as const) : this.#price;
    const { first, second } = multipliers;
    const known = new Map<InverterTable, { readonly a: CostTable; readonly b: CostTable; readonly both: CostTable }>();
    for (const table of new Set(tables)) {
      known.set(table, {
        a: aloneOf(table, second, true),
        b: aloneOf(table, first, false),
        both: leastPriced(table, this.#price),
      });
    }
    this.#pooled = backwards(
      firsts + seconds,
      tables.map((table) => known.get(table)!.both),
      credit,
    );
    const free = [0, 0, 0] as const;
    this.#first =
      seconds === 0
        ? []
        : backwards(
            firsts,
            tables.map((table) => known.get(table)!.a),
            free,
          );
    this.#second =
      seconds === 0
        ? []
        : backwards(
            seconds,
            tables.map((table) => known.get(table)!.b),
            free,
          );
  }

  /** The pooled bound without what the price of the second roof's modules comes to. */
  pooledFrom(unit: number): CostTable {
    return this.#pooled[unit]!;
  }

  pooled(unit: number, first: number, second: number): Cost {
    return sumOf(this.#pooled[unit]!.get(first + second), times(this.#price, second));
  }

  /** Raises a bound to this one's, where that is higher; without the pooled way where that is known already. */
  raise(bound: Bound, unit: number, first: number, second: number, pooledToo: boolean): void {
    if (pooledToo) raise(bound, this.#pooled[unit]!, first + second, this.#price, second);
    if (this.#first.length === 0) return;
    raise(bound, this.#first[unit]!, first, this.#multipliers.second, second);
    raise(bound, this.#second[unit]!, second, this.#multipliers.first, first);
  }
}

/** A bound that is raised in place, since millions of them are. */
export interface Bound {
  a: number;
  b: number;
  c: number;
}

function raise(bound: Bound, { words }: CostTable, index: number, multiplier: Cost, count: number): void {
  const at = index * 3;
  const a = words[at]! + multiplier[0] * count;
  if (a < bound.a) return;
  const b = words[at + 1]! + multiplier[1] * count;
  const c = words[at + 2]! + multiplier[2] * count;
  if (a === bound.a && (b < bound.b || (b === bound.b && c <= bound.c))) return;
  [bound.a, bound.b, bound.c] = [a, b, c];
}

/** Least costs from each inverter on, by what is left; whatever is left at the end is credited. */
function backwards(total: number, each: readonly CostTable[], credit: Cost): readonly CostTable[] {
  const end = new CostTable(total + 1, 0);
  for (let left = 0; left <= total; left += 1) end.set(left, times(credit, -left));
  const tables = [end];
  for (const own of each.toReversed()) {
    const table = new CostTable(total + 1, Infinity);
    for (let left = 0; left <= total; left += 1)
      table.set(left, leastSum(own, 0, tables[0]!, left, Math.min(left, own.size - 1)));
    tables.unshift(table);
  }
  return tables;
}

/** The least cost of an inverter by its modules of one roof, those of the other paid at a multiplier. */
function aloneOf(table: InverterTable, multiplier: Cost, ofFirst: boolean): CostTable {
  const alone = new CostTable((ofFirst ? table.firsts : table.seconds) + 1, Infinity);
  for (let first = 0; first <= table.firsts; first += 1) {
    for (let second = 0; second <= table.seconds; second += 1) {
      const cost = table.at(first, second);
      if (cost[0] === Infinity) continue;
      const [own, other] = ofFirst ? [first, second] : [second, first];
      const paid = less(cost, times(multiplier, other));
      if (isLess(paid, alone.get(own))) alone.set(own, paid);
    }
  }
  return alone;
}
