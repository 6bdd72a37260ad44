import { CostTable } from "./cost-table.js";
import type { InverterTable } from "./inverter-table.js";
import { compare, type Cost, isLess, less, times } from "./problem.js";

/** One way to use a whole inverter. */
export interface Column {
  readonly first: number;
  readonly second: number;
  readonly cost: Cost;
  /** By how much its priced cost exceeds the least of any column with as many modules. */
  readonly excess: Cost;
}

/** The columns of one model of inverter, under a price for the modules of the second roof. */
export interface PricedColumns {
  /** By the number of modules, those of the least priced cost first. */
  readonly byModules: readonly (readonly Column[])[];
  /** The least priced cost by the number of modules. */
  readonly least: CostTable;
}

/** Sorts the columns of an inverter; `price` is what a module of the second roof is credited with. */
export function pricedColumns(table: InverterTable, price: Cost): PricedColumns {
  const least = leastPriced(table, price);
  const found: Omit<Column, "excess">[][] = Array.from({ length: least.size }, () => []);
  for (let first = 0; first <= table.firsts; first += 1) {
    for (let second = 0; second <= table.seconds; second += 1) {
      const cost = table.at(first, second);
      if (cost[0] === Infinity) continue;
      found[first + second]!.push({ first, second, cost });
    }
  }
  const byModules = found.map((columns, modules) =>
    columns
      .map((column): Column => ({
        ...column,
        excess: less(less(column.cost, times(price, column.second)), least.get(modules)),
      }))
      .sort((a, b) => compare(a.excess, b.excess)),
  );
  return { byModules, least };
}

/** The least priced cost of an inverter by the number of modules. */
export function leastPriced(table: InverterTable, price: Cost): CostTable {
  const least = new CostTable(table.firsts + table.seconds + 1, Infinity);
  for (let first = 0; first <= table.firsts; first += 1) {
    for (let second = 0; second <= table.seconds; second += 1) {
      const cost = table.at(first, second);
      if (cost[0] === Infinity) continue;
      const priced = less(cost, times(price, second));
      if (isLess(priced, least.get(first + second))) least.set(first + second, priced);
    }
  }
  return least;
}
