import type { InverterTable } from "./inverter-table.js";
import { type Cost, less, modelOf, type Problem } from "./problem.js";

interface Line {
  readonly first: number;
  readonly second: number;
  readonly value: number;
}

/** What a module of each roof is worth in a relaxation in which only the totals of the roofs count. */
export interface Multipliers {
  readonly first: Cost;
  readonly second: Cost;
  /** What a module of the second roof is worth above one of the first. */
  readonly difference: Cost;
}

/**
 * Good multipliers: where the roofs differ in what a module costs, bounds are sharp only at the right ones. They are those
 * of the relaxation in which columns may be taken in parts, found in the second word of cost; any others, each less than
 * nothing, give bounds that hold.
 *
 * @param lean - by what share the first roof is taken larger and the second smaller, for what may be left on the way
 */
export function multipliersOf(problem: Problem, tables: ReadonlyMap<string, InverterTable>, lean = 0): Multipliers {
  const worth: Cost = [-problem.worth, 0, 0];
  if (problem.roofs.length < 2) return { first: worth, second: worth, difference: [0, 0, 0] };
  const [firsts, seconds] = [problem.roofs[0]! * (1 + lean), problem.roofs[1]! * (1 - lean)];
  const counts = new Map<string, number>();
  for (const unit of problem.units) counts.set(modelOf(unit), (counts.get(modelOf(unit)) ?? 0) + 1);
  const models = [...tables].map(([model, table]) => ({ count: counts.get(model)!, lines: linesOf(problem, table) }));
  const dual = (a: number, b: number): number =>
    models.reduce(
      (sum, { count, lines }) =>
        sum +
        count *
          lines.reduce((least, { first, second, value }) => Math.min(least, value - a * first - b * second), Infinity),
      a * firsts + b * seconds,
    );
  const dear = Math.max(
    1,
    ...models.map(({ lines }) =>
      lines.reduce((most, { first, second, value }) => Math.max(most, value / Math.max(1, first + second)), 0),
    ),
  );
  // Where not all can be placed, a module is worth what placing another one instead is worth: up to the whole of it.
  const near = bestOf(dual, 2 * dear);
  const [a, b] = near.some((at) => at > EDGE * dear) ? bestOf(dual, problem.worth * SCALE) : near;
  return {
    first: asCost(problem, a),
    second: asCost(problem, b),
    difference: less(asCost(problem, b), asCost(problem, a)),
  };
}

/** Where a concave function of two multipliers is highest. */
function bestOf(dual: (a: number, b: number) => number, most: number): readonly [number, number] {
  const inner = (a: number): { at: number; value: number } => highest((b) => dual(a, b), 0, most);
  const a = highest((x) => inner(x).value, 0, most).at;
  return [a, inner(a).at];
}

/** A multiplier in words: what placing a module is worth, less what it costs. */
function asCost({ worth }: Problem, multiplier: number): Cost {
  const whole = Math.floor(multiplier / SCALE);
  if (whole === 0) return [-worth, Math.round(multiplier), 0];
  return whole >= worth ? [0, 0, 0] : [whole - worth, 0, 0];
}

/** The multipliers for what there is, and different ones for what may be left of it on the way. */
export function allMultipliersOf(
  problem: Problem,
  tables: ReadonlyMap<string, InverterTable>,
): readonly [Multipliers, ...Multipliers[]] {
  const main = multipliersOf(problem, tables);
  if (problem.roofs.length < 2) return [main];
  const all = [main];
  for (const lean of LEANS) {
    const next = multipliersOf(problem, tables, lean);
    if (all.every((known) => differ(known.first, next.first) || differ(known.second, next.second))) all.push(next);
  }
  return [main, ...all.slice(1)];
}

const LEANS = [-0.5, -0.25, -0.1, 0.1, 0.25, 0.5];

/** Apart by more than one in a thousand. */
function differ(a: Cost, b: Cost): boolean {
  return [0, 1].some((word) => Math.abs(a[word]! - b[word]!) * 1000 > Math.abs(a[word]!) + Math.abs(b[word]!));
}

/** What each column costs beyond the worth of its modules, its first two words as one number. */
function linesOf({ worth }: Problem, table: InverterTable): readonly Line[] {
  const lines: Line[] = [];
  for (let first = 0; first <= table.firsts; first += 1) {
    for (let second = 0; second <= table.seconds; second += 1) {
      const [a, b] = table.at(first, second);
      if (a !== Infinity) lines.push({ first, second, value: (a + worth * (first + second)) * SCALE + b });
    }
  }
  return lines;
}

const SCALE = 1e6;
const EDGE = 1.9;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
const ROUNDS = 28;

/** Where a concave function is highest, by the golden section. */
function highest(of: (at: number) => number, from: number, to: number): { at: number; value: number } {
  let [low, high] = [from, to];
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atLeft, atRight] = [of(left), of(right)];
  for (let round = 0; round < ROUNDS; round += 1) {
    if (atLeft >= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = of(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = of(right);
    }
  }
  const at = (low + high) / 2;
  return { at, value: of(at) };
}
