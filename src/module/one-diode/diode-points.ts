import { diodeCurrent, junction } from "./diode-current.js";
import { diodeVoltage } from "./diode-voltage.js";
import type { OneDiode } from "./one-diode.js";
import { rootIn } from "./root.js";

/** The characteristic points of an I-V curve, in V, A and W. */
export interface DiodePoints {
  readonly shortCircuitCurrent: number;
  readonly openCircuitVoltage: number;
  readonly mppVoltage: number;
  readonly mppCurrent: number;
  readonly maximumPower: number;
  readonly fillFactor: number;
}

/**
 * The characteristic points of a one-diode model. The maximum power point is where the slope of the power vanishes; the
 * current falls ever faster with the voltage, so that there is one such point between short circuit and open circuit.
 *
 * @example
 * ```ts
 * import { diodePoints, oneDiode } from "pv-to-grid/module";
 * const cell = oneDiode({ photocurrent: 0.760776, saturationCurrent: 3.23021e-7, seriesResistance: 0.036377, shuntResistance: 53.718526, exponentVoltage: 0.0390768 });
 * diodePoints(cell).maximumPower.toFixed(4); // "0.3107"
 * ```
 */
export function diodePoints(diode: OneDiode): DiodePoints {
  const { seriesResistance: resistance } = diode;
  const openCircuitVoltage = diodeVoltage(diode, 0);
  const shortCircuitCurrent = diodeCurrent(diode, 0);
  if (openCircuitVoltage <= 0) {
    return Object.freeze({
      shortCircuitCurrent,
      openCircuitVoltage: 0,
      mppVoltage: 0,
      mppCurrent: 0,
      maximumPower: 0,
      fillFactor: 0,
    });
  }
  const at = rootIn(shortCircuitCurrent * resistance, openCircuitVoltage, (x) => fallOfPower(diode, x));
  const { current: mppCurrent } = junction(diode, at);
  const mppVoltage = at - mppCurrent * resistance;
  const maximumPower = mppVoltage * mppCurrent;
  const fillFactor = maximumPower / (openCircuitVoltage * shortCircuitCurrent);
  return Object.freeze({ shortCircuitCurrent, openCircuitVoltage, mppVoltage, mppCurrent, maximumPower, fillFactor });
}

/** How fast the power falls with the terminal voltage, where the junction is at a voltage, and the slope of that. */
function fallOfPower(diode: OneDiode, at: number): { readonly value: number; readonly slope: number } {
  const { seriesResistance: resistance, exponentVoltage: scale, shuntResistance } = diode;
  const { current, slope } = junction(diode, at);
  const conductance = -slope / (1 - resistance * slope);
  const voltage = at - current * resistance;
  const bend = (-slope - 1 / shuntResistance) / scale / (1 - resistance * slope) ** 2;
  return {
    value: voltage * conductance - current,
    slope: (1 - resistance * slope) * conductance + voltage * bend - slope,
  };
}
