import type { Stringing } from "./find-stringings.js";
import type { StringingInput } from "./input.js";
import type { StringingModel } from "./model.js";
import { search } from "./search/search.js";

/** What keeps modules of a roof off, and the nearest module counts that would be used in full. */
export interface Blocked {
  readonly roof: string;
  readonly unused: number;
  readonly because: readonly string[];
  /** Layouts of all roofs of which every module would be used: the nearest with fewer modules, and with more of this roof. */
  readonly nearest: readonly Layout[];
}

/** Modules of each roof. */
export type Layout = readonly { readonly roof: string; readonly modules: number }[];

/** Says for each roof that is not used in full what is in its way. */
export function whatBlocks(input: StringingInput, model: StringingModel, best: Stringing): readonly Blocked[] {
  const unused = new Map(best.unused.map(({ roof, modules }) => [roof, modules]));
  const fewer = input.roofs.map(({ name, modules }) => ({ roof: name, modules: modules - (unused.get(name) ?? 0) }));
  return Object.freeze(
    best.unused.map(({ roof, modules }) => {
      const at = input.roofs.findIndex(({ name }) => name === roof);
      const more = nearestAbove(
        model,
        at,
        fewer.map((layout) => layout.modules),
      );
      const nearest = [
        fewer,
        ...(more === null ? [] : [fewer.map((layout) => (layout.roof === roof ? { roof, modules: more } : layout))]),
      ];
      return Object.freeze({
        roof,
        unused: modules,
        because: Object.freeze(reasons(input, model, at)),
        nearest: Object.freeze(nearest),
      });
    }),
  );
}

function reasons({ roofs, inverters }: StringingInput, model: StringingModel, roof: number): readonly string[] {
  const kinds = new Set(model.problem.units.flatMap(({ trackers }) => trackers));
  const because = [...kinds].flatMap((kind) => model.fits[kind]![roof]!.because ?? []);
  const own = model.problem.roofs[roof]!;
  const reach = reachAlone(model, roof);
  if (reach.length === 1) return [...new Set(because)];
  const most = reach.at(-1)!;
  if (most < own) {
    const whole = inverters.length === 1 ? "the inverter takes" : "the inverters take";
    return [...new Set(because), `${whole} at most ${most} modules of this roof, with all of their trackers`];
  }
  if (!reach.includes(own)) {
    return [
      ...new Set(because),
      `${own} modules of ${roofs[roof]!.name} do not divide into strings of the lengths that the trackers take`,
    ];
  }
  return [...new Set(because), "the trackers or the array power that it needs are taken by other roofs"];
}

/** Every number of modules that a roof alone could have in strings, up to one string beyond what it has. */
function reachAlone({ problem }: StringingModel, roof: number): readonly number[] {
  const longest = Math.max(0, ...problem.kinds.flat().map(({ length }) => length));
  const most = problem.roofs[roof]! + longest;
  let reached = new Set([0]);
  for (const { trackers, limit } of problem.units) {
    let within = new Set([0]);
    for (const kind of trackers) {
      const next = new Set(within);
      for (const { uses, mixed } of problem.kinds[kind]!) {
        const taken = uses[roof]!;
        if (mixed || taken === 0) continue;
        for (const used of within)
          if (used + taken <= most && (used + taken) * problem.powers[roof]! <= limit) next.add(used + taken);
      }
      within = next;
    }
    const all = new Set<number>();
    for (const a of reached) for (const b of within) if (a + b <= most) all.add(a + b);
    reached = all;
  }
  return [...reached].sort((a, b) => a - b);
}

/** The next larger number of modules of a roof with which the others, as far as they are used now, are still used in full. */
function nearestAbove(model: StringingModel, roof: number, fewer: readonly number[]): number | null {
  const { problem } = model;
  const candidates = reachAlone(model, roof).filter((modules) => modules > problem.roofs[roof]!);
  const total = problem.roofs.reduce((sum, modules) => sum + modules, 0);
  if (total > LARGE) return candidates[0] ?? null;
  return (
    candidates.slice(0, TRIES).find((modules) => {
      const roofs = fewer.map((own, at) => (at === roof ? modules : own));
      const due = roofs.reduce((sum, own) => sum + own, 0);
      const found = search({ ...problem, roofs });
      return Math.ceil(-found.cost[0] / problem.worth) === due;
    }) ?? null
  );
}

const LARGE = 300;
const TRIES = 6;
