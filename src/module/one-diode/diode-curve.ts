import { InputError } from "../../quantity/index.js";
import { diodeCurrent, junction, junctionVoltage } from "./diode-current.js";
import { diodeVoltage } from "./diode-voltage.js";
import type { OneDiode } from "./one-diode.js";

/** An I-V curve, in V, A and W. */
export interface DiodeCurve {
  readonly voltage: Float64Array;
  readonly current: Float64Array;
  readonly power: Float64Array;
}

/**
 * The I-V curve of a one-diode model from short circuit to open circuit. The points are equally far apart in the voltage
 * of the junction, which puts most of them where the curve bends.
 *
 * @param points - how many, 2 or more
 * @throws InputError where `points` is not a whole number from 2 to a million
 * @example
 * ```ts
 * import { diodeCurve, oneDiode } from "pv-to-grid/module";
 * const cell = oneDiode({ photocurrent: 9, saturationCurrent: 1e-10, seriesResistance: 0.005, shuntResistance: 10, exponentVoltage: 0.0257 });
 * diodeCurve(cell, 101).voltage.length; // 101
 * ```
 */
export function diodeCurve(diode: OneDiode, points = 101): DiodeCurve {
  if (!Number.isInteger(points) || points < 2 || points > 1_000_000) {
    const expected = "a whole number from 2 to a million";
    throw new InputError("module/diode-curve", [
      { path: "points", code: "out-of-domain", message: `must be ${expected}`, expected, received: String(points) },
    ]);
  }
  const [voltage, current, power] = [new Float64Array(points), new Float64Array(points), new Float64Array(points)];
  const start = junctionVoltage(diode, 0);
  const end = diodeVoltage(diode, 0);
  for (let index = 0; index < points; index += 1) {
    const at = start + ((end - start) * index) / (points - 1);
    const out = junction(diode, at).current;
    voltage[index] = at - out * diode.seriesResistance;
    current[index] = out;
    power[index] = voltage[index]! * out;
  }
  // The ends are what they are called, without the last digit of the detour over the junction.
  [voltage[0], current[0], power[0]] = [0, diodeCurrent(diode, 0), 0];
  [voltage[points - 1], current[points - 1], power[points - 1]] = [end, 0, 0];
  return Object.freeze({ voltage, current, power });
}
