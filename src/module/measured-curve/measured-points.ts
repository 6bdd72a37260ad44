import { given, type Input, InputError, type Quantity } from "../../quantity/index.js";
import { fillFactor } from "../plausibility/fill-factor.js";
import { openCircuitVoltageBetween } from "./open-circuit-voltage-between.js";
import { powerAtPoint } from "./power-at-point.js";
import { shortCircuitCurrentBetween } from "./short-circuit-current-between.js";

/** A measured I-V curve: one voltage and one current a point, in order of the voltage. */
export interface MeasuredCurve {
  readonly voltages: readonly Input<"voltage">[];
  readonly currents: readonly Input<"current">[];
}

/** The characteristic points of a measured curve. */
export interface MeasuredPoints {
  readonly shortCircuitCurrent: Quantity<"current">;
  readonly openCircuitVoltage: Quantity<"voltage">;
  /** Of the measured point with the largest power. */
  readonly mppVoltage: Quantity<"voltage">;
  readonly mppCurrent: Quantity<"current">;
  readonly maximumPower: Quantity<"activePower">;
  readonly fillFactor: Quantity<"ratio">;
}

interface Point {
  readonly voltage: Quantity<"voltage">;
  readonly current: Quantity<"current">;
}

/**
 * The characteristic points of a measured I-V curve: short circuit and open circuit on the straight line between the
 * points on either side, the maximum power point as the best measured one.
 *
 * @throws InputError where the lists differ in length or do not rise in voltage, or the curve does not cross both axes
 * @example
 * ```ts
 * import { measuredPoints } from "pv-to-grid/module";
 * const points = measuredPoints({ voltages: ["-0.1 V", "0.1 V", "0.5 V", "0.7 V"], currents: ["8.1 A", "7.9 A", "7 A", "-1 A"] });
 * points.shortCircuitCurrent; // 8 A
 * points.openCircuitVoltage; // 0.675 V
 * ```
 */
export function measuredPoints({ voltages, currents }: MeasuredCurve): MeasuredPoints {
  const curve = readCurve(voltages, currents);
  const [short, afterShort] = around(curve, ({ voltage }) => voltage.number >= 0, "voltages", "cross 0 V");
  const [open, afterOpen] = around(curve, ({ current }) => current.number <= 0, "currents", "cross 0 A");
  const powers = curve.map((point) => powerAtPoint({ voltage: point.voltage, current: point.current }));
  const best = powers.reduce((most, power, index) => (power.number > powers[most]!.number ? index : most), 0);
  const shortCircuitCurrent = shortCircuitCurrentBetween(ends(short, afterShort));
  const openCircuitVoltage = openCircuitVoltageBetween(ends(open, afterOpen));
  const maximumPower = powers[best]!;
  return Object.freeze({
    shortCircuitCurrent,
    openCircuitVoltage,
    mppVoltage: curve[best]!.voltage,
    mppCurrent: curve[best]!.current,
    maximumPower,
    fillFactor: fillFactor({ maximumPower, openCircuitVoltage, shortCircuitCurrent }),
  });
}

function ends(before: Point, after: Point) {
  return {
    voltageBefore: before.voltage,
    currentBefore: before.current,
    voltageAfter: after.voltage,
    currentAfter: after.current,
  };
}

function refuse(path: string, expected: string, received: string): InputError {
  return new InputError("module/measured-points", [
    { path, code: "contradiction", message: `must ${expected}`, expected, received },
  ]);
}

function readCurve(voltages: MeasuredCurve["voltages"], currents: MeasuredCurve["currents"]): readonly Point[] {
  if (voltages.length !== currents.length)
    throw refuse("currents", "be as many as the voltages", `${currents.length} of ${voltages.length}`);
  const curve = voltages.map((voltage, index) => ({
    voltage: given(voltage, "V"),
    current: given(currents[index]!, "A"),
  }));
  for (const [index, point] of curve.entries()) {
    if (index > 0 && point.voltage.number <= curve[index - 1]!.voltage.number) {
      throw refuse(`voltages[${index}]`, "rise from point to point", point.voltage.text);
    }
  }
  return curve;
}

/** The two points on either side of where a condition begins to hold. */
function around(
  curve: readonly Point[],
  holds: (point: Point) => boolean,
  path: string,
  expected: string,
): readonly [Point, Point] {
  const at = curve.findIndex(holds);
  if (at <= 0) throw refuse(path, expected, `${curve.length} points`);
  return [curve[at - 1]!, curve[at]!];
}
