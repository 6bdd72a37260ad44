import { finite } from "./finite.js";
import type { OneDiode } from "./one-diode.js";
import { rootIn } from "./root.js";

/** Current that leaves the junction when it is at a voltage, and its slope against that voltage. @internal */
export function junction(diode: OneDiode, voltage: number): { readonly current: number; readonly slope: number } {
  const { photocurrent, saturationCurrent, shuntResistance, exponentVoltage } = diode;
  const exponent = voltage / exponentVoltage;
  return {
    current: photocurrent - saturationCurrent * Math.expm1(exponent) - voltage / shuntResistance,
    slope: (-saturationCurrent * Math.exp(exponent)) / exponentVoltage - 1 / shuntResistance,
  };
}

/**
 * Voltage of the junction at a terminal voltage: the terminal voltage and the drop in the series resistance. The bracket
 * holds since the junction's current falls with its voltage: with current outward the junction lies between the terminal
 * voltage and the drop of that current above it, with current inward between zero and the terminal voltage.
 *
 * @internal
 */
export function junctionVoltage(diode: OneDiode, voltage: number): number {
  const { seriesResistance } = diode;
  if (seriesResistance === 0) return voltage;
  const { current } = junction(diode, voltage);
  if (current === 0) return voltage;
  const [low, high] = current > 0 ? [voltage, voltage + seriesResistance * current] : [Math.min(0, voltage), voltage];
  return rootIn(low, high, (at) => {
    const { current: out, slope } = junction(diode, at);
    return { value: at - voltage - seriesResistance * out, slope: 1 - seriesResistance * slope };
  });
}

/**
 * Current of a one-diode model at a terminal voltage, A.
 *
 * @throws InputError where the voltage is not finite or the current too large for a double
 * @example
 * ```ts
 * import { diodeCurrent, oneDiode } from "pv-to-grid/module";
 * const cell = oneDiode({ photocurrent: 0.760776, saturationCurrent: 3.23021e-7, seriesResistance: 0.036377, shuntResistance: 53.718526, exponentVoltage: 0.0390768 });
 * diodeCurrent(cell, 0.4507).toFixed(4); // "0.6893"
 * ```
 */
export function diodeCurrent(diode: OneDiode, voltage: number): number {
  finite("module/diode-current", { voltage });
  const { current } = junction(diode, junctionVoltage(diode, voltage));
  finite("module/diode-current", { current });
  return current;
}
