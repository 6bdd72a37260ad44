import { isMissing } from "../formula/index.js";
import { given, InputError } from "../quantity/index.js";
import { type Fit, fitOf } from "./fit.js";
import type { StringingInput, StringingInverter } from "./input.js";
import type { Score } from "./ranking.js";
import type { Cost, Problem, Unit, Way } from "./search/problem.js";

/** A way of the search with what it means. */
export interface MeantWay extends Way {
  /** Modules in series of each string. */
  readonly length: number;
  /** Strings of each roof. */
  readonly strings: readonly number[];
  readonly fused: boolean;
}

/** The search's problem, and how to read its costs. */
export interface StringingModel {
  readonly problem: Problem & { readonly kinds: readonly (readonly MeantWay[])[] };
  /** For each kind of tracker the fit of each roof. */
  readonly fits: readonly (readonly Fit[])[];
  readonly scoreOf: (cost: Cost) => Score;
}

const BALANCE_DIGITS = 1e6;
const POWER_DIGITS = 1e3;
const DISTANCE_DIGITS = 10;
const SAFE = Number.MAX_SAFE_INTEGER;

/** Turns ratings into the whole numbers of the search. */
export function modelFor(input: StringingInput): StringingModel {
  const { roofs, inverters } = input;
  const trackers = inverters.reduce((sum, inverter) => sum + inverter.trackers.length, 0);
  const kinds: { key: string; fits: readonly Fit[]; share: number | null }[] = [];
  const kindOf = (inverter: StringingInverter, at: number): number => {
    const tracker = inverter.trackers[at]!;
    const key = JSON.stringify([
      { ...inverter, name: "", trackers: inverter.trackers.length },
      { ...tracker, name: "" },
    ]);
    const known = kinds.findIndex((kind) => kind.key === key);
    if (known >= 0) return known;
    return (
      kinds.push({
        key,
        fits: roofs.map((roof) => fitOf(input, roof, inverter, tracker)),
        share: shareOf(input, inverter),
      }) - 1
    );
  };
  const units = inverters.map((inverter): Unit => ({
    trackers: inverter.trackers.map((_, at) => kindOf(inverter, at)),
    limit: limitOf(inverter),
  }));
  const powers = roofs.map(({ maximumPower }) => Math.round(given(maximumPower, "W").number * POWER_DIGITS));

  const strings = Math.max(1, ...kinds.flatMap(({ fits }) => fits.map((fit) => fit.strings)));
  const mixedBase = trackers + 1;
  const worth = mixedBase * (trackers * strings + 1);
  const watts = powers.map((power) => Math.round((power / POWER_DIGITS) * DISTANCE_DIGITS));
  const farthest = Math.max(
    1,
    ...kinds.flatMap(({ fits, share }) =>
      fits.map((fit) => (share ?? 0) + (fit.lengths?.[1] ?? 0) * fit.strings * Math.max(...watts)),
    ),
  );
  const shortBase = 2 * trackers * farthest + 1;
  const total = roofs.reduce((sum, { modules }) => sum + modules, 0);
  const longest = Math.max(1, ...kinds.flatMap(({ fits }) => fits.map((fit) => fit.lengths?.[1] ?? 0)));
  if (total * worth > SAFE || trackers * longest * longest * shortBase > SAFE) refuseSize(total, trackers);

  const costFor =
    (share: number | null): ((way: Omit<MeantWay, "cost">, fits: readonly Fit[]) => Cost) =>
    (way, fits) => {
      const load = way.strings.reduce((sum, count, roof) => sum + count * fits[roof]!.load, 0);
      const fuses = way.fused ? way.strings.reduce((sum, count) => sum + count, 0) : 0;
      const short = Math.max(
        ...way.strings.map((count, roof) => (count > 0 ? fits[roof]!.lengths![1] - way.length : 0)),
      );
      const output = way.uses.reduce((sum, modules, roof) => sum + modules * watts[roof]!, 0);
      const distance = share === null ? 0 : Math.abs(output - share) - share;
      return [
        fuses * mixedBase + (way.mixed ? 1 : 0) - way.modules * worth,
        Math.round(load * load * BALANCE_DIGITS),
        short * short * shortBase + distance,
      ];
    };
  const ways = kinds.map(({ fits, share }) =>
    waysOf(input, fits, powers).map((way): MeantWay => ({ ...way, cost: costFor(share)(way, fits) })),
  );
  const shares = units.flatMap((unit) => unit.trackers).reduce((sum, kind) => sum + (kinds[kind]!.share ?? 0), 0);
  return {
    problem: { roofs: roofs.map(({ modules }) => modules), powers, kinds: ways, units, worth },
    fits: kinds.map(({ fits }) => fits),
    scoreOf: ([first, second, third]) => {
      const used = Math.ceil(-first / worth);
      const rest = first + used * worth;
      // Adding zero turns −0 into 0.
      const short = Math.round(third / shortBase) + 0;
      return Object.freeze({
        unusedModules: total - used,
        fuses: Math.floor(rest / mixedBase),
        joinedRoofs: rest % mixedBase,
        balance: second / BALANCE_DIGITS,
        shortfall: short,
        ratioDistance: (third - short * shortBase + shares) / DISTANCE_DIGITS,
      });
    },
  };
}

