import { InputError, type Problem } from "../../quantity/index.js";

/**
 * The one-diode model of a cell, a module or a string at one irradiance and one cell temperature, in doubles. Currents and
 * voltages agree to 1e-9 with the closed form (Lambert W) in 64 digits. Uniform cells, no breakdown in reverse.
 */
export interface OneDiode {
  /** A */
  readonly photocurrent: number;
  /** A */
  readonly saturationCurrent: number;
  /** Ω */
  readonly seriesResistance: number;
  /** Ω; `Infinity` where there is no shunt. */
  readonly shuntResistance: number;
  /** Diode factor times cells in series times k·T/q: the voltage in the exponent, V. */
  readonly exponentVoltage: number;
}

type Key = keyof OneDiode;
const DUE: { readonly [K in Key]: readonly [(value: number) => boolean, string] } = {
  photocurrent: [(value) => value >= 0 && value < Infinity, "0 A or more"],
  saturationCurrent: [(value) => value > 0 && value < Infinity, "more than 0 A"],
  seriesResistance: [(value) => value >= 0 && value < Infinity, "0 Ω or more"],
  shuntResistance: [(value) => value > 0, "more than 0 Ω; Infinity for none"],
  exponentVoltage: [(value) => value > 0 && value < Infinity, "more than 0 V"],
};

/**
 * Checks the five parameters of a one-diode model.
 *
 * @throws InputError with every parameter that is not a number in its domain
 * @example
 * ```ts
 * import { diodePoints, oneDiode } from "pv-to-grid/module";
 * const cell = oneDiode({ photocurrent: 9, saturationCurrent: 1e-10, seriesResistance: 0, shuntResistance: Infinity, exponentVoltage: 0.025692579 });
 * diodePoints(cell).mppVoltage.toFixed(5); // "0.56739"
 * ```
 */
export function oneDiode(parameters: OneDiode): OneDiode {
  const problems: Problem[] = [];
  for (const [key, [holds, expected]] of Object.entries(DUE)) {
    const value = parameters[key as Key];
    if (typeof value === "number" && holds(value)) continue;
    problems.push({
      path: key,
      code: "out-of-domain",
      message: `must be ${expected}`,
      expected,
      received: String(value),
    });
  }
  if (problems.length > 0) throw new InputError("module/one-diode", problems);
  const { photocurrent, saturationCurrent, seriesResistance, shuntResistance, exponentVoltage } = parameters;
  return Object.freeze({ photocurrent, saturationCurrent, seriesResistance, shuntResistance, exponentVoltage });
}
