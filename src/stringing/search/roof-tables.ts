import { CostTable, leastSum } from "./cost-table.js";
import { type Cost, isSame, type Problem, sumOf, type Way } from "./problem.js";

/** A way with the kind of tracker that it is for and its place there. */
interface Placed {
  readonly kind: number;
  readonly index: number;
  readonly way: Way;
}

/** One tracker of a stringing that is not yet placed in an inverter. */
export interface Piece {
  readonly kind: number;
  readonly index: number;
  readonly way: Way;
}

/**
 * Roof by roof: the least cost of each roof by the number of trackers that it has and the modules that it has left, as if
 * no inverter had a power limit and each tracker were of whichever kind suits best. With one kind of tracker, no power
 * limit and no strings of several roofs on one tracker, this is the answer itself.
 */
export class RoofTables {
  readonly #ways: readonly (readonly Placed[])[];
  readonly #tables: readonly CostTable[];
  readonly #widths: readonly number[];

  constructor(
    problem: Problem,
    readonly trackers: number,
  ) {
    this.#ways = problem.roofs.map((_, roof) => waysOn(problem, roof));
    this.#widths = problem.roofs.map((modules) => modules + 1);
    this.#tables = problem.roofs.map((modules, roof) => tableOf(this.#ways[roof]!, modules, trackers));
  }

  /** The least cost of some trackers with some modules of each roof left. */
  bound(trackers: number, left: readonly number[]): Cost {
    return this.#shares(trackers, left).at(-1)!.get(trackers);
  }

  /** The least cost of each roof with as many trackers as it likes: quicker, and never more than the bound. */
  apart(left: readonly number[], trackers: number): Cost {
    let sum: Cost = [0, 0, 0];
    for (const [roof, modules] of left.entries())
      sum = sumOf(sum, this.#tables[roof]!.get(trackers * this.#widths[roof]! + modules));
    return sum;
  }

  /** The trackers of a stringing that costs no more than the bound. */
  pieces(trackers: number, left: readonly number[]): readonly Piece[] {
    const shares = this.#shares(trackers, left);
    let rest = trackers;
    return left
      .map((modules, roof) => ({ modules, roof }))
      .toReversed()
      .flatMap(({ modules, roof }) => {
        const due = shares[roof]!.get(rest);
        let own = rest;
        if (roof > 0) {
          own = 0;
          while (!isSame(sumOf(this.#cost(roof, own, modules), shares[roof - 1]!.get(rest - own)), due)) own += 1;
        }
        rest -= own;
        return this.#piecesOf(roof, own, modules);
      });
  }

  // The least cost of the first roofs together, by the number of trackers that they share.
  #shares(trackers: number, left: readonly number[]): readonly CostTable[] {
    const shares = [this.#column(0, left[0]!, trackers)];
    for (let roof = 1; roof < left.length; roof += 1) {
      const [own, before] = [this.#column(roof, left[roof]!, trackers), shares[roof - 1]!];
      const together = new CostTable(trackers + 1, Infinity);
      for (let count = roof === left.length - 1 ? trackers : 0; count <= trackers; count += 1)
        together.set(count, leastSum(own, 0, before, count, count));
      shares.push(together);
    }
    return shares;
  }

  #cost(roof: number, trackers: number, left: number): Cost {
    return this.#tables[roof]!.get(trackers * this.#widths[roof]! + left);
  }

  #column(roof: number, left: number, trackers: number): CostTable {
    const column = new CostTable(trackers + 1, 0);
    for (let count = 0; count <= trackers; count += 1) column.set(count, this.#cost(roof, count, left));
    return column;
  }

  #piecesOf(roof: number, trackers: number, modules: number): readonly Piece[] {
    const pieces: Piece[] = [];
    for (let count = trackers, left = modules; count > 0; count -= 1) {
      const due = this.#cost(roof, count, left);
      if (isSame(this.#cost(roof, count - 1, left), due)) continue;
      const piece = this.#ways[roof]!.find(
        ({ way }) =>
          way.modules <= left && isSame(sumOf(this.#cost(roof, count - 1, left - way.modules), way.cost), due),
      )!;
      pieces.push(piece);
      left -= piece.way.modules;
    }
    return pieces;
  }
}

/** The ways of any kind of tracker that take modules of one roof alone, equal ones once. */
function waysOn({ kinds }: Problem, roof: number): readonly Placed[] {
  const seen = new Map<string, Placed>();
  for (const [kind, ways] of kinds.entries()) {
    for (const [index, way] of ways.entries()) {
      const key = `${way.modules} ${way.cost.join(" ")}`;
      if (!way.mixed && way.uses[roof]! > 0 && !seen.has(key)) seen.set(key, { kind, index, way });
    }
  }
  return [...seen.values()];
}

function tableOf(ways: readonly Placed[], modules: number, trackers: number): CostTable {
  const width = modules + 1;
  const table = new CostTable((trackers + 1) * width, 0);
  for (let count = 1; count <= trackers; count += 1) {
    const base = count * width;
    table.copyRow(base, base - width, width);
    for (const { way } of ways) {
      const [a, b, c] = way.cost;
      for (let left = way.modules; left <= modules; left += 1)
        table.lower(base + left, table, base - width + left - way.modules, a, b, c);
    }
  }
  return table;
}
