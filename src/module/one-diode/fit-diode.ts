import { InputError, type Problem } from "../../quantity/index.js";
import type { StcDiode } from "./diode-under.js";
import { finite } from "./finite.js";
import { BAND_GAP, BAND_GAP_SLOPE, BOLTZMANN_PER_CHARGE, kelvin, STC_TEMPERATURE } from "./physics.js";
import { rootIn } from "./root.js";
import { type CurvePoints, type ThroughPoints, throughPoints } from "./through-points.js";

/** What a datasheet says of the I-V curve at standard test conditions: V, A, V/K and A/K. */
export interface DiodeDatasheet extends CurvePoints {
  /** V/K, below zero */
  readonly openCircuitVoltageSlope: number;
  /** A/K */
  readonly shortCircuitCurrentSlope: number;
}

/**
 * The five parameters of the one-diode model from a datasheet: the curve meets short circuit, open circuit and the
 * maximum power point, its power is largest there, and its open-circuit voltage falls with temperature as stated, by
 * the scaling of `diodeUnder`. For a given voltage in the exponent the three points leave one unknown, the series resistance, and
 * the slope of the power falls with it; the slope of the open-circuit voltage falls with that voltage. Both are
 * found in brackets, so that a solution is found where there is one.
 *
 * @throws InputError that says which condition of the datasheet cannot be met
 * @example
 * ```ts
 * import { diodePoints, fitDiode } from "pv-to-grid/module";
 * const diode = fitDiode({
 *   shortCircuitCurrent: 8.21, openCircuitVoltage: 32.9, mppVoltage: 26.3, mppCurrent: 7.61,
 *   openCircuitVoltageSlope: -0.123, shortCircuitCurrentSlope: 0.0032,
 * });
 * diodePoints(diode).maximumPower.toFixed(6); // "200.143000"
 * ```
 */
export function fitDiode(datasheet: DiodeDatasheet): StcDiode {
  const { openCircuitVoltage, openCircuitVoltageSlope, shortCircuitCurrentSlope } = datasheet;
  finite(ID, { ...datasheet });
  checkPoints(datasheet);
  const highest = highestDiodeVoltage(datasheet);
  const excess = (exponentVoltage: number): number =>
    slopeOfVoltage(exponentVoltage, datasheet) - openCircuitVoltageSlope;
  const lowest = openCircuitVoltage * LEAST_SHARE;
  if (excess(lowest) < 0)
    throw unreachable(
      "openCircuitVoltageSlope",
      "rises, or falls too slowly even for the steepest diode",
      openCircuitVoltageSlope,
    );
  if (excess(highest) > 0) {
    const least = excess(highest) + openCircuitVoltageSlope;
    const why = `falls too fast: a diode that soft would need a series or shunt resistance below zero; ${least.toPrecision(4)} V/K is the steepest that these points allow`;
    throw unreachable("openCircuitVoltageSlope", why, openCircuitVoltageSlope);
  }
  const exponentVoltage = rootIn(lowest, highest, (at) => ({ value: -excess(at), slope: steepness(at, datasheet) }));
  const { saturationCurrent, photocurrent, seriesResistance, shuntConductance } = solved(exponentVoltage, datasheet);
  const shuntResistance = shuntConductance > 0 ? 1 / shuntConductance : Infinity;
  return Object.freeze({
    photocurrent,
    saturationCurrent,
    seriesResistance,
    shuntResistance,
    exponentVoltage,
    shortCircuitCurrentSlope,
  });
}

const ID = "module/fit-diode";
/** The voltage in the exponent is sought from this share of the open-circuit voltage: a diode factor of about 0.15. */
const LEAST_SHARE = 1 / 200;

function unreachable(path: string, why: string, value: number): InputError {
  const expected = "a datasheet that a one-diode model can meet";
  return new InputError(ID, [{ path, code: "contradiction", message: why, expected, received: String(value) }]);
}

