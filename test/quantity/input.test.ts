import { Decimal } from "decimal.js";
import { describe, expect, it } from "vitest";
import { given, type InputError, isInputError, isQuantity, nearestName } from "../../src/quantity/index.js";

function problem(input: unknown, unit = "V"): InputError["problems"][number] {
  try {
    given(input as string, unit as "V");
  } catch (error) {
    if (isInputError(error)) return error.problems[0]!;
    throw error;
  }
  throw new Error("nothing was thrown");
}

describe("text", () => {
  it.each([
    ["39.2 V", "39.2"],
    [" 39.2  V ", "39.2"],
    ["39.2V", "39.2"],
    ["39.2", "39.2"],
    ["-39.2 V", "-39.2"],
    ["\u221239.2 V", "-39.2"],
    ["+1e3 mV", "1"],
    ["0.5 kV", "500"],
    [".5 V", "0.5"],
    ["5. V", "5"],
    ["39.2\u00a0V", "39.2"],
    ["３９.２ V", "39.2"],
    ["1e-60 V", `0.${"0".repeat(59)}1`],
  ])("%j is read as %s V", (text, expected) => {
    expect(given(text, "V").text).toBe(expected);
  });

  it.each([
    ["", "empty"],
    ["   ", "empty"],
    ["39,2 V", "decimal-comma"],
    ["1,000 V", "decimal-comma"],
    ["V", "not-a-number"],
    ["abc", "not-a-number"],
    ["1.2.3 V", "not-a-number"],
    ["NaN", "not-finite"],
    ["Infinity V", "not-a-number"],
    ["0x10 V", "unknown-unit"],
    ["1 Volt", "unknown-unit"],
    ["1 A", "other-dimension"],
    ["1e61 V", "too-large"],
    [`1${"0".repeat(70)} V`, "too-large"],
    ["1.23456789012345678901234567890123456 V", "too-many-digits"],
  ])("%j is refused as %s", (text, code) => {
    expect(problem(text).code).toBe(code);
  });

  it("names the nearest unit, and the lookup for a gauge size", () => {
    expect(problem("1 kv").message).toContain("did you mean");
    expect(problem("2/0 AWG", "mm²").message).toContain("awgArea");
  });
});

describe("numbers", () => {
  it("are their shortest decimal text", () => {
    expect(given(0.1, "V").text).toBe("0.1");
    expect(given(1e21, "V").text).toBe("1000000000000000000000");
  });

  it.each([
    [Number.NaN, "not-finite"],
    [Number.POSITIVE_INFINITY, "not-finite"],
    [null, "wrong-type"],
    [undefined, "missing"],
    [true, "wrong-type"],
    [{}, "wrong-type"],
    [[1], "wrong-type"],
    [1n, "wrong-type"],
  ])("%s is refused as %s", (input, code) => {
    expect(problem(input).code).toBe(code);
  });
});

describe("quantities", () => {
  it("are frozen and plain to print", () => {
    const voltage = given("39.2 V", "V", "datasheet");
    expect(Object.isFrozen(voltage)).toBe(true);
    expect(JSON.stringify(voltage)).toBe('{"value":"39.2","unit":"V"}');
    expect(voltage.show({ digits: 2 })).toBe("39 V");
    expect(() => voltage.show({ digits: 0 })).toThrow(/digits/);
    expect(() => voltage.in("A" as "V")).toThrow(/does not convert/);
    expect(isQuantity({ text: "1" })).toBe(false);
  });

  it("of another copy of the package are re-made from their text", () => {
    const foreign = { text: "2.5", unit: "kV", keeps: Infinity, origin: { kind: "given" } };
    expect(given(foreign as never, "V").text).toBe("2500");
  });

  it("do not read or change the settings of a host's own decimal.js", () => {
    Decimal.set({ precision: 5, rounding: 0, toExpNeg: 0, toExpPos: 0 });
    try {
      expect(given("1.23456789 V", "mV").text).toBe("1234.56789");
      expect(Decimal.precision).toBe(5);
    } finally {
      Decimal.set({ defaults: true });
    }
  });
});

describe("nearest name", () => {
  it.each([
    ["opencircuitvoltage", "openCircuitVoltage"],
    ["startVoltge", "startVoltage"],
    ["x", undefined],
    ["", undefined],
  ])("for %j is %s", (name, expected) => {
    expect(nearestName(name, ["openCircuitVoltage", "startVoltage"])).toBe(expected);
  });
});