function limitOf({ maximumArrayPower }: StringingInverter): number {
  if (maximumArrayPower === undefined || isMissing(maximumArrayPower)) return Infinity;
  return Math.floor(given(maximumArrayPower, "W").number * POWER_DIGITS);
}

/** A tracker's share of the inverter's power at the stated ratio, in tenths of a watt. */
function shareOf({ targetRatio }: StringingInput, { ratedPower, trackers }: StringingInverter): number | null {
  if (targetRatio === undefined || ratedPower === undefined) return null;
  return Math.round(
    ((given(targetRatio, "1").number * given(ratedPower, "W").number) / trackers.length) * DISTANCE_DIGITS,
  );
}

/** Every way to fill a tracker: equal strings of one roof, or of several roofs of one module type where that is allowed. */
function waysOf(
  { roofs, joinRoofs }: StringingInput,
  fits: readonly Fit[],
  powers: readonly number[],
): readonly Omit<MeantWay, "cost">[] {
  const ways: Omit<MeantWay, "cost">[] = [];
  const add = (length: number, strings: readonly number[]): void => {
    const count = strings.reduce((sum, each) => sum + each, 0);
    const used = strings.flatMap((each, roof) => (each > 0 ? [roof] : []));
    const states = used.map((roof) => fits[roof]!.fused[count]);
    if (states.some((state) => state === null || state === undefined)) return;
    const uses = strings.map((each) => each * length);
    ways.push({
      uses,
      modules: count * length,
      power: uses.reduce((sum, modules, roof) => sum + modules * powers[roof]!, 0),
      mixed: used.length > 1,
      length,
      strings,
      fused: states.includes(true),
    });
  };
  const lengths = fits.flatMap((fit) => fit.lengths ?? []);
  for (let length = Math.min(...lengths); length <= Math.max(...lengths); length += 1) {
    const able = fits.map((fit) =>
      fit.lengths && fit.lengths[0] <= length && length <= fit.lengths[1] ? fit.strings : 0,
    );
    for (const strings of combinations(
      able,
      roofs.map(({ moduleType }) => moduleType),
      joinRoofs,
    ))
      add(length, strings);
  }
  return ways;
}

/** Numbers of strings of each roof that may share a tracker. */
function combinations(
  able: readonly number[],
  types: readonly string[],
  mixed: boolean,
): readonly (readonly number[])[] {
  const found: number[][] = [];
  const extend = (roof: number, strings: readonly number[], type: string | null, room: number): void => {
    if (roof === able.length) {
      if (type !== null) found.push([...strings]);
      return;
    }
    extend(roof + 1, [...strings, 0], type, room);
    if (type !== null && (!mixed || types[roof] !== type)) return;
    const already = strings.reduce((sum, each) => sum + each, 0);
    const most = Math.min(room, able[roof]!);
    for (let count = 1; already + count <= most; count += 1) extend(roof + 1, [...strings, count], types[roof]!, most);
  };
  extend(0, [], null, Infinity);
  return found;
}

function refuseSize(modules: number, trackers: number): never {
  const message = "the plant is too large for the search; divide it";
  throw new InputError("stringing/find-stringings", [
    {
      path: "roofs",
      code: "refused",
      message,
      expected: "fewer modules or trackers",
      received: `${modules} modules, ${trackers} trackers`,
    },
  ]);
}
