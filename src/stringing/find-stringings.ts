import { InputError, type Problem as Fault } from "../quantity/index.js";
import { type Blocked, whatBlocks } from "./blocked.js";
import type { StringingInput } from "./input.js";
import { type MeantWay, modelFor, type StringingModel } from "./model.js";
import { rankingRule, type Score } from "./ranking.js";
import { type Assignment, isSame } from "./search/problem.js";
import { search } from "./search/search.js";
import { rankAll } from "./search/rank-all.js";
import { tidy } from "./search/tidy.js";

/** Equal strings of one roof on one tracker. */
export interface StringingString {
  readonly inverter: string;
  readonly tracker: string;
  readonly roof: string;
  /** Modules in series of each. */
  readonly modules: number;
  readonly count: number;
  readonly fused: boolean;
}

/** One way to put the roofs' modules into strings. */
export interface Stringing {
  readonly strings: readonly StringingString[];
  readonly usedModules: number;
  /** Modules that stay unused, by roof; roofs that are used in full are not among them. */
  readonly unused: readonly { readonly roof: string; readonly modules: number }[];
  readonly score: Score;
}

/** What the search found. */
export interface Stringings {
  /** Whether the first stringing is proven to be the best, or only the best that was found within the effort. */
  readonly outcome: "optimal" | "best found" | "none";
  /** The ranking rule, in order. */
  readonly ranking: readonly string[];
  /** The best first. Further ones follow where the plant is small enough to rank them without gaps. */
  readonly stringings: readonly Stringing[];
  /** No stringing ranks before this; equal to the first one's score where that is proven the best. */
  readonly bound: Score;
  /** What keeps modules off, and the nearest layouts that would be used in full. */
  readonly blocked: readonly Blocked[];
}

const USUAL_NUMBER = 3;

/**
 * Finds the stringings that use the most modules, and ranks them.
 *
 * The search is exact: dynamic programming over trackers, inverters and modules left, closed by bounds that hold. Without
 * array-power limits it proves its result for any number of roofs; with them for one or two roofs of 5 000 modules on 40
 * inverters of six trackers and for six roofs of 500, unless the limits leave next to no room. Where it cannot prove its
 * result, or the plant is larger still, it says *best found* and gives the bound.
 *
 * @throws InputError for roofs, inverters or ratings that cannot be ones
 * @example
 * ```ts
 * import { findStringings } from "pv-to-grid/stringing";
 * const found = findStringings({
 *   rules: "IEC 62548-1:2023", fuses: "none", joinRoofs: false,
 *   roofs: [{
 *     name: "South", moduleType: "M440", modules: 27, orientation: "south",
 *     module: { coldOpenCircuitVoltage: "43.2 V", hotMppVoltage: "28.1 V", hotOpenCircuitVoltage: "34.9 V" },
 *     ceilings: [{ key: "module", limit: "1000 V" }], maximumPower: "440 W", mppCurrent: "13.42 A",
 *     shortCircuitCurrent: "14.1 A", maximumSeriesFuse: "25 A", voltageDrop: "1 %",
 *   }],
 *   inverters: [{
 *     name: "INV1", maximumDcVoltage: "1000 V", mppVoltageRange: ["200 V", "850 V"], startVoltage: "180 V", backfeedCurrent: "0 A",
 *     trackers: [
 *       { name: "A", inputs: 1, maximumInputCurrent: "16 A", shortCircuitRating: "24 A" },
 *       { name: "B", inputs: 1, maximumInputCurrent: "16 A", shortCircuitRating: "24 A" },
 *     ],
 *   }],
 * });
 * found.outcome; // "optimal"
 * found.stringings[0]?.strings.map(({ tracker, modules, count }) => `${tracker}: ${count} × ${modules}`).join(", "); // "A: 1 × 14, B: 1 × 13"
 * ```
 */
export function findStringings(input: StringingInput): Stringings {
  refuseFaults(input);
  const model = modelFor(input);
  const found = search(model.problem);
  const best = readStringing(input, model, found.assignment);
  const proven = isSame(found.cost, found.bound);
  const most = input.most ?? USUAL_NUMBER;
  const further = most > 1 && proven ? (rankAll(model.problem, most) ?? []).slice(1) : [];
  const outcome = best.usedModules === 0 ? "none" : proven ? "optimal" : "best found";
  const stringings =
    best.usedModules === 0 ? [] : [best, ...further.map(({ assignment }) => readStringing(input, model, assignment))];
  return Object.freeze({
    outcome,
    ranking: rankingRule,
    stringings: Object.freeze(stringings.filter(({ usedModules }) => usedModules > 0)),
    bound: model.scoreOf(found.bound),
    blocked: whatBlocks(input, model, best),
  });
}

/** Puts names to an assignment, in a tidy order. */
export function readStringing(
  { roofs, inverters }: StringingInput,
  { problem, scoreOf }: StringingModel,
  assignment: Assignment,
): Stringing {
  const places = inverters.flatMap((inverter) =>
    inverter.trackers.map((tracker) => ({ inverter: inverter.name, tracker: tracker.name })),
  );
  const kinds = problem.units.flatMap(({ trackers }) => trackers);
  const tidied = tidy(problem, assignment);
  const left = [...problem.roofs];
  let cost: readonly [number, number, number] = [0, 0, 0];
  const strings: StringingString[] = [];
  for (const [at, chosen] of tidied.entries()) {
    const way: MeantWay | undefined = problem.kinds[kinds[at]!]![chosen];
    if (!way) continue;
    cost = [cost[0] + way.cost[0], cost[1] + way.cost[1], cost[2] + way.cost[2]];
    for (const [roof, count] of way.strings.entries()) {
      left[roof]! -= way.uses[roof]!;
      if (count > 0)
        strings.push(
          Object.freeze({ ...places[at]!, roof: roofs[roof]!.name, modules: way.length, count, fused: way.fused }),
        );
    }
  }
  const total = problem.roofs.reduce((sum, modules) => sum + modules, 0);
  return Object.freeze({
    strings: Object.freeze(strings),
    usedModules: total - left.reduce((sum, modules) => sum + modules, 0),
    unused: Object.freeze(
      roofs.flatMap(({ name }, roof) => (left[roof]! > 0 ? [Object.freeze({ roof: name, modules: left[roof]! })] : [])),
    ),
    score: scoreOf(cost),
  });
}

function refuseFaults({ roofs, inverters, most }: StringingInput): void {
  const faults: Fault[] = [];
  const whole = (value: number, path: string): void => {
    if (Number.isInteger(value) && value >= 1) return;
    faults.push({
      path,
      code: "out-of-domain",
      message: "a whole number, one or more, is due",
      expected: "1 or more",
      received: String(value),
    });
  };
  const some = (list: readonly unknown[], path: string): void => {
    if (list.length === 0)
      faults.push({
        path,
        code: "empty",
        message: "the search needs one or more",
        expected: "one or more",
        received: "none",
      });
  };
  some(roofs, "roofs");
  some(inverters, "inverters");
  for (const [index, { modules }] of roofs.entries()) whole(modules, `roofs[${index}].modules`);
  for (const [index, { trackers }] of inverters.entries()) {
    some(trackers, `inverters[${index}].trackers`);
    for (const [at, { inputs }] of trackers.entries()) whole(inputs, `inverters[${index}].trackers[${at}].inputs`);
  }
  if (most !== undefined) whole(most, "most");
  if (faults.length > 0) throw new InputError("stringing/find-stringings", faults);
}
