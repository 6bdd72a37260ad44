import { given, type Input, type Quantity } from "../../quantity/index.js";
import { currentFactor, maximumCurrent, maximumCurrentByFactor } from "./maximum-current.js";
import { parallelCurrent } from "./parallel-current.js";
import { whole } from "../count.js";

/** Equal strings in parallel, by the current of one. */
export interface StringCurrent {
  /** At standard test conditions. */
  readonly shortCircuitCurrent: Input<"current">;
  /** Correction of the current factor for light on the rear or an unusual site, K_Corr; left out, none. */
  readonly currentCorrection?: Input<"ratio">;
  /** How many equal strings are in parallel; left out, one. */
  readonly strings?: number;
}

/**
 * Maximum current of equal strings in parallel: 1.25 times their short-circuit current in both practices, and more
 * where a correction for light on the rear is stated.
 *
 * @throws InputError for a current or a correction that cannot be one
 * @example
 * ```ts
 * import { maximumStringCurrent } from "pv-to-grid/string";
 * maximumStringCurrent({ shortCircuitCurrent: "9.08 A", strings: 2 }).text; // "22.7"
 * ```
 */
export function maximumStringCurrent({
  shortCircuitCurrent,
  currentCorrection,
  strings = 1,
}: StringCurrent): Quantity<"current"> {
  const one =
    currentCorrection === undefined
      ? maximumCurrent({ shortCircuitCurrent })
      : corrected(shortCircuitCurrent, currentCorrection);
  return strings === 1 ? one : parallelCurrent({ strings: whole(strings), current: one });
}

// A correction of exactly one leaves the plain 1.25, which is better documented.
function corrected(shortCircuitCurrent: Input<"current">, currentCorrection: Input<"ratio">): Quantity<"current"> {
  const correction = given(currentCorrection, "1");
  if (correction.text === "1") return maximumCurrent({ shortCircuitCurrent });
  return maximumCurrentByFactor({
    currentFactor: currentFactor({ currentCorrection: correction }),
    shortCircuitCurrent,
  });
}
