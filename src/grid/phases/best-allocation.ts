import { InputError, type Quantity } from "../../quantity/index.js";

/** Index of a phase. */
export type PhaseNumber = 0 | 1 | 2;

const MOST_RATINGS = 9;
const MOST_STATES = 2_000_000;

/** Powers as whole numbers of one common small unit, so that sums and comparisons are exact. */
function wholeNumbers(powers: readonly Quantity<"apparentPower">[]): readonly bigint[] {
  const decimals = Math.max(0, ...powers.map(({ text }) => (text.split(".")[1] ?? "").length));
  return powers.map(({ text }) => {
    const [whole = "0", part = ""] = text.split(".");
    return BigInt(whole + part.padEnd(decimals, "0"));
  });
}

interface Search {
  readonly sizes: readonly bigint[];
  /** What is still to be put on a phase from each position on. */
  readonly rest: readonly bigint[];
  readonly seen: Set<string>;
  best: bigint | null;
  on: readonly PhaseNumber[];
}

/**
 * The phase of each power such that the largest difference between two phases is least.
 *
 * Branch and bound, largest power first. Two states with the same loads on the phases, in any order, are one state.
 *
 * @throws InputError where there are more than nine different ratings
 */
export function bestAllocation(powers: readonly Quantity<"apparentPower">[]): readonly PhaseNumber[] {
  const sizes = wholeNumbers(powers);
  const ratings = new Set(sizes).size;
  if (ratings > MOST_RATINGS)
    throw refused(
      `${ratings} different ratings are more than an exact search takes`,
      `up to ${MOST_RATINGS} different ratings`,
      ratings,
    );
  const order = sizes
    .map((_, index) => index)
    .sort((a, b) => (sizes[b]! > sizes[a]! ? 1 : sizes[b]! < sizes[a]! ? -1 : a - b));
  const sorted = order.map((index) => sizes[index]!);
  const rest = sorted.reduceRight<bigint[]>((sums, size) => [size + (sums[0] ?? 0n), ...sums], []);
  const search: Search = { sizes: sorted, rest, seen: new Set(), best: null, on: [] };
  place(search, 0, [0n, 0n, 0n], []);
  const found: PhaseNumber[] = [];
  for (const [position, index] of order.entries()) found[index] = search.on[position]!;
  return found;
}

function place(search: Search, at: number, loads: readonly bigint[], on: readonly PhaseNumber[]): void {
  if (at === search.sizes.length) {
    const difference = most(loads) - least(loads);
    if (search.best === null || difference < search.best) [search.best, search.on] = [difference, on];
    return;
  }
  if (search.best !== null && bound(loads, search.rest[at]!) >= search.best) return;
  const state = `${at} ${[...loads].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0)).join(" ")}`;
  if (search.seen.has(state)) return;
  if (search.seen.size >= MOST_STATES)
    throw refused("too many inverters for an exact search", "fewer inverters", search.sizes.length);
  search.seen.add(state);
  const size = search.sizes[at]!;
  const byLoad = ([0, 1, 2] as const).toSorted((a, b) =>
    loads[a]! < loads[b]! ? -1 : loads[a]! > loads[b]! ? 1 : a - b,
  );
  for (const phase of byLoad) {
    const next = loads.map((load, index) => (index === phase ? load + size : load));
    place(search, at + 1, next, [...on, phase]);
  }
}

/** No completion has a smaller difference: the fullest phase stays, and the emptiest can rise by the rest or to the mean. */
function bound(loads: readonly bigint[], rest: bigint): bigint {
  const total = loads.reduce((sum, load) => sum + load, rest);
  const mean = total / 3n;
  const highest = most(loads) > mean ? most(loads) : mean;
  const filled = least(loads) + rest;
  const lowest = filled < mean ? filled : mean;
  return highest - lowest;
}

function most(loads: readonly bigint[]): bigint {
  return loads.reduce((a, b) => (a > b ? a : b));
}

function least(loads: readonly bigint[]): bigint {
  return loads.reduce((a, b) => (a < b ? a : b));
}

function refused(message: string, expected: string, received: number): InputError {
  return new InputError("allocate phases", [
    { path: "inverters", code: "refused", message, expected, received: String(received) },
  ]);
}
