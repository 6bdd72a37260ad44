import type { Assignment, Cost } from "./problem.js";

/** What a walk came to. */
export interface Walked {
  /** The best whole stringing that it met; `null` where none is cheaper than the limit. */
  readonly assignment: Assignment | null;
  readonly cost: Cost | null;
  /** Whether nothing cheaper than what it met, or than the limit, can exist. */
  readonly complete: boolean;
}

/** How far a walk goes. */
export interface Reins {
  /** Most partial stringings that are kept after each inverter. */
  readonly width: number;
  /** Only what is cheaper is of interest. */
  readonly limit: Cost;
  /** Most columns that are looked at in all. */
  readonly budget: number;
}

/** Puts a node into a short sorted list. */
export function insert<N>(list: N[], node: N, most: number, order: (a: N, b: N) => number): void {
  let at = list.length;
  while (at > 0 && order(node, list[at - 1]!) < 0) at -= 1;
  if (at >= most) return;
  list.splice(at, 0, node);
  if (list.length > most) list.pop();
}
