import { CostTable } from "./cost-table.js";
import { type Cost, IMPOSSIBLE, isLess, isSame, type Problem, sumOf } from "./problem.js";
import type { Piece } from "./roof-tables.js";

/** Entries up to which tables are made. */
const MOST_ENTRIES = 3_000_000;

/** Numbers of trackers of each kind, as one index: the first kind varies fastest. */
class Counts {
  readonly size: number;
  readonly #bases: readonly number[];

  constructor(readonly most: readonly number[]) {
    this.#bases = most.map((_, kind) => most.slice(0, kind).reduce((product, count) => product * (count + 1), 1));
    this.size = most.reduce((product, count) => product * (count + 1), 1);
  }

  read(index: number): readonly number[] {
    return this.most.map((count, kind) => Math.floor(index / this.#bases[kind]!) % (count + 1));
  }

  base(kind: number): number {
    return this.#bases[kind]!;
  }
}

/** Whether tables for each kind of tracker are of a size to make. */
export function kindsAreFew({ roofs, kinds, units }: Problem): boolean {
  const entries = new Counts(countsOf(kinds.length, units)).size * roofs.reduce((sum, modules) => sum + modules + 1, 0);
  return kinds.length > 1 && entries <= MOST_ENTRIES;
}

/**
 * Roof by roof with the kinds of tracker kept apart: the roofs share out the trackers of each kind. Where no power limit
 * binds and no tracker takes strings of several roofs, this is the answer itself.
 */
export class KindTables {
  readonly #problem: Problem;
  readonly #counts: Counts;
  readonly #tables: readonly CostTable[];
  /** The least cost of the first roofs together, by the trackers that they share. */
  readonly #shares: readonly CostTable[];

  constructor(problem: Problem) {
    this.#problem = problem;
    this.#counts = new Counts(countsOf(problem.kinds.length, problem.units));
    this.#tables = problem.roofs.map((_, roof) => this.#tableOf(roof));
    const shares: CostTable[] = [];
    for (const roof of problem.roofs.keys())
      shares.push(roof === 0 ? this.#column(0) : this.#shared(shares[roof - 1]!, roof));
    this.#shares = shares;
  }

  /** What no stringing without joined roofs can cost less than. */
  bound(): Cost {
    return this.#shares.at(-1)!.get(this.#counts.size - 1);
  }

  /** The trackers of a stringing that costs no more than the bound. */
  pieces(): readonly Piece[] {
    let rest = this.#counts.size - 1;
    return [...this.#problem.roofs.keys()].reverse().flatMap((roof) => {
      const due = this.#shares[roof]!.get(rest);
      const own =
        roof === 0
          ? rest
          : this.#splits(rest).find((part) =>
              isSame(sumOf(this.#whole(roof, part), this.#shares[roof - 1]!.get(rest - part)), due),
            )!;
      rest -= own;
      return this.#piecesOf(roof, own);
    });
  }

  #width(roof: number): number {
    return this.#problem.roofs[roof]! + 1;
  }

  /** The least cost of a whole roof on some trackers. */
  #whole(roof: number, counts: number): Cost {
    return this.#tables[roof]!.get(counts * this.#width(roof) + this.#problem.roofs[roof]!);
  }

  #column(roof: number): CostTable {
    const column = new CostTable(this.#counts.size, 0);
    for (let counts = 0; counts < this.#counts.size; counts += 1) column.set(counts, this.#whole(roof, counts));
    return column;
  }

  #shared(before: CostTable, roof: number): CostTable {
    const together = new CostTable(this.#counts.size, Infinity);
    const last = roof === this.#problem.roofs.length - 1;
    for (let counts = last ? this.#counts.size - 1 : 0; counts < this.#counts.size; counts += 1) {
      let least: Cost = IMPOSSIBLE;
      for (const own of this.#splits(counts)) {
        const cost = sumOf(this.#whole(roof, own), before.get(counts - own));
        if (isLess(cost, least)) least = cost;
      }
      together.set(counts, least);
    }
    return together;
  }

  /** Every part of some trackers that one roof may have. */
  #splits(counts: number): readonly number[] {
    return this.#counts
      .read(counts)
      .reduce<readonly number[]>(
        (parts, most, kind) =>
          parts.flatMap((part) => Array.from({ length: most + 1 }, (_, own) => part + own * this.#counts.base(kind))),
        [0],
      );
  }

  // The last kind of which there is a tracker: it has a way, or it stays empty.
  #lastKind(counts: number): number {
    return this.#counts.read(counts).findLastIndex((count) => count > 0);
  }

  #tableOf(roof: number): CostTable {
    const width = this.#width(roof);
    const table = new CostTable(this.#counts.size * width, 0);
    for (let counts = 1; counts < this.#counts.size; counts += 1) {
      const kind = this.#lastKind(counts);
      const [base, before] = [counts * width, (counts - this.#counts.base(kind)) * width];
      table.copyRow(base, before, width);
      for (const { mixed, uses, modules, cost } of this.#problem.kinds[kind]!) {
        if (mixed || uses[roof] === 0) continue;
        for (let left = modules; left < width; left += 1)
          table.lower(base + left, table, before + left - modules, ...cost);
      }
    }
    return table;
  }

  #piecesOf(roof: number, trackers: number): readonly Piece[] {
    const width = this.#width(roof);
    const pieces: Piece[] = [];
    let left = this.#problem.roofs[roof]!;
    for (let counts = trackers; counts > 0;) {
      const kind = this.#lastKind(counts);
      const before = counts - this.#counts.base(kind);
      const due = this.#tables[roof]!.get(counts * width + left);
      if (!isSame(this.#tables[roof]!.get(before * width + left), due)) {
        const index = this.#problem.kinds[kind]!.findIndex(
          (way) =>
            !way.mixed &&
            way.uses[roof]! > 0 &&
            way.modules <= left &&
            isSame(sumOf(this.#tables[roof]!.get(before * width + left - way.modules), way.cost), due),
        );
        const way = this.#problem.kinds[kind]![index]!;
        pieces.push({ kind, index, way });
        left -= way.modules;
      }
      counts = before;
    }
    return pieces;
  }
}

function countsOf(kinds: number, units: Problem["units"]): readonly number[] {
  const trackers = units.flatMap((unit) => unit.trackers);
  return Array.from({ length: kinds }, (_, kind) => trackers.filter((own) => own === kind).length);
}
