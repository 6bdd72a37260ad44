import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { returnPeriodFactor, returnPeriodMaximum, returnPeriodMinimum } from "../../src/climate/index.js";

/** Name, number, mean and deviation of the annual minima, of the maxima, then the 20- and 50-year minima and maxima. */
type Station = readonly [string, string, string, string, string, string, string, string, string, string];

// "ASHRAE 2013 station file:undated": 85 stations of a copy without an editor. It is a check of the form, not evidence.
const stations = JSON.parse(
  readFileSync(new URL("ashrae-2013-stations.json", import.meta.url), "utf8"),
) as readonly Station[];

describe("the factor of a return period", () => {
  it.each([
    [5, "0.719"],
    [10, "1.305"],
    [20, "1.866"],
    [50, "2.592"],
  ])("of %i years is %s", (returnPeriod, due) => {
    expect(returnPeriodFactor({ returnPeriod: `${returnPeriod} a` }).number.toFixed(3)).toBe(due);
  });

  it("of two years is below zero: the mean is rarer than every other year", () => {
    expect(returnPeriodFactor({ returnPeriod: "2 a" }).number).toBeLessThan(0);
  });

  it("is refused below two years", () => {
    expect(() => returnPeriodFactor({ returnPeriod: "1 a" })).toThrow("2 a or more");
    expect(() => returnPeriodFactor({ returnPeriod: "1.9 a" })).toThrow("2 a or more");
  });
});

describe("85 stations", () => {
  it("were all read", () => {
    expect(stations).toHaveLength(85);
  });

  // Mean and deviation are printed to 0.1 K: the factor times half a unit, and half a unit of the mean and of the result.
  it.each(stations)("%s has its return-period extremes within the rounding of its data", (...station) => {
    const [, , lowMean, lowDeviation, highMean, highDeviation, low20, low50, high20, high50] = station;
    for (const [years, low, high] of [
      [20, low20, high20],
      [50, low50, high50],
    ] as const) {
      const returnPeriod = `${years} a`;
      const reach = 0.05 * returnPeriodFactor({ returnPeriod }).number + 0.1 + 1e-9;
      const coldest = returnPeriodMinimum({
        meanAnnualMinimum: Number(lowMean),
        standardDeviation: Number(lowDeviation),
        returnPeriod,
      });
      const hottest = returnPeriodMaximum({
        meanAnnualMaximum: Number(highMean),
        standardDeviation: Number(highDeviation),
        returnPeriod,
      });
      expect(Math.abs(coldest.number - Number(low))).toBeLessThan(reach);
      expect(Math.abs(hottest.number - Number(high))).toBeLessThan(reach);
    }
  });
});

describe("laws", () => {
  const years = fc.integer({ min: 3, max: 200 });
  const mean = fc.integer({ min: -40, max: 40 });
  const spread = fc.integer({ min: 1, max: 8 });

  test.prop([mean, spread, years, fc.integer({ min: 1, max: 100 })])(
    "rarer is more extreme, on both sides",
    (average, standardDeviation, n, more) => {
      const cold = (period: number): number =>
        returnPeriodMinimum({ meanAnnualMinimum: average, standardDeviation, returnPeriod: `${period} a` }).number;
      const hot = (period: number): number =>
        returnPeriodMaximum({ meanAnnualMaximum: average, standardDeviation, returnPeriod: `${period} a` }).number;
      expect(cold(n + more)).toBeLessThan(cold(n));
      expect(hot(n + more)).toBeGreaterThan(hot(n));
      expect(cold(n) + hot(n)).toBeCloseTo(2 * average, 9);
    },
  );

  test.prop([mean, years])("without a spread every year is alike", (average, n) => {
    expect(
      returnPeriodMinimum({ meanAnnualMinimum: average, standardDeviation: 0, returnPeriod: `${n} a` }).number,
    ).toBe(average);
  });
});
