/**
 * The best stringing by trying everything, written from the ratings alone: it shares no code with the library. All values
 * are whole numbers (centivolts, milliamperes, watts), so that every comparison is exact.
 */

export interface Roof {
  readonly name: string;
  readonly type: string;
  readonly modules: number;
  /** Of one module: cold and hot open circuit, hot and cold maximum power point, in cV. */
  readonly coldOpen: number;
  readonly hotOpen: number;
  readonly hotMpp: number;
  readonly coldMpp: number;
  /** In mA. */
  readonly mppCurrent: number;
  readonly shortCircuit: number;
  readonly fuseRating: number;
  /** In W. */
  readonly power: number;
  /** In per mille. */
  readonly drop: number;
  readonly systemVoltage: number;
}

export interface Tracker {
  readonly inputs: number;
  readonly inputCurrent: number;
  readonly shortCircuit: number;
  readonly plug: number;
}

export interface Inverter {
  readonly maximumVoltage: number;
  readonly mppRange: readonly [number, number];
  readonly start: number;
  readonly backfeed: number;
  readonly arrayPower: number;
  readonly ratedPower: number;
  readonly trackers: readonly Tracker[];
}

export interface Plant {
  readonly roofs: readonly Roof[];
  readonly inverters: readonly Inverter[];
  readonly fuses: boolean;
  readonly join: boolean;
  /** Of array to inverter power, in per cent; `null` for none. */
  readonly ratio: number | null;
}

/** Unused modules, fuses, trackers with several roofs, balance (1e-6), squares of modules short, distance from the ratio (0.1 W). */
export type Criteria = readonly [number, number, number, number, number, number];

/** A tracker's strings: modules in series, and how many of each roof. */
export interface Filling {
  readonly length: number;
  readonly strings: readonly number[];
}

interface Tried extends Filling {
  readonly criteria: Criteria;
  readonly power: number;
  readonly uses: readonly number[];
}

const GPV = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 16, 20, 25, 30, 32].map((amperes) => amperes * 1000);

/** Whether a length of string is within every rating of a roof and an inverter; the yield limits only narrow what is safe. */
function lengths(roof: Roof, inverter: Inverter): number[] {
  const safe: number[] = [];
  for (let n = 1; n <= roof.modules + 40; n += 1) {
    const cold = n * roof.coldOpen;
    if (cold <= inverter.maximumVoltage && cold <= roof.systemVoltage) safe.push(n);
  }
  const works = safe.filter(
    (n) => n * roof.hotMpp * (1000 - roof.drop) >= inverter.mppRange[0] * 1000 && n * roof.hotOpen >= inverter.start,
  );
  const inside = works.filter((n) => n * roof.coldMpp <= inverter.mppRange[1]);
  return inside.length > 0 ? inside : works;
}

/** Strings in parallel that a tracker may have of one roof, and whether so many need fuses; `null` for not to be had. */
function parallel(roof: Roof, inverter: Inverter, tracker: Tracker, fuses: boolean, count: number): boolean | null {
  if (count > tracker.inputs || roof.shortCircuit * 125 > tracker.plug * 100) return null;
  if (count * roof.shortCircuit * 125 > tracker.shortCircuit * 100) return null;
  if (count > 1 && count * roof.mppCurrent > tracker.inputCurrent) return null;
  const reverse = (count - 1) * roof.shortCircuit * 125 + inverter.backfeed * 100;
  if (count < 2 || reverse <= roof.fuseRating * 100) return false;
  const rating = GPV.some(
    (amperes) =>
      amperes * 10 > roof.shortCircuit * 15 && amperes * 10 < roof.shortCircuit * 24 && amperes <= roof.fuseRating,
  );
  return fuses && rating ? true : null;
}

function fillings({ roofs, fuses, join, ratio }: Plant, inverter: Inverter, tracker: Tracker): Tried[] {
  const share = ratio === null ? null : Math.round((ratio * inverter.ratedPower * 10) / 100 / inverter.trackers.length);
  const allowed = roofs.map((roof) => lengths(roof, inverter));
  const found: Tried[] = [];
  const none = roofs.map(() => 0);
  found.push({ length: 0, strings: none, uses: none, power: 0, criteria: [0, 0, 0, 0, 0, share ?? 0] });
  const every = (roof: number, strings: readonly number[]): void => {
    if (roof < roofs.length) {
      for (let count = 0; count <= tracker.inputs; count += 1) every(roof + 1, [...strings, count]);
      return;
    }
    const used = roofs.map((_, at) => at).filter((at) => strings[at]! > 0);
    const count = strings.reduce((sum, each) => sum + each, 0);
    if (count === 0 || (used.length > 1 && !join) || new Set(used.map((at) => roofs[at]!.type)).size > 1) return;
    const states = used.map((at) => parallel(roofs[at]!, inverter, tracker, fuses, count));
    if (states.includes(null)) return;
    for (let n = 1; n <= 60; n += 1) {
      if (!used.every((at) => allowed[at]!.includes(n))) continue;
      const uses = strings.map((each) => each * n);
      const power = uses.reduce((sum, modules, at) => sum + modules * roofs[at]!.power, 0);
      const load = used.reduce((sum, at) => sum + strings[at]! * (roofs[at]!.mppCurrent / tracker.inputCurrent), 0);
      const short = Math.max(...used.map((at) => Math.max(...allowed[at]!) - n));
      const distance = share === null ? 0 : Math.abs(power * 10 - share);
      found.push({
        length: n,
        strings,
        uses,
        power,
        criteria: [
          0,
          states.includes(true) ? count : 0,
          used.length > 1 ? 1 : 0,
          Math.round(load * load * 1e6),
          short * short,
          distance,
        ],
      });
    }
  };
  every(0, []);
  return found;
}

export function isBefore(a: Criteria, b: Criteria): boolean {
  for (const [at, value] of a.entries()) if (value !== b[at]) return value < b[at]!;
  return false;
}

/** The least criteria of each different value, the best first, as many as asked for; `null` where there is too much to try. */
export function bruteForce(plant: Plant, count: number, mostTries: number): readonly Criteria[] | null {
  const places = plant.inverters.flatMap((inverter, at) =>
    inverter.trackers.map((tracker) => ({ at, ways: fillings(plant, inverter, tracker) })),
  );
  if (places.reduce((product, { ways }) => product * ways.length, 1) > mostTries) return null;
  const best = new Map<string, Criteria>();
  const left = plant.roofs.map(({ modules }) => modules);
  const power = plant.inverters.map(() => 0);
  const walk = (depth: number, sum: Criteria): void => {
    const place = places[depth];
    if (!place) {
      const whole: Criteria = [left.reduce((all, modules) => all + modules, 0), sum[1], sum[2], sum[3], sum[4], sum[5]];
      best.set(whole.join(), whole);
      return;
    }
    for (const way of place.ways) {
      if (way.uses.some((modules, roof) => modules > left[roof]!)) continue;
      if (power[place.at]! + way.power > plant.inverters[place.at]!.arrayPower) continue;
      way.uses.forEach((modules, roof) => (left[roof]! -= modules));
      power[place.at]! += way.power;
      walk(depth + 1, sum.map((value, at) => value + way.criteria[at]!) as unknown as Criteria);
      way.uses.forEach((modules, roof) => (left[roof]! += modules));
      power[place.at]! -= way.power;
    }
  };
  walk(0, [0, 0, 0, 0, 0, 0]);
  return [...best.values()].sort((a, b) => (isBefore(a, b) ? -1 : 1)).slice(0, count);
}
