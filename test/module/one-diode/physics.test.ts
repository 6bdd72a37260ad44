import { expect, it } from "vitest";
import {
  bandGapVoltageAt,
  openCircuitVoltageAt,
  shortCircuitCurrentUnder,
  thermalVoltage,
} from "../../../src/module/index.js";
import * as physics from "../../../src/module/one-diode/physics.js";

// The doubles of the model and the constants of the declared formulas are the same numbers.
it("doubles and declared constants agree", () => {
  const { boltzmannPerCharge, absoluteZero } = thermalVoltage.declaration.constants!;
  expect(physics.BOLTZMANN_PER_CHARGE.toPrecision(10)).toBe(Number(boltzmannPerCharge!.value).toPrecision(10));
  expect(physics.ABSOLUTE_ZERO).toBe(Number(absoluteZero!.value));
  const { bandGapAtStc, bandGapCoefficient } = bandGapVoltageAt.declaration.constants!;
  expect([physics.BAND_GAP, -physics.BAND_GAP_SLOPE]).toEqual([
    Number(bandGapAtStc!.value),
    Number(bandGapCoefficient!.value),
  ]);
  expect(physics.STC_TEMPERATURE).toBe(Number(openCircuitVoltageAt.declaration.constants!["stcTemperature"]!.value));
  expect(physics.STC_IRRADIANCE).toBe(Number(shortCircuitCurrentUnder.declaration.constants!["stcIrradiance"]!.value));
});
