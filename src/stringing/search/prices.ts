import type { InverterTable } from "./inverter-table.js";
import { type Cost, modelOf, type Problem } from "./problem.js";

interface Line {
  readonly first: number;
  readonly second: number;
  readonly value: number;
}

/**
 * A good price for the modules of the second roof over those of the first, in the second word of cost: where the roofs
 * differ in what a module costs there, the pooled bound is sharp only at the right price. It is the difference of the
 * multipliers of the relaxation in which only the roofs' totals count; every price gives a bound that holds.
 */
export function priceOf(problem: Problem, tables: ReadonlyMap<string, InverterTable>): Cost {
  const [firsts, seconds] = problem.roofs as [number, number?];
  if (seconds === undefined) return [0, 0, 0];
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
  const most = Math.max(
    1,
    ...models.flatMap(({ lines }) => lines.map(({ first, second, value }) => value / Math.max(1, first + second))),
  );
  const inner = (a: number): { at: number; value: number } => highest((b) => dual(a, b), 0, 2 * most);
  const a = highest((x) => inner(x).value, 0, 2 * most).at;
  return [0, Math.round(inner(a).at - a), 0];
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
