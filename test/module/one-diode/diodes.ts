import fc from "fast-check";
import type { OneDiode, StcDiode } from "../../../src/module/index.js";

const THERMAL_VOLTAGE = 0.025692579;
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Modules of silicon cells as they are on the market, and somewhat beyond. */
export const modules: fc.Arbitrary<StcDiode> = fc
  .record({
    cells: fc.constantFrom(1, 36, 54, 60, 72, 144),
    factor: double(0.9, 1.7),
    light: double(1, 20),
    cellVoltage: double(0.55, 0.75),
    series: double(0.0005, 0.03),
    shunt: double(5, 1000),
    slope: double(0.0002, 0.0008),
  })
  .map(({ cells, factor, light, cellVoltage, series, shunt, slope }) => {
    const exponentVoltage = factor * cells * THERMAL_VOLTAGE;
    const ohm = (cells * cellVoltage) / light;
    return {
      photocurrent: light,
      saturationCurrent: light / Math.exp((cells * cellVoltage) / exponentVoltage),
      seriesResistance: series * ohm,
      shuntResistance: shunt * ohm,
      exponentVoltage,
      shortCircuitCurrentSlope: slope * light,
    };
  });

/** The RTC France cell with the parameters of the literature (recalled), at 33 °C. */
export const rtcCell: OneDiode = {
  photocurrent: 0.760776,
  saturationCurrent: 3.23021e-7,
  seriesResistance: 0.036377,
  shuntResistance: 53.718526,
  exponentVoltage: 1.481184 * 8.617333262145179e-5 * 306.15,
};

/** A cell of a textbook: 9 A, 1e-10 A, no resistances, 25 °C. */
export const idealCell: OneDiode = {
  photocurrent: 9,
  saturationCurrent: 1e-10,
  seriesResistance: 0,
  shuntResistance: Infinity,
  exponentVoltage: 8.617333262145179e-5 * 298.15,
};
