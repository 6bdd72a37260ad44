import type { Check } from "../formula/index.js";
import { given, type Quantity } from "../quantity/index.js";

/** A whole number as a quantity, with where it is from. */
export function whole(count: number, statedIn?: string): Quantity<"ratio"> {
  return given(String(count), "1", statedIn);
}

/** The count at which a check turns, found by the check itself. */
export interface Turn {
  /** The last count that is met; `null` where not even the first is. */
  readonly count: number | null;
  readonly met: Check | null;
  /** The check of the next count, which is not met. */
  readonly beyond: Check | null;
}

/** Largest count that a check admits, for a check that more of them make worse. An undecided check counts as not met. */
export function largestMet(checkFor: (count: number) => Check, guess: number): Turn {
  let count = Math.max(1, Math.floor(guess));
  let met = checkFor(count);
  let beyond: Check | null = null;
  while (count >= 1 && met.verdict !== "met") {
    beyond = met;
    count -= 1;
    if (count >= 1) met = checkFor(count);
  }
  if (count < 1) return Object.freeze({ count: null, met: null, beyond });
  while (beyond === null) {
    const next = checkFor(count + 1);
    if (next.verdict === "met") [count, met] = [count + 1, next];
    else beyond = next;
  }
  return Object.freeze({ count, met, beyond });
}

/** Smallest count that a check admits, for a check that more of them make better. An undecided check counts as not met. */
export function smallestMet(checkFor: (count: number) => Check, guess: number): Turn {
  let count = Math.max(1, Math.ceil(guess));
  let met = checkFor(count);
  let beyond: Check | null = null;
  while (met.verdict !== "met") {
    beyond = met;
    count += 1;
    met = checkFor(count);
  }
  while (count > 1 && beyond === null) {
    const before = checkFor(count - 1);
    if (before.verdict === "met") [count, met] = [count - 1, before];
    else beyond = before;
  }
  return Object.freeze({ count, met, beyond });
}
