/** The points that a datasheet states at standard test conditions, in V and A. */
export interface CurvePoints {
  readonly shortCircuitCurrent: number;
  readonly openCircuitVoltage: number;
  readonly mppVoltage: number;
  readonly mppCurrent: number;
}

/** A one-diode curve through three points. @internal */
export interface ThroughPoints {
  readonly photocurrent: number;
  readonly saturationCurrent: number;
  /** Saturation current times the exponential at open circuit, which stays within the range of doubles. */
  readonly scaledSaturation: number;
  readonly seriesResistance: number;
  /** Below zero where no real shunt fits. */
  readonly shuntConductance: number;
  /** Slope of the power against the voltage at the stated maximum power point. */
  readonly slopeOfPower: number;
}

/**
 * The one-diode curve with a given voltage in the exponent and series resistance through short circuit, the maximum power point
 * and open circuit: the three equations are linear in the photocurrent, the saturation current and the shunt conductance.
 *
 * @internal
 */
export function throughPoints(exponentVoltage: number, seriesResistance: number, points: CurvePoints): ThroughPoints {
  const { shortCircuitCurrent, openCircuitVoltage, mppVoltage, mppCurrent } = points;
  const atShort = shortCircuitCurrent * seriesResistance;
  const atPower = mppVoltage + mppCurrent * seriesResistance;
  // Exponentials over that of open circuit; each difference to open circuit without cancelling.
  const fall = (at: number): number => -Math.expm1((at - openCircuitVoltage) / exponentVoltage);
  const [toShort, toPower] = [fall(atShort), fall(atPower)];
  const [farShort, farPower] = [openCircuitVoltage - atShort, openCircuitVoltage - atPower];
  const determinant = toShort * farPower - toPower * farShort;
  const scaledSaturation = (shortCircuitCurrent * farPower - mppCurrent * farShort) / determinant;
  const shuntConductance = (toShort * mppCurrent - toPower * shortCircuitCurrent) / determinant;
  const saturationCurrent = scaledSaturation * Math.exp(-openCircuitVoltage / exponentVoltage);
  const photocurrent =
    scaledSaturation * -Math.expm1(-openCircuitVoltage / exponentVoltage) + openCircuitVoltage * shuntConductance;
  const conductance = (scaledSaturation / exponentVoltage) * (1 - toPower) + shuntConductance;
  const slopeOfPower = mppCurrent - (mppVoltage * conductance) / (1 + conductance * seriesResistance);
  return { photocurrent, saturationCurrent, scaledSaturation, seriesResistance, shuntConductance, slopeOfPower };
}
