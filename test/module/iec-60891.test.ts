import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  openCircuitVoltageRatio,
  procedure1Current,
  procedure1Voltage,
  procedure2Current2009,
  procedure2Current2021,
  procedure2Voltage2009,
  procedure2Voltage2021,
  seriesResistanceAt,
} from "../../src/module/index.js";

interface Conditions {
  readonly irradiance: number;
  readonly temperature: number;
}
interface Point {
  readonly current: number;
  readonly voltage: number;
}

const conditions: fc.Arbitrary<Conditions> = fc.record({
  irradiance: fc.integer({ min: 700, max: 1100 }),
  temperature: fc.integer({ min: 5, max: 70 }),
});
const points: fc.Arbitrary<Point> = fc.record({
  current: fc.integer({ min: 0, max: 900 }).map((n) => n / 100),
  voltage: fc.integer({ min: 0, max: 4000 }).map((n) => n / 100),
});
const device = { seriesResistance: "0.3 ohm", curveCorrection: "0.001 ohm" };

function procedure1(point: Point, from: Conditions, to: Conditions, shortCircuit: number): Point {
  const both = { measuredTemperature: from.temperature, targetTemperature: to.temperature };
  const correctedCurrent = procedure1Current({
    measuredCurrent: point.current,
    measuredShortCircuitCurrent: shortCircuit,
    measuredIrradiance: from.irradiance,
    targetIrradiance: to.irradiance,
    ...both,
    absoluteCurrentCoefficient: "0 mA/K",
  });
  const voltage = procedure1Voltage({
    measuredVoltage: point.voltage,
    measuredCurrent: point.current,
    correctedCurrent,
    ...both,
    absoluteVoltageCoefficient: "-120 mV/K",
    seriesResistance: "0.3 ohm",
    curveCorrection: "0 ohm",
  });
  return { current: correctedCurrent.number, voltage: voltage.number };
}

function procedure2of2021(point: Point, from: Conditions, to: Conditions): Point {
  const both = { measuredTemperature: from.temperature, targetTemperature: to.temperature };
  const ratio = (irradiance: number) =>
    openCircuitVoltageRatio({ irradiance, linearIrradianceFactor: "0.06", quadraticIrradianceFactor: "0.002" });
  const correctedCurrent = procedure2Current2021({
    measuredCurrent: point.current,
    measuredIrradiance: from.irradiance,
    targetIrradiance: to.irradiance,
    ...both,
    shortCircuitCurrentCoefficient: "0.05 %/K",
  });
  const voltage = procedure2Voltage2021({
    measuredVoltage: point.voltage,
    measuredCurrent: point.current,
    correctedCurrent,
    openCircuitVoltage: "39 V",
    measuredVoltageRatio: ratio(from.irradiance),
    targetVoltageRatio: ratio(to.irradiance),
    ...both,
    openCircuitVoltageCoefficient: "-0.3 %/K",
    measuredSeriesResistance: seriesResistanceAt({ ...device, cellTemperature: from.temperature }),
    curveCorrection: "0.001 ohm",
  });
  return { current: correctedCurrent.number, voltage: voltage.number };
}

describe("translation of measured points", () => {
  it("by procedure 1, computed by hand", () => {
    // I_2 = 7 + 8 · (1000/900 − 1) − 0.004 · 20 = 7.8089 A; U_2 = 30 − 0.3 · 0.809 + 0.001 · 7.809 · 20 + 0.12 · 20 = 32.3135 V
    const both = { measuredTemperature: "45 °C", targetTemperature: "25 °C" };
    const current = procedure1Current({
      measuredCurrent: "7 A",
      measuredShortCircuitCurrent: "8 A",
      measuredIrradiance: "900 W/m2",
      targetIrradiance: "1000 W/m2",
      ...both,
      absoluteCurrentCoefficient: "4 mA/K",
    });
    expect(current.show({ digits: 6 })).toBe("7.80889 A");
    expect(
      procedure1Voltage({
        measuredVoltage: "30 V",
        measuredCurrent: "7 A",
        correctedCurrent: "7.809 A",
        ...both,
        absoluteVoltageCoefficient: "-120 mV/K",
        ...device,
      }).text,
    ).toBe("32.31348");
  });

  it("by procedure 2 of 2009, with a logarithm of the light", () => {
    const same = {
      measuredIrradiance: "800 W/m2",
      targetIrradiance: "1000 W/m2",
      measuredTemperature: "25 °C",
      targetTemperature: "25 °C",
    };
    expect(
      procedure2Current2009({ measuredCurrent: "8 A", ...same, shortCircuitCurrentCoefficient: "0.05 %/K" }).text,
    ).toBe("10");
    const voltage = procedure2Voltage2009({
      measuredVoltage: "30 V",
      measuredCurrent: "8 A",
      correctedCurrent: "10 A",
      measuredOpenCircuitVoltage: "37 V",
      ...same,
      openCircuitVoltageCoefficient: "-0.3 %/K",
      irradianceFactor: "0.06",
      ...device,
    });
    // 30 + 37 · 0.06 · ln 1.25 − 0.3 · 2
    expect(voltage.show({ digits: 6 })).toBe("29.8954 V");
  });

  test.prop([points, conditions])("to the same conditions is the identity, in every procedure", (point, at) => {
    for (const after of [procedure1(point, at, at, 9), procedure2of2021(point, at, at)]) {
      expect(after.current).toBeCloseTo(point.current, 12);
      expect(after.voltage).toBeCloseTo(point.voltage, 12);
    }
  });

  test.prop([points, conditions])("to standard test conditions and back is the identity", (point, at) => {
    const stc = { irradiance: 1000, temperature: 25 };
    // The short-circuit current of the corrected curve is that of the measured one in the new light.
    const there = procedure1(point, at, stc, 9);
    const back = procedure1(there, stc, at, (9 * stc.irradiance) / at.irradiance);
    expect(back.current).toBeCloseTo(point.current, 9);
    expect(back.voltage).toBeCloseTo(point.voltage, 9);
  });

  test.prop([points, conditions])(
    "by procedure 2 of 2021 comes back too: series resistance and curve correction undo each other",
    (point, at) => {
      const stc = { irradiance: 1000, temperature: 25 };
      const back = procedure2of2021(procedure2of2021(point, at, stc), stc, at);
      expect(back.current).toBeCloseTo(point.current, 9);
      expect(back.voltage).toBeCloseTo(point.voltage, 9);
    },
  );
});
