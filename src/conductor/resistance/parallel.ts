import { formula } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";

/**
 * Impedance per length of equal conductors in parallel.
 *
 * @function
 * @example
 * ```ts
 * import { inParallel } from "pv-to-grid/conductor";
 * inParallel({ perLength: "0.2 Ω/km", conductorsInParallel: 2 }).in("Ω/km").text; // "0.1"
 * ```
 */
export const inParallel = /* @__PURE__ */ formula({
  id: "conductor/in-parallel", about: "impedance per length of equal conductors in parallel",
  takes: {
    perLength: { unit: "Ω/m", symbol: "Z_1", about: "resistance or reactance per length of one conductor", from: 0, usual: [0, 0.1] },
    conductorsInParallel: { unit: "1", symbol: "n_p", about: "equal conductors in parallel for each line", from: 1, usual: [1, 20] },
  },
  gives: { unit: "Ω/m", symbol: "Z" },
  expression: "perLength / conductorsInParallel",
  source: [{ in: "ABB installation handbook:undated", clause: "2.2.2, voltage drop, examples", grade: "memory" }],
  note: "equal lengths, sections and paths, without branches",
  unproven: { because: "no publication found", sought: "voltage drops of parallel cables, seen in print" },
});

/** The value of one conductor, or of several in parallel. */
export function parallelled(
  perLength: Quantity<"resistancePerLength">,
  conductorsInParallel: Quantity<"ratio">,
): Quantity<"resistancePerLength"> {
  return conductorsInParallel.text === "1" ? perLength : inParallel({ perLength, conductorsInParallel });
}
