import { InputError, type Problem } from "../../quantity/index.js";
import { finite } from "./finite.js";
import type { OneDiode } from "./one-diode.js";
import { BAND_GAP, BAND_GAP_SLOPE, BOLTZMANN_PER_CHARGE, kelvin, STC_IRRADIANCE, STC_TEMPERATURE } from "./physics.js";

/** A one-diode model at standard test conditions, with what carries it to others. */
export interface StcDiode extends OneDiode {
  /** A/K */
  readonly shortCircuitCurrentSlope: number;
}

/** Irradiance in W/m² and cell temperature in °C. */
export interface DiodeConditions {
  readonly irradiance: number;
  readonly cellTemperature: number;
}

/** Band gap of silicon at a cell temperature in °C, eV. @internal */
export function bandGap(cellTemperature: number): number {
  return BAND_GAP * (1 - BAND_GAP_SLOPE * (cellTemperature - STC_TEMPERATURE));
}

/**
 * A one-diode model at another irradiance and cell temperature, by the scaling of De Soto, Klein and Beckman for
 * silicon: the band gap is taken at each temperature, and the shunt resistance grows as the light fades.
 *
 * @throws InputError where the irradiance is not above 0 or the temperature lies outside −100 to 150 °C
 * @example
 * ```ts
 * import { diodePoints, diodeUnder } from "pv-to-grid/module";
 * const atStc = { photocurrent: 9, saturationCurrent: 1e-10, seriesResistance: 0.005, shuntResistance: 10, exponentVoltage: 0.0257, shortCircuitCurrentSlope: 0.0045 };
 * diodePoints(diodeUnder(atStc, { irradiance: 1000, cellTemperature: 65 })).openCircuitVoltage.toFixed(3); // "0.562"
 * ```
 */
export function diodeUnder(atStc: StcDiode, conditions: DiodeConditions): OneDiode {
  const { irradiance, cellTemperature } = conditions;
  finite("module/diode-under", {
    irradiance,
    cellTemperature,
    shortCircuitCurrentSlope: atStc.shortCircuitCurrentSlope,
  });
  const problems: Problem[] = [];
  const refuse = (path: string, expected: string, value: number): unknown =>
    problems.push({ path, code: "out-of-domain", message: `must be ${expected}`, expected, received: String(value) });
  if (irradiance <= 0) refuse("irradiance", "more than 0 W/m²", irradiance);
  if (cellTemperature < -100 || cellTemperature > 150) refuse("cellTemperature", "−100 to 150 °C", cellTemperature);
  if (problems.length > 0) throw new InputError("module/diode-under", problems);

  const [hot, stc] = [kelvin(cellTemperature), kelvin(STC_TEMPERATURE)];
  const sun = irradiance / STC_IRRADIANCE;
  const gap = BAND_GAP / (BOLTZMANN_PER_CHARGE * stc) - bandGap(cellTemperature) / (BOLTZMANN_PER_CHARGE * hot);
  return Object.freeze({
    photocurrent: sun * (atStc.photocurrent + atStc.shortCircuitCurrentSlope * (cellTemperature - STC_TEMPERATURE)),
    saturationCurrent: atStc.saturationCurrent * (hot / stc) ** 3 * Math.exp(gap),
    seriesResistance: atStc.seriesResistance,
    shuntResistance: atStc.shuntResistance / sun,
    exponentVoltage: atStc.exponentVoltage * (hot / stc),
  });
}