/** The points must lie on a curve that bends downwards and has its largest power at the stated point. */
function checkPoints({ shortCircuitCurrent, openCircuitVoltage, mppVoltage, mppCurrent }: CurvePoints): void {
  const problems: Problem[] = [];
  const due = (path: string, holds: boolean, message: string, value: number): void => {
    if (!holds) problems.push({ path, code: "contradiction", message, expected: message, received: String(value) });
  };
  due("shortCircuitCurrent", shortCircuitCurrent > 0, "must be more than 0 A", shortCircuitCurrent);
  due("openCircuitVoltage", openCircuitVoltage > 0, "must be more than 0 V", openCircuitVoltage);
  due("mppVoltage", mppVoltage < openCircuitVoltage, "must be less than the open-circuit voltage", mppVoltage);
  due("mppVoltage", 2 * mppVoltage > openCircuitVoltage, "must be more than half the open-circuit voltage", mppVoltage);
  due("mppCurrent", mppCurrent < shortCircuitCurrent, "must be less than the short-circuit current", mppCurrent);
  due(
    "mppCurrent",
    2 * mppCurrent > shortCircuitCurrent,
    "must be more than half the short-circuit current",
    mppCurrent,
  );
  if (problems.length > 0) throw new InputError(ID, problems);
}

/** For a voltage in the exponent, the series resistance for which the power is largest at the stated point, and what follows. */
function solved(exponentVoltage: number, points: CurvePoints): ThroughPoints {
  const most = (points.openCircuitVoltage - points.mppVoltage) / points.mppCurrent;
  const step = most * SMALL;
  const slopeAt = (resistance: number): number => throughPoints(exponentVoltage, resistance, points).slopeOfPower;
  const resistance = rootIn(0, most, (at) => ({
    value: -slopeAt(at),
    slope: (slopeAt(Math.max(0, at - step)) - slopeAt(at)) / step,
  }));
  return throughPoints(exponentVoltage, resistance, points);
}

const SMALL = 1e-6;

/** The largest voltage in the exponent for which neither resistance falls below zero. */
function highestDiodeVoltage(points: CurvePoints): number {
  const { openCircuitVoltage } = points;
  const margin = (at: number): number => {
    const hard = throughPoints(at, 0, points);
    // Without series resistance the power must still rise at the stated point, else the resistance would be negative.
    if (hard.slopeOfPower <= 0) return hard.slopeOfPower;
    return solved(at, points).shuntConductance;
  };
  let [low, high] = [openCircuitVoltage * LEAST_SHARE, openCircuitVoltage];
  if (margin(low) < 0) {
    throw unreachable(
      "mppCurrent",
      "the curve through these points is more rectangular than any diode's",
      points.mppCurrent,
    );
  }
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (margin(middle) >= 0) low = middle;
    else high = middle;
  }
  return low;
}

const HALVINGS = 200;

/** Slope of the open-circuit voltage against temperature at 25 °C, V/K, by the scaling of `diodeUnder`. */
function slopeOfVoltage(exponentVoltage: number, datasheet: DiodeDatasheet): number {
  const { scaledSaturation, shuntConductance } = solved(exponentVoltage, datasheet);
  const { openCircuitVoltage: voltage, shortCircuitCurrentSlope } = datasheet;
  const stc = kelvin(STC_TEMPERATURE);
  // Each term is what the current at open circuit gains for one kelvin, over what it loses for one volt.
  const growth = 3 / stc + (BAND_GAP * (1 + BAND_GAP_SLOPE * stc)) / (BOLTZMANN_PER_CHARGE * stc * stc);
  const ofSaturation = -growth * scaledSaturation * -Math.expm1(-voltage / exponentVoltage);
  const ofDiodeVoltage = (scaledSaturation * voltage) / (exponentVoltage * stc);
  const loss = scaledSaturation / exponentVoltage + shuntConductance;
  return (shortCircuitCurrentSlope + ofSaturation + ofDiodeVoltage) / loss;
}

/** How fast that slope falls with the voltage in the exponent: by a difference, which is enough for Newton's step. */
function steepness(exponentVoltage: number, datasheet: DiodeDatasheet): number {
  const step = exponentVoltage * SMALL;
  return (slopeOfVoltage(exponentVoltage - step, datasheet) - slopeOfVoltage(exponentVoltage, datasheet)) / step;
}
