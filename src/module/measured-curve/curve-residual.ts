import { given, type Input, InputError } from "../../quantity/index.js";
import { diodeCurrent } from "../one-diode/diode-current.js";
import { diodeOf } from "../one-diode/quantity/from-quantities.js";

/** A one-diode model as printed, and a measured curve to hold it against. */
export interface ResidualOf {
  readonly photocurrent: Input<"current">;
  readonly saturationCurrent: Input<"current">;
  readonly diodeFactor: Input<"ratio">;
  readonly cellsInSeries: Input<"ratio">;
  readonly seriesResistance: Input<"resistance">;
  readonly shuntResistance: Input<"resistance">;
  readonly cellTemperature: Input<"temperature">;
  readonly voltages: readonly Input<"voltage">[];
  readonly currents: readonly Input<"current">[];
}

/** Root mean squares of the differences between a model and a measured curve, A. */
export interface CurveResidual {
  /** With the model's current at each measured voltage. */
  readonly exact: number;
  /** With the measured current on the right-hand side of the model's equation, as much of the literature has it. */
  readonly implicit: number;
}

/**
 * How far a one-diode model lies from a measured I-V curve. The literature uses two residuals that differ by a fifth for
 * the same data; a comparison must say which.
 *
 * @throws InputError where the lists differ in length or are empty, or a parameter is outside its domain
 * @example
 * ```ts
 * import { curveResidual } from "pv-to-grid/module";
 * const cell = { photocurrent: "8 A", saturationCurrent: "1e-9 A", diodeFactor: 1, cellsInSeries: 1, seriesResistance: "0 ohm", shuntResistance: "1e12 ohm", cellTemperature: "25 °C" };
 * curveResidual({ ...cell, voltages: ["0 V"], currents: ["7.9 A"] }).exact.toFixed(3); // "0.100"
 * ```
 */
export function curveResidual(of: ResidualOf): CurveResidual {
  const voltages = of.voltages.map((voltage) => given(voltage, "V").number);
  const currents = of.currents.map((current) => given(current, "A").number);
  if (voltages.length !== currents.length || voltages.length === 0) {
    const expected = "one current a voltage, and at least one of each";
    throw new InputError("module/curve-residual", [
      {
        path: "currents",
        code: "contradiction",
        message: `must be ${expected}`,
        expected,
        received: `${currents.length} and ${voltages.length}`,
      },
    ]);
  }
  const diode = diodeOf({
    photocurrent: given(of.photocurrent, "A").number,
    saturationCurrent: given(of.saturationCurrent, "A").number,
    diodeFactor: given(of.diodeFactor, "1").number,
    cellsInSeries: given(of.cellsInSeries, "1").number,
    seriesResistance: given(of.seriesResistance, "Ω").number,
    shuntResistance: given(of.shuntResistance, "Ω").number,
    cellTemperature: given(of.cellTemperature, "°C").number,
  });
  const { photocurrent, saturationCurrent, seriesResistance, shuntResistance, exponentVoltage } = diode;
  let [exact, implicit] = [0, 0];
  for (const [index, voltage] of voltages.entries()) {
    const current = currents[index]!;
    const at = voltage + current * seriesResistance;
    exact += (diodeCurrent(diode, voltage) - current) ** 2;
    implicit +=
      (photocurrent - saturationCurrent * Math.expm1(at / exponentVoltage) - at / shuntResistance - current) ** 2;
  }
  return Object.freeze({ exact: Math.sqrt(exact / voltages.length), implicit: Math.sqrt(implicit / voltages.length) });
}
