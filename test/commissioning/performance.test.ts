import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  expectedDayEnergy,
  type MeasuredInterval,
  type Performance,
  performanceOver,
} from "../../src/commissioning/index.js";
import { isMissing, missing } from "../../src/formula/index.js";

const interval = (energy: string, irradiation: string, moduleTemperature = "25 °C"): MeasuredInterval => ({
  energy,
  irradiation,
  moduleTemperature,
});
const over = (intervals: readonly MeasuredInterval[], coefficient = "-0.3 %/K"): Performance => {
  const performance = performanceOver({
    arrayPower: "10 kW",
    maximumPowerCoefficient: coefficient,
    referenceTemperature: "25 °C",
    intervals,
  });
  if (isMissing(performance)) throw new Error("no interval was used");
  return performance;
};
const corrected = ({ temperatureCorrected }: Performance): number =>
  isMissing(temperatureCorrected) ? NaN : temperatureCorrected.number;

describe("performance ratio", () => {
  it("is energy over rated power, over irradiation in hours of full sun", () => {
    const performance = over([interval("6.4 kWh", "0.8 kWh/m2"), interval("3.6 kWh", "0.45 kWh/m2")]);
    expect(performance).toMatchObject({
      energy: { text: "10" },
      finalYield: { text: "1", unit: "h" },
      referenceYield: { text: "1.25", unit: "h" },
    });
    expect(performance.performanceRatio.text).toBe("0.8");
  });

  it("gives warm modules their due in the corrected form", () => {
    // At 45 °C a coefficient of −0.3 %/K leaves 94 %: 6.4 / (0.94 · 8).
    const performance = over([interval("6.4 kWh", "0.8 kWh/m2", "45 °C")]);
    expect(performance.performanceRatio.text).toBe("0.8");
    expect(corrected(performance)).toBeCloseTo(6.4 / 7.52, 12);
  });

  it("leaves out what was not measured or is excluded, energy and irradiation together, and says so", () => {
    const performance = over([
      interval("8 kWh", "1 kWh/m2"),
      { ...interval("0 kWh", "0.9 kWh/m2"), excluded: "grid outage" },
      { ...interval("1 kWh", "0.2 kWh/m2"), energy: missing("meter") },
      { ...interval("1 kWh", "0.2 kWh/m2"), irradiation: missing("sensor") },
      interval("0 kWh", "0 kWh/m2"),
    ]);
    expect(performance.used).toBe(1);
    expect(performance.performanceRatio.text).toBe("0.8");
    expect(performance.excluded).toEqual([
      { interval: 1, because: "grid outage" },
      { interval: 2, because: "the energy was not measured" },
      { interval: 3, because: "the irradiation was not measured" },
      { interval: 4, because: "without light" },
    ]);
  });

  it("corrects nothing without temperature or coefficient, and is missing without any interval", () => {
    const warm = { ...interval("8 kWh", "1 kWh/m2"), moduleTemperature: missing("thermometer") };
    expect(over([warm]).temperatureCorrected).toEqual(missing("intervals[0].moduleTemperature"));
    expect(
      isMissing(
        performanceOver({
          arrayPower: "10 kW",
          maximumPowerCoefficient: missing("module"),
          referenceTemperature: "25 °C",
          intervals: [],
        }),
      ),
    ).toBe(true);
  });

  const day = fc.array(
    fc.record({
      energy: fc.integer({ min: 1, max: 900 }),
      light: fc.integer({ min: 100, max: 1000 }),
      warm: fc.integer({ min: 0, max: 60 }),
    }),
    { minLength: 1, maxLength: 12 },
  );
  const intervals = (rows: readonly { energy: number; light: number; warm: number }[]) =>
    rows.map(({ energy, light, warm }) => interval(`${energy / 100} kWh`, `${light / 1000} kWh/m2`, `${warm} °C`));

  test.prop({ rows: day })(
    "does not depend on the size of the plant: twice the plant and twice the energy",
    ({ rows }) => {
      const twice = performanceOver({
        arrayPower: "20 kW",
        maximumPowerCoefficient: "-0.3 %/K",
        referenceTemperature: "25 °C",
        intervals: intervals(rows.map((row) => ({ ...row, energy: 2 * row.energy }))),
      }) as Performance;
      expect(twice.performanceRatio.number).toBeCloseTo(over(intervals(rows)).performanceRatio.number, 12);
    },
  );

  test.prop({ rows: day })("is the same corrected or not at the reference temperature", ({ rows }) => {
    const performance = over(intervals(rows.map((row) => ({ ...row, warm: 25 }))));
    expect(corrected(performance)).toBeCloseTo(performance.performanceRatio.number, 12);
  });

  test.prop({ rows: day })("is larger corrected where all modules were warmer than the reference", ({ rows }) => {
    const performance = over(intervals(rows.map((row) => ({ ...row, warm: 26 + row.warm }))));
    expect(corrected(performance)).toBeGreaterThan(performance.performanceRatio.number);
  });

  test.prop({ ratio: fc.integer({ min: 50, max: 100 }), light: fc.integer({ min: 1, max: 90 }) })(
    "a day that gives what is expected has the ratio that it was expected by",
    ({ ratio, light }) => {
      const irradiation = `${light / 10} kWh/m2`;
      const energy = expectedDayEnergy({ performanceRatio: `${ratio} %`, arrayPower: "10 kW", irradiation });
      const performance = over([{ energy, irradiation, moduleTemperature: "25 °C" }]);
      expect(performance.performanceRatio.number).toBeCloseTo(ratio / 100, 12);
    },
  );
});
