import type { Cost } from "./problem.js";

const WORDS = 3;

/** A table of costs, three doubles an entry. */
export class CostTable {
  readonly words: Float64Array;

  constructor(
    readonly size: number,
    fill: number,
  ) {
    this.words = new Float64Array(size * WORDS).fill(fill);
  }

  get(index: number): Cost {
    const at = index * WORDS;
    const { words } = this;
    return [words[at]!, words[at + 1]!, words[at + 2]!];
  }

  /** Whether an entry has been reached. */
  has(index: number): boolean {
    return this.words[index * WORDS] !== Infinity;
  }

  set(index: number, cost: Cost): void {
    this.words.set(cost, index * WORDS);
  }

  /** Copies some entries from one place to another. */
  copyRow(to: number, from: number, count: number): void {
    this.words.copyWithin(to * WORDS, from * WORDS, (from + count) * WORDS);
  }

  /** Lowers an entry to the sum of an entry of another table and a cost, where that is less. */
  lower(index: number, other: CostTable, from: number, a: number, b: number, c: number): void {
    const { words } = this;
    const at = index * WORDS;
    const theirs = from * WORDS;
    const x = other.words[theirs]! + a;
    if (x > words[at]!) return;
    const y = other.words[theirs + 1]! + b;
    const z = other.words[theirs + 2]! + c;
    if (x < words[at]! || y < words[at + 1]! || (y === words[at + 1]! && z < words[at + 2]!)) {
      words[at] = x;
      words[at + 1] = y;
      words[at + 2] = z;
    }
  }
}

/** The least sum of an entry of one table, walked upwards, and an entry of another, walked downwards. */
export function leastSum(up: CostTable, upFrom: number, down: CostTable, downFrom: number, steps: number): Cost {
  const a = up.words;
  const b = down.words;
  let [x, y, z] = [Infinity, Infinity, Infinity];
  for (let step = 0, i = upFrom * WORDS, j = downFrom * WORDS; step <= steps; step += 1, i += WORDS, j -= WORDS) {
    const p = a[i]! + b[j]!;
    if (p > x) continue;
    const q = a[i + 1]! + b[j + 1]!;
    const r = a[i + 2]! + b[j + 2]!;
    if (p < x || q < y || (q === y && r < z)) [x, y, z] = [p, q, r];
  }
  return [x, y, z];
}
