import { describe, expect, it } from "vitest";
import { evaluateReading, readingKinds } from "../../src/commissioning/index.js";
import { missing } from "../../src/formula/index.js";

const voltage = (value: string) =>
  evaluateReading({ reading: "openCircuitVoltage", at: "INV1/A", value, low: "494 V", high: "546 V" });

describe("a reading against its band", () => {
  it.each([
    ["494 V", "within"],
    ["493.9 V", "outside"],
    ["494.1 V", "within"],
    ["546 V", "within"],
    ["546.1 V", "outside"],
    ["545.9 V", "within"],
    ["-520 V", "outside"],
    ["0.52 kV", "within"],
  ])("%s is %s", (value, verdict) => {
    expect(voltage(value).verdict).toBe(verdict);
  });

  it("is missing where it was not taken, open where its band is not known", () => {
    const at = { reading: "openCircuitVoltage", at: "INV1/A" } as const;
    expect(evaluateReading({ ...at, value: missing("sheet"), low: "1 V", high: "2 V" })).toMatchObject({
      verdict: "missing",
      missing: ["sheet"],
    });
    expect(
      evaluateReading({ ...at, value: "1 V", low: missing("irradiance"), high: missing("irradiance") }),
    ).toMatchObject({ verdict: "open", missing: ["irradiance"] });
    expect(evaluateReading({ ...at, value: "1 V" }).verdict).toBe("open");
    expect(evaluateReading({ ...at, value: "1 V", low: "2 V", high: missing("irradiance") }).verdict).toBe("outside");
  });

  it("names rule, place and reading in its checks", () => {
    expect(voltage("520 V").checks.map(({ id }) => id)).toEqual([
      "commissioning/voltage-not-below-band/INV1/A/openCircuitVoltage",
      "commissioning/voltage-not-above-band/INV1/A/openCircuitVoltage",
    ]);
  });

  it("refuses another kind of quantity, and an end that the kind does not have", () => {
    expect(() => voltage("12 A")).toThrow("voltage");
    expect(() => evaluateReading({ reading: "insulationPositive", at: "A", value: "2 MΩ", high: "3 MΩ" })).toThrow(
      "no high end",
    );
    expect(() => evaluateReading({ reading: "irradiance", at: "South", value: "800 W/m2", low: "1 W/m2" })).toThrow(
      "no low end",
    );
  });

  it("knows each kind of reading once", () => {
    const keys = readingKinds.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it.each([
    ["voltageNeutral", "3 V", { high: "10 V" }, "within"],
    ["energy", "36 kWh", { low: "36.3 kWh" }, "outside"],
    ["operatingCurrent", "10 A", { low: "9 A", high: "11 A" }, "within"],
    ["acInsulation", "0.9 MΩ", { low: "1 MΩ" }, "outside"],
    ["voltageL2", "253.1 V", { low: "207 V", high: "253 V" }, "outside"],
  ] as const)("%s of %s within %j is %s", (reading, value, ends, verdict) => {
    expect(evaluateReading({ reading, at: "X", value, ...ends }).verdict).toBe(verdict);
  });
});
