import {
  type Assignment,
  compare,
  type Cost,
  isLess,
  isSame,
  larger,
  NOTHING,
  type Problem,
  sumOf,
  type Way,
} from "./problem.js";
import type { Reins, Walked } from "./walk.js";
import type { RoofTables } from "./roof-tables.js";
import { TrackerBound } from "./tracker-bound.js";

/** A partial stringing: the first trackers are settled. */
interface Node {
  readonly left: readonly number[];
  readonly modulesLeft: number;
  /** Power already on the inverter whose tracker comes next. */
  readonly power: number;
  readonly cost: Cost;
  readonly bound: Cost;
  readonly parent: Node | null;
  readonly way: number;
}

interface Place {
  readonly unit: number;
  readonly position: number;
  readonly ways: readonly Way[];
  readonly limit: number;
  readonly last: boolean;
}

/** The search tracker by tracker, for any number of roofs: exact dynamic programming over what is left of each. */
export class TrackerSearch {
  readonly #problem: Problem;
  readonly #places: readonly Place[];
  readonly #pooled: TrackerBound;
  readonly #roofs: RoofTables | null;

  /** @param roofs - tables for a second bound; `null` where strings of several roofs may share a tracker */
  constructor(problem: Problem, prices: readonly Cost[], roofs: RoofTables | null) {
    this.#problem = problem;
    this.#pooled = new TrackerBound(problem, prices);
    this.#roofs = roofs;
    this.#places = problem.units.flatMap(({ trackers, limit }, unit) =>
      trackers.map((kind, position) => ({
        unit,
        position,
        ways: problem.kinds[kind]!,
        limit,
        last: position === trackers.length - 1,
      })),
    );
  }

  /** What no stringing can cost less than. */
  bound(): Cost {
    return this.#root().bound;
  }

  walk({ width, limit, budget }: Reins): Walked {
    const whole = width === Infinity;
    let layer: readonly Node[] = [this.#root()];
    let looked = 0;
    for (let depth = 0; depth < this.#places.length; depth += 1) {
      const found = new Map<string, Node>();
      for (const node of layer) {
        for (const next of this.#next(node, depth)) {
          looked += 1;
          const key = keyOf(next);
          const known = found.get(key);
          if (known && !isLess(next.cost, known.cost)) continue;
          const bound = whole ? this.#boundOf(depth + 1, next, limit) : this.#quickBound(depth + 1, next);
          if (isLess(bound, limit)) found.set(key, { ...next, bound });
        }
        if (looked > budget) return { assignment: null, cost: null, complete: false };
      }
      layer = whole ? [...found.values()] : this.#best([...found.values()], depth + 1, width, limit);
    }
    const best = layer.reduce<Node | null>(
      (least, node) => (least && !isLess(node.cost, least.cost) ? least : node),
      null,
    );
    return { assignment: best ? assignmentOf(best) : null, cost: best?.cost ?? null, complete: whole };
  }

  #best(nodes: Node[], depth: number, width: number, limit: Cost): readonly Node[] {
    const order = (a: Node, b: Node): number => compare(a.bound, b.bound) || a.modulesLeft - b.modulesLeft;
    return nodes
      .sort(order)
      .slice(0, width * REFINED)
      .map((node) => ({ ...node, bound: this.#boundOf(depth, node, limit) }))
      .filter(({ bound }) => isLess(bound, limit))
      .sort(order)
      .slice(0, width);
  }

  /**
   * The stringings of the least costs, one for each cost, the best first; `null` where there are too many partial ones.
   * It keeps as many costs of each partial stringing as are asked for, and no bound can mislead it.
   */
  rank(count: number, budget: number): readonly { readonly assignment: Assignment; readonly cost: Cost }[] | null {
    let layer: readonly Node[] = [this.#root()];
    let looked = 0;
    for (let depth = 0; depth < this.#places.length; depth += 1) {
      const found = new Map<string, Node[]>();
      for (const node of layer) {
        for (const next of this.#next(node, depth)) {
          looked += 1;
          const list = found.get(keyOf(next)) ?? [];
          found.set(keyOf(next), list);
          keep(list, { ...next, bound: NOTHING }, count);
        }
        if (looked > budget) return null;
      }
      layer = [...found.values()].flat();
    }
    const ranked: Node[] = [];
    for (const node of layer) keep(ranked, node, count);
    return ranked.map((node) => ({ assignment: assignmentOf(node), cost: node.cost }));
  }

  #root(): Node {
    const left = this.#problem.roofs;
    const start = {
      left,
      modulesLeft: left.reduce((sum, modules) => sum + modules, 0),
      power: 0,
      cost: NOTHING,
      parent: null,
      way: -1,
    };
    return { ...start, bound: this.#boundOf(0, start, UNLIMITED) };
  }

  #next(node: Node, depth: number): readonly Omit<Node, "bound">[] {
    const { ways, limit, last } = this.#places[depth]!;
    const found: Omit<Node, "bound">[] = [{ ...node, power: last ? 0 : node.power, parent: node, way: -1 }];
    for (const [index, way] of ways.entries()) {
      const power = node.power + way.power;
      if (power > limit || way.uses.some((taken, roof) => taken > node.left[roof]!)) continue;
      found.push({
        left: node.left.map((modules, roof) => modules - way.uses[roof]!),
        modulesLeft: node.modulesLeft - way.modules,
        power: last ? 0 : power,
        cost: sumOf(node.cost, way.cost),
        parent: node,
        way: index,
      });
    }
    return found;
  }

  /** What the rest must cost at least, by the bounds that are quick to find. */
  #quickBound(depth: number, { left, modulesLeft, power, cost }: Omit<Node, "bound">): Cost {
    const place = this.#places[depth];
    if (!place) return cost;
    const pooled = this.#pooled.at(place.unit, place.position, left, modulesLeft, place.limit - power);
    return sumOf(cost, this.#roofs ? larger(pooled, this.#roofs.apart(left, this.#places.length - depth)) : pooled);
  }

  #boundOf(depth: number, node: Omit<Node, "bound">, limit: Cost): Cost {
    const quick = this.#quickBound(depth, node);
    const rest = this.#places.length - depth;
    // The dearer bound takes time by the square of the trackers that are left.
    if (!this.#roofs || rest === 0 || rest > MOST_SHARED || !isLess(quick, limit)) return quick;
    return larger(quick, sumOf(node.cost, this.#roofs.bound(rest, node.left)));
  }
}

const REFINED = 4;
const MOST_SHARED = 60;
const UNLIMITED: Cost = [Infinity, Infinity, Infinity];

/** What makes two partial stringings the same for all that follows. */
function keyOf({ left, power }: Omit<Node, "bound">): string {
  return `${left.join(",")}|${power}`;
}

/** Adds a node to a short list by cost, one node a cost. */
function keep(list: Node[], node: Node, count: number): void {
  let at = list.length;
  while (at > 0 && isLess(node.cost, list[at - 1]!.cost)) at -= 1;
  if (at >= count || (at > 0 && isSame(list[at - 1]!.cost, node.cost))) return;
  list.splice(at, 0, node);
  if (list.length > count) list.pop();
}

function assignmentOf(node: Node): Assignment {
  const ways: number[] = [];
  for (let at = node; at.parent !== null; at = at.parent) ways.push(at.way);
  return ways.reverse();
}
