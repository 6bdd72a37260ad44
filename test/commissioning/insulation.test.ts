import { describe, expect, it } from "vitest";
import { acInsulation, arrayInsulation, evaluateReading } from "../../src/commissioning/index.js";
import { isMissing, type Known, missing } from "../../src/formula/index.js";
import type { Quantity } from "../../src/quantity/index.js";

const text = (value: Known<Quantity>): string => (isMissing(value) ? "missing" : `${value.text} ${value.unit}`);
const beside = { arrayPower: "8 kW", lowestRating: "1500 V" };
const array = (stringVoltage: string) => arrayInsulation({ ...beside, stringVoltage });

describe("insulation test of an array", () => {
  it.each([
    // U_OC of the string, 1.25 times, test voltage, least resistance
    ["95.9 V", "119.875 V", "250 V", "0.5 MΩ"],
    ["96 V", "120 V", "500 V", "1 MΩ"],
    ["400 V", "500 V", "500 V", "1 MΩ"],
    ["400.1 V", "500.125 V", "1000 V", "1 MΩ"],
    ["800 V", "1000 V", "1000 V", "1 MΩ"],
    ["800.1 V", "1000.125 V", "1500 V", "1 MΩ"],
  ])("%s: system %s, test at %s, at least %s", (voltage, system, testVoltage, minimum) => {
    const insulation = array(voltage);
    expect([insulation.systemVoltage, insulation.testVoltage, insulation.minimum].map(text)).toEqual([
      system,
      testVoltage,
      minimum,
    ]);
  });

  it.each([
    ["10 kW", 1],
    ["10.01 kW", 2],
    ["0.4 kW", 1],
    ["20 kW", 2],
    ["24 kW", 3],
    ["1 MW", 100],
  ])("%s in %i sections", (arrayPower, sections) => {
    expect(arrayInsulation({ ...beside, stringVoltage: "500 V", arrayPower }).sections).toBe(sections);
  });

  it("never stresses what is under test beyond its rating", () => {
    const verdict = (lowestRating: string) =>
      arrayInsulation({ ...beside, stringVoltage: "500 V", lowestRating }).checks[0]!.verdict;
    expect([verdict("999 V"), verdict("1000 V"), verdict("1500 V")]).toEqual(["not met", "met", "met"]);
  });

  it("is open where the rating is not known, and missing where the voltage is not", () => {
    const open = arrayInsulation({
      ...beside,
      stringVoltage: "500 V",
      lowestRating: missing("moduleTypes.M.maximumSystemVoltage"),
    });
    expect(open.checks[0]).toMatchObject({ verdict: "open", missing: ["moduleTypes.M.maximumSystemVoltage"] });
    expect(arrayInsulation({ ...beside, stringVoltage: missing("strings") }).testVoltage).toEqual(missing("strings"));
  });

  it.each([
    ["0.999 MΩ", "outside"],
    ["1 MΩ", "within"],
    ["999.9 kΩ", "outside"],
    ["240 MΩ", "within"],
  ])("a reading of %s is %s", (value, verdict) => {
    expect(
      evaluateReading({ reading: "insulationPositive", at: "A", value, low: array("500 V").minimum }).verdict,
    ).toBe(verdict);
  });
});

describe("insulation test of an a.c. circuit", () => {
  it.each([
    ["230 V", "500 V"],
    ["500 V", "500 V"],
    ["500.1 V", "1000 V"],
    ["800 V", "1000 V"],
  ])("%s at %s", (circuitVoltage, testVoltage) => {
    expect(text(acInsulation({ circuitVoltage }).testVoltage)).toBe(testVoltage);
    expect(acInsulation({ circuitVoltage }).minimum.text).toBe("1");
  });

  it("is milder for SELV and PELV, and refused above low voltage", () => {
    expect(acInsulation("SELV or PELV").testVoltage.text).toBe("250");
    expect(acInsulation("SELV or PELV").minimum.text).toBe("0.5");
    expect(() => acInsulation({ circuitVoltage: "10 kV" })).toThrow("never extrapolated");
  });
});
