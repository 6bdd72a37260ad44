import { describe, expect, it } from "vitest";
import { identicalStrings } from "../../src/commissioning/index.js";
import { missing } from "../../src/formula/index.js";

const voltages = (...values: (string | ReturnType<typeof missing>)[]) =>
  identicalStrings({
    at: "South",
    reading: "openCircuitVoltage",
    strings: values.map((value, index) => ({ at: `S${index + 1}`, value })),
  });

describe("identical strings", () => {
  it.each([
    ["525 V", "500 V", "met"], // exactly 5 %
    ["525.1 V", "500 V", "not met"],
    ["524.9 V", "500 V", "met"],
    ["500 V", "525.1 V", "not met"],
  ])("%s beside %s: %s", (one, other, verdict) => {
    expect(voltages(one, other).checks.map((check) => check.verdict)).toEqual([verdict]);
  });

  it("says by how much each differs from the others", () => {
    const { spread, deviations } = voltages("520 V", "520 V", "494 V");
    expect(spread).toMatchObject({ unit: "1" });
    expect(deviations.map(({ deviation }) => ("text" in deviation ? deviation.text : null))).toEqual([
      expect.stringMatching(/^0\.0256/),
      expect.stringMatching(/^0\.0256/),
      "-0.05",
    ]);
  });

  it("is open where one was not read, or reads nothing or reversed", () => {
    expect(voltages("520 V", missing("sheet: S2")).checks[0]).toMatchObject({
      verdict: "open",
      missing: ["sheet: S2"],
    });
    expect(voltages("520 V", "521 V", "-520 V").checks[0]).toMatchObject({
      verdict: "open",
      missing: ["a reading above zero at S3"],
    });
    expect(voltages("520 V", "0 V").checks[0]!.verdict).toBe("open");
  });

  it("has nothing to compare for one string", () => {
    expect(voltages("520 V").checks).toEqual([]);
  });

  it("compares short-circuit currents with each other, operating currents with their average", () => {
    const currents = (reading: "shortCircuitCurrent" | "operatingCurrent", ...values: string[]) =>
      identicalStrings({ reading, strings: values.map((value, index) => ({ at: `S${index + 1}`, value })) }).checks.map(
        ({ id, verdict }) => [id, verdict],
      );
    expect(currents("shortCircuitCurrent", "10 A", "10.5 A")).toEqual([
      ["commissioning/identical-currents-agree", "met"],
    ]);
    expect(currents("shortCircuitCurrent", "10 A", "10.51 A")).toEqual([
      ["commissioning/identical-currents-agree", "not met"],
    ]);
    expect(currents("operatingCurrent", "9.5 A", "10.5 A")).toEqual([
      ["commissioning/current-near-average/S1", "met"],
      ["commissioning/current-near-average/S2", "met"],
    ]);
    expect(currents("operatingCurrent", "9.4 A", "10.6 A").map(([, verdict]) => verdict)).toEqual([
      "not met",
      "not met",
    ]);
  });
});
