import { test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  type DiodeDatasheet,
  diodePoints,
  diodeUnder,
  fitDiode,
  mppVoltageAt,
  openCircuitVoltageAt,
} from "../../../src/module/index.js";
import { isInputError } from "../../../src/quantity/index.js";
import { modules } from "./diodes.js";

/** A module of 440 W: a scenario of our own. */
const M440: DiodeDatasheet = {
  shortCircuitCurrent: 14.1,
  openCircuitVoltage: 39.2,
  mppVoltage: 32.8,
  mppCurrent: 13.42,
  openCircuitVoltageSlope: -0.0026 * 39.2,
  shortCircuitCurrentSlope: 0.0005 * 14.1,
};

function slopeOf(diode: ReturnType<typeof fitDiode>): number {
  const voltageAt = (cellTemperature: number): number =>
    diodePoints(diodeUnder(diode, { irradiance: 1000, cellTemperature })).openCircuitVoltage;
  return (voltageAt(25.001) - voltageAt(24.999)) / 0.002;
}

describe("five parameters from a datasheet", () => {
  it("meet the datasheet's points and the slope of its open-circuit voltage", () => {
    const diode = fitDiode(M440);
    const points = diodePoints(diode);
    for (const key of ["shortCircuitCurrent", "openCircuitVoltage", "mppVoltage", "mppCurrent"] as const) {
      expect(points[key] / M440[key]).toBeCloseTo(1, 9);
    }
    expect(slopeOf(diode) / M440.openCircuitVoltageSlope).toBeCloseTo(1, 6);
  });

  test.prop([modules])("are those that made the points", (made) => {
    const fitted = fitDiode({
      ...diodePoints(made),
      openCircuitVoltageSlope: slopeOf(made),
      shortCircuitCurrentSlope: made.shortCircuitCurrentSlope,
    });
    expect(fitted.exponentVoltage / made.exponentVoltage).toBeCloseTo(1, 6);
    expect(fitted.photocurrent / made.photocurrent).toBeCloseTo(1, 6);
    const ohm = diodePoints(made).openCircuitVoltage / made.photocurrent;
    expect(Math.abs(fitted.seriesResistance - made.seriesResistance) / ohm).toBeLessThan(1e-6);
  });

  it("agree with the linear coefficients near standard test conditions", () => {
    const diode = fitDiode(M440);
    const stated = {
      openCircuitVoltage: 39.2,
      openCircuitVoltageCoefficient: "-0.26 %/K",
      mppVoltage: 32.8,
      mppVoltageCoefficient: "-0.36 %/K",
    };
    for (const cellTemperature of [15, 35, 45]) {
      const { openCircuitVoltage, mppVoltage } = diodePoints(diodeUnder(diode, { irradiance: 1000, cellTemperature }));
      const linear = openCircuitVoltageAt({
        openCircuitVoltage: 39.2,
        openCircuitVoltageCoefficient: stated.openCircuitVoltageCoefficient,
        cellTemperature,
      });
      expect(Math.abs(openCircuitVoltage / linear.number - 1), `U_OC at ${cellTemperature} °C`).toBeLessThan(0.002);
      const linearMpp = mppVoltageAt({
        mppVoltage: 32.8,
        mppVoltageCoefficient: stated.mppVoltageCoefficient,
        cellTemperature,
      });
      expect(Math.abs(mppVoltage / linearMpp.number - 1), `U_MPP at ${cellTemperature} °C`).toBeLessThan(0.01);
    }
  });

  it.each([
    [{ mppVoltage: 40 }, "mppVoltage", "less than the open-circuit voltage"],
    [{ mppVoltage: 19.6 }, "mppVoltage", "more than half"],
    [{ mppCurrent: 14.1 }, "mppCurrent", "less than the short-circuit current"],
    [{ mppCurrent: 7.05 }, "mppCurrent", "more than half"],
    [{ mppVoltage: 38.5, mppCurrent: 14 }, "mppCurrent", "more rectangular"],
    [{ openCircuitVoltageSlope: 0.1 }, "openCircuitVoltageSlope", "too slowly"],
    [{ openCircuitVoltageSlope: -0.0035 * 39.2 }, "openCircuitVoltageSlope", "too fast"],
    [{ openCircuitVoltage: NaN }, "openCircuitVoltage", "finite"],
    [{ shortCircuitCurrent: -1 }, "shortCircuitCurrent", "more than 0 A"],
  ] as const)("says which condition of an unreachable datasheet fails: %j", (change, path, words) => {
    let problems: readonly { readonly path: string; readonly message: string }[] = [];
    try {
      fitDiode({ ...M440, ...change });
    } catch (error) {
      if (!isInputError(error)) throw error;
      problems = error.problems;
    }
    const [problem] = problems.filter((one) => one.path === path);
    expect(problem?.message).toContain(words);
  });
});
