import { InputError } from "../../quantity/index.js";
import { junction } from "./diode-current.js";
import { finite } from "./finite.js";
import type { OneDiode } from "./one-diode.js";
import { rootIn } from "./root.js";

/**
 * Terminal voltage of a one-diode model at a current, V.
 *
 * @throws InputError where the current is not finite, or is more than the cell can give at any voltage
 * @example
 * ```ts
 * import { diodeVoltage, oneDiode } from "pv-to-grid/module";
 * const cell = oneDiode({ photocurrent: 0.760776, saturationCurrent: 3.23021e-7, seriesResistance: 0.036377, shuntResistance: 53.718526, exponentVoltage: 0.0390768 });
 * diodeVoltage(cell, 0).toFixed(4); // "0.5728"
 * ```
 */
export function diodeVoltage(diode: OneDiode, current: number): number {
  finite("module/diode-voltage", { current });
  const { photocurrent, saturationCurrent, seriesResistance, shuntResistance, exponentVoltage: scale } = diode;
  // What the diode and the shunt must carry: more than nothing in forward, less in reverse.
  const carried = photocurrent - current;
  if (shuntResistance === Infinity) {
    if (carried <= -saturationCurrent) throw beyond(current);
    return scale * Math.log1p(carried / saturationCurrent) - current * seriesResistance;
  }
  const byShunt = carried * shuntResistance;
  if (carried === 0) return -current * seriesResistance;
  const [low, high] =
    carried > 0 ? [0, Math.min(scale * Math.log1p(carried / saturationCurrent), byShunt)] : [byShunt, 0];
  const at = rootIn(low, high, (voltage) => {
    const { current: out, slope } = junction(diode, voltage);
    return { value: current - out, slope: -slope };
  });
  return at - current * seriesResistance;
}

function beyond(current: number): InputError {
  const message = "without a shunt, no voltage drives a current above the photocurrent and the saturation current";
  return new InputError("module/diode-voltage", [
    {
      path: "current",
      code: "refused",
      message,
      expected: "a current that the model reaches",
      received: String(current),
    },
  ]);
}
