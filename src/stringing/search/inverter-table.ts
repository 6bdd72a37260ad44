import { CostTable } from "./cost-table.js";
import { type Cost, isSame, type Problem, sumOf, type Unit, type Way } from "./problem.js";

/** The least cost of one inverter by the modules that it takes of a first roof and of a second. */
export class InverterTable {
  /** Most modules of each roof that it can take. */
  readonly firsts: number;
  readonly seconds: number;
  readonly #problem: Problem;
  readonly #unit: Unit;
  /** By the tracker from which on they count. */
  readonly #tables: readonly CostTable[];

  constructor(problem: Problem, unit: Unit) {
    this.#problem = problem;
    this.#unit = unit;
    this.firsts = reachOf(problem, unit, 0);
    this.seconds = reachOf(problem, unit, 1);
    const tables = [new CostTable((this.firsts + 1) * (this.seconds + 1), Infinity)];
    tables[0]!.set(0, [0, 0, 0]);
    for (const kind of unit.trackers.toReversed()) tables.unshift(this.#withTracker(tables[0]!, problem.kinds[kind]!));
    this.#tables = tables;
  }

  /** Infinite where the inverter cannot take just so many. */
  at(first: number, second: number): Cost {
    return this.#tables[0]!.get(first * (this.seconds + 1) + second);
  }

  /** A way for each tracker that together take just so many modules at the least cost. */
  waysFor(first: number, second: number): readonly number[] {
    let at = first * (this.seconds + 1) + second;
    return this.#unit.trackers.map((kind, position) => {
      const [here, after] = [this.#tables[position]!.get(at), this.#tables[position + 1]!];
      if (isSame(after.get(at), here)) return -1;
      const index = this.#problem.kinds[kind]!.findIndex((way) => {
        const from = this.#before(at, way);
        return from !== null && isSame(sumOf(after.get(from), way.cost), here);
      });
      at -= this.#offset(this.#problem.kinds[kind]![index]!);
      return index;
    });
  }

  #offset({ uses }: Way): number {
    return uses[0]! * (this.seconds + 1) + (uses[1] ?? 0);
  }

  #before(at: number, way: Way): number | null {
    const [first, second] = [Math.floor(at / (this.seconds + 1)), at % (this.seconds + 1)];
    return way.uses[0]! > first || (way.uses[1] ?? 0) > second ? null : at - this.#offset(way);
  }

  /** The table of some trackers with one more before them. */
  #withTracker(after: CostTable, ways: readonly Way[]): CostTable {
    const table = new CostTable(after.size, Infinity);
    table.words.set(after.words);
    const [power, other = 0] = this.#problem.powers as [number, number?];
    const { limit } = this.#unit;
    for (let first = 0, at = 0; first <= this.firsts; first += 1) {
      for (let second = 0; second <= this.seconds; second += 1, at += 1) {
        if (!after.has(at)) continue;
        for (const { uses, cost, modules } of ways) {
          const [a, b] = [first + uses[0]!, second + (uses[1] ?? 0)];
          if (a > this.firsts || b > this.seconds || modules === 0 || a * power + b * other > limit) continue;
          table.lower(a * (this.seconds + 1) + b, after, at, cost[0], cost[1], cost[2]);
        }
      }
    }
    return table;
  }
}

function reachOf({ roofs, kinds, powers }: Problem, { trackers, limit }: Unit, roof: number): number {
  if (roof >= roofs.length) return 0;
  const most = trackers.reduce((sum, kind) => sum + Math.max(0, ...kinds[kind]!.map(({ uses }) => uses[roof]!)), 0);
  return Math.min(roofs[roof]!, most, limit === Infinity ? most : Math.floor(limit / powers[roof]!));
}
