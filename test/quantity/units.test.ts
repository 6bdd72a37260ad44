import { describe, expect, it } from "vitest";
import { asciiUnit, dimensionOf, given, type Unit, unitFromText, units, unitsOf } from "../../src/quantity/index.js";

const every = Object.keys(units) as Unit[];

describe("conversion", () => {
  // Exact by definition: 1 ft = 0.3048 m, 1 in = 25.4 mm (international yard and pound agreement, 1959).
  it.each([
    ["1 ft", "m", "0.3048"],
    ["1 in", "mm", "25.4"],
    ["1000 ft", "m", "304.8"],
    ["0.3048 Ω/km", "Ω/kft", "0.0929030400"],
    ["1 Ω/km", "Ω/m", "0.001"],
    ["1 kV", "mV", "1000000"],
    ["1.5 kVA", "VA", "1500"],
    ["1 %", "1", "0.01"],
    ["90 min", "h", "1.5"],
    ["1 Ω·mm²/m", "Ω·m", "0.000001"],
    ["-0.27 %/K", "1/K", "-0.0027"],
    ["-130 mV/°C", "V/K", "-0.13"],
    ["1 m²", "mm²", "1000000"],
  ])("%s is %s %s", (text, unit, expected) => {
    const from = /[^\d.\s-].*$/u.exec(text)![0] as Unit;
    const quantity = given(text, from as "V").in(unit as "V");
    expect(Number(quantity.text)).toBe(Number(expected));
    expect(quantity.rounded).toBe(false);
  });

  it.each([
    ["-40 °F", "-40"],
    ["32 °F", "0"],
    ["77 °F", "25"],
    ["212 °F", "100"],
  ])("%s is %s °C", (fahrenheit, celsius) => {
    expect(given(fahrenheit, "°C").text).toBe(celsius);
  });

  it("marks a quotient that does not end, and a ratio with π, as rounded", () => {
    expect(given("1 m", "ft").rounded).toBe(true);
    expect(given("1 cmil", "mm²").rounded).toBe(true);
    // 10380 circular mils are 5.261 mm² (NFPA 70, chapter 9, table 8, 10 AWG: 5.261 mm²).
    expect(given("10.38 kcmil", "mm²").number).toBeCloseTo(5.2596, 3);
    expect(given("180 deg", "rad").number).toBeCloseTo(Math.PI, 14);
  });

  it("comes back to itself where both ways are exact, and keeps the first as a step", () => {
    const there = given("4.61 Ω/km", "Ω/m");
    expect(there.in("Ω/km").text).toBe("4.61");
    expect(there.origin.kind).toBe("conversion");
  });

  it("never converts between kinds", () => {
    for (const unit of every) {
      for (const other of every) {
        if (dimensionOf(unit) === dimensionOf(other)) expect(() => given(`1 ${unit}`, other as "V")).not.toThrow();
        else expect(() => given(`1 ${unit}`, other as "V")).toThrow(/is a unit of|do not convert/);
      }
    }
  });
});

describe("spelling", () => {
  it("reads back every unit, in its symbol and in ASCII", () => {
    for (const unit of every) {
      expect(unitFromText(unit)).toBe(unit);
      expect(unitFromText(asciiUnit(unit))).toBe(unit);
    }
  });

  it("has one ASCII spelling for each, each of its own", () => {
    const spellings = every.map(asciiUnit);
    expect(new Set(spellings).size).toBe(every.length);
    expect(spellings.filter((spelling) => !/^[\x20-\x7e]+$/.test(spelling))).toEqual([]);
  });

  it.each([
    ["mm²", "mm²"],
    ["mm2", "mm²"],
    ["\u2126", "Ω"],
    ["℃", "°C"],
    ["degC", "°C"],
    ["ohm/km", "Ω/km"],
    ["mV/A/m", "mV/(A·m)"],
    ["1/(km2*a)", "1/(km²·a)"],
    ["m ", "m"],
  ])("reads %s as %s", (text, unit) => {
    expect(unitFromText(text)).toBe(unit);
  });

  it.each(["", "v", "KV", "Volt", "mm³", "__proto__", "toString", "constructor"])("does not read %j", (text) => {
    expect(unitFromText(text)).toBeUndefined();
  });

  it("lists the units of a kind, its first unit first", () => {
    expect(unitsOf("current")).toEqual(["A", "kA", "mA"]);
  });
});
