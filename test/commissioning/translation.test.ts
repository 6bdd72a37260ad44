import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { atStandard, expectedReadings, translatePoint, translationProcedures } from "../../src/commissioning/index.js";
import { isMissing, type Known } from "../../src/formula/index.js";
import type { Quantity } from "../../src/quantity/index.js";
import { module440 } from "./modules.js";

const number = (value: Known<Quantity>): number => (isMissing(value) ? NaN : value.number);

describe("a measured string at standard test conditions", () => {
  test.prop({
    cell: fc.integer({ min: -10, max: 75 }),
    irradiance: fc.integer({ min: 200, max: 1200 }),
    inLight: fc.boolean(),
  })("is the datasheet where it read what was expected", ({ cell, irradiance, inLight }) => {
    const light = {
      module: module440,
      cellTemperature: cell,
      irradiance,
      ...(inLight ? { irradianceFactor: "0.06" } : {}),
    };
    const expected = expectedReadings({ ...light, modules: 14 });
    const read = <Q>(band: { readonly expected: Known<Q> }): Q => band.expected as Q;
    const standard = atStandard({
      ...light,
      openCircuitVoltage: read(expected.openCircuitVoltage),
      shortCircuitCurrent: read(expected.shortCircuitCurrent),
      operatingVoltage: read(expected.operatingVoltage),
      operatingCurrent: read(expected.operatingCurrent),
      power: read(expected.power),
    });
    expect(number(standard.openCircuitVoltage)).toBeCloseTo(548.8, 9);
    expect(number(standard.shortCircuitCurrent)).toBeCloseTo(14.1, 9);
    expect(number(standard.operatingVoltage)).toBeCloseTo(459.2, 9);
    expect(number(standard.operatingCurrent)).toBeCloseTo(13.42, 9);
    expect(number(standard.power)).toBeCloseTo(6160, 6);
  });

  it("is missing where it was not read", () => {
    const standard = atStandard({ module: module440, cellTemperature: "45 °C", irradiance: "800 W/m2" });
    expect(standard.power).toEqual({ missing: ["power"] });
  });
});

describe("a point of a curve", () => {
  const point = {
    measuredVoltage: "420 V",
    measuredCurrent: "9 A",
    measuredIrradiance: "700 W/m2",
    measuredTemperature: "48 °C",
    targetIrradiance: "1000 W/m2",
    targetTemperature: "25 °C",
  };
  const string = { seriesResistance: "3.5 ohm", curveCorrection: "0.01 ohm" };
  const byProcedure = {
    "procedure 1": {
      ...string,
      measuredShortCircuitCurrent: "9.9 A",
      absoluteCurrentCoefficient: "7 mA/K",
      absoluteVoltageCoefficient: "-1.43 V/K",
    },
    "procedure 2 of 2009": {
      ...string,
      measuredOpenCircuitVoltage: "510 V",
      shortCircuitCurrentCoefficient: "0.05 %/K",
      openCircuitVoltageCoefficient: "-0.26 %/K",
      irradianceFactor: "0.05",
    },
    "procedure 2 of 2021": {
      ...string,
      openCircuitVoltage: "548.8 V",
      shortCircuitCurrentCoefficient: "0.05 %/K",
      openCircuitVoltageCoefficient: "-0.26 %/K",
      linearIrradianceFactor: "0.05",
      quadraticIrradianceFactor: "0",
    },
    "point by point": {
      shortCircuitCurrentCoefficient: "0.05 %/K",
      openCircuitVoltageCoefficient: "-0.26 %/K",
      irradianceFactor: "0.05",
    },
  } as const;

  it.each(translationProcedures.map(({ key }) => key))(
    "%s: the four procedures agree within 4 % near the knee",
    (procedure) => {
      const { voltage, current } = translatePoint({ procedure, ...byProcedure[procedure], ...point } as never);
      expect(Math.abs(current.number / 12.7 - 1)).toBeLessThan(0.04);
      expect(Math.abs(voltage.number / 448 - 1)).toBeLessThan(0.04);
    },
  );

  it.each(translationProcedures.map(({ key }) => key))(
    "%s: stays where it is under its own conditions",
    (procedure) => {
      const here = { targetIrradiance: point.measuredIrradiance, targetTemperature: point.measuredTemperature };
      const { voltage, current } = translatePoint({ procedure, ...byProcedure[procedure], ...point, ...here } as never);
      expect(current.number).toBeCloseTo(9, 9);
      expect(voltage.number).toBeCloseTo(420, 9);
    },
  );
});
