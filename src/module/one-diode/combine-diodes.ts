import { InputError, type Problem } from "../../quantity/index.js";
import type { OneDiode } from "./one-diode.js";

/**
 * The one-diode model of equal modules in series and of equal strings in parallel, which is again one diode.
 *
 * @throws InputError where a count is not a whole number of 1 or more
 * @example
 * ```ts
 * import { combineDiodes, diodePoints, oneDiode } from "pv-to-grid/module";
 * const cell = oneDiode({ photocurrent: 9, saturationCurrent: 1e-10, seriesResistance: 0.005, shuntResistance: 10, exponentVoltage: 0.0257 });
 * const module = combineDiodes(cell, { series: 60, parallel: 1 });
 * (diodePoints(module).openCircuitVoltage / diodePoints(cell).openCircuitVoltage).toFixed(9); // "60.000000000"
 * ```
 */
export function combineDiodes(
  diode: OneDiode,
  counts: { readonly series: number; readonly parallel: number },
): OneDiode {
  const problems = Object.entries(counts)
    .filter(([, count]) => !Number.isInteger(count) || count < 1)
    .map(([path, count]): Problem => {
      const expected = "a whole number of 1 or more";
      return { path, code: "out-of-domain", message: `must be ${expected}`, expected, received: String(count) };
    });
  if (problems.length > 0) throw new InputError("module/combine-diodes", problems);
  const { series, parallel } = counts;
  return Object.freeze({
    photocurrent: diode.photocurrent * parallel,
    saturationCurrent: diode.saturationCurrent * parallel,
    seriesResistance: (diode.seriesResistance * series) / parallel,
    shuntResistance: (diode.shuntResistance * series) / parallel,
    exponentVoltage: diode.exponentVoltage * series,
  });
}
