import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  earthFaultPosition,
  evaluateReading,
  expectedReadings,
  type HintKey,
  hintsFor,
  longestStringThatTells,
  type ReadString,
} from "../../src/commissioning/index.js";
import { missing } from "../../src/formula/index.js";
import { given } from "../../src/quantity/index.js";
import { module440 } from "./modules.js";

interface Read {
  readonly modules?: number;
  readonly voltage?: string;
  readonly current?: string;
  readonly working?: readonly [string, string];
}

// At 45 °C and 800 W/m²: 37.16 V a module, 11.39 A short circuit, 30.99 V and 10.78 A working.
function string(at: string, { modules = 14, voltage, current, working }: Read): ReadString {
  const expected = expectedReadings({ module: module440, modules, cellTemperature: "45 °C", irradiance: "800 W/m2" });
  const not = missing("sheet");
  return {
    at,
    modules,
    expected,
    openCircuitVoltage: voltage === undefined ? not : given(voltage, "V"),
    shortCircuitCurrent: current === undefined ? not : given(current, "A"),
    operatingVoltage: working === undefined ? not : given(working[0], "V"),
    operatingCurrent: working === undefined ? not : given(working[1], "A"),
  };
}
const hints = (...reads: Read[]): [HintKey, string][] =>
  hintsFor(reads.map((read, index) => string(`S${index + 1}`, read))).map(({ key, at }) => [key, at.join(" ")]);

describe("hints from the voltage", () => {
  it.each<[string, HintKey[]]>([
    ["520.3 V", []],
    ["-520.3 V", ["reversedPolarity"]],
    ["0.4 V", ["noVoltage"]],
    ["483.1 V", ["oneModuleFewer"]],
    ["-483.1 V", ["reversedPolarity", "oneModuleFewer"]],
    ["446 V", ["modulesFewer"]],
    ["557.4 V", ["modulesMore"]],
  ])("%s of 520.3 V: %j", (voltage, keys) => {
    expect(hints({ voltage }).map(([key]) => key)).toEqual(keys);
  });

  it("a long string that lacks less than a module hints at a part of one", () => {
    // 24 modules, 891.9 V expected: 846 V lacks 5.1 %, which is 1.2 modules; 30 modules: 1056 V of 1114.9 V lacks 1.6.
    expect(hints({ modules: 24, voltage: "846 V" })).toEqual([["oneModuleFewer", "S1"]]);
    expect(hints({ modules: 10, voltage: "351 V" })).toEqual([["partOfModule", "S1"]]);
    expect(hints({ modules: 10, voltage: "391 V" })).toEqual([["colderOrMore", "S1"]]);
  });

  it("tells swapped strings by each reading what the other should", () => {
    expect(hints({ modules: 14, voltage: "446 V" }, { modules: 12, voltage: "520.3 V" })).toEqual([
      ["swappedStrings", "S1 S2"],
    ]);
  });

  it("looks at the conditions first where all strings deviate alike", () => {
    expect(hints({ voltage: "486 V" }, { voltage: "487 V" }, { modules: 12, voltage: "417 V" })).toEqual([
      ["allAlike", "S1 S2 S3"],
    ]);
    expect(hints({ voltage: "486 V" }, { voltage: "520 V" })).toEqual([["oneModuleFewer", "S1"]]);
  });
});

describe("hints from current and work", () => {
  it.each<[Read, HintKey[]]>([
    [{ voltage: "520 V", current: "11.4 A" }, []],
    [{ voltage: "520 V", current: "9 A" }, ["lessCurrent"]],
    [{ voltage: "520 V", current: "0.2 A" }, ["noCurrent"]],
    [{ voltage: "520 V", current: "22.8 A" }, ["twiceCurrent"]],
    [{ voltage: "520 V", current: "13 A" }, ["moreCurrent"]],
    [{ voltage: "483 V", current: "9 A" }, ["oneModuleFewer"]],
    [{ working: ["433 V", "10.8 A"] }, []],
    [{ working: ["390 V", "10.8 A"] }, ["bypassed"]],
    [{ working: ["480 V", "6 A"] }, ["throttled"]],
  ])("%j: %j", (read, keys) => {
    expect(hints(read).map(([key]) => key)).toEqual(keys);
  });

  it("judge nothing: they carry no verdict", () => {
    expect(Object.keys(hintsFor([string("S1", { voltage: "483 V" })])[0]!)).toEqual([
      "key",
      "at",
      "text",
      "modulesRead",
    ]);
  });
});

describe("the string length up to which a missing module is noticed", () => {
  it("is 19 by the band of 5 %, and 20 among identical strings", () => {
    expect(longestStringThatTells({ against: "expected value" })).toMatchObject({
      modules: 19,
      last: { verdict: "met" },
      next: { verdict: "not met" },
    });
    expect(longestStringThatTells({ against: "identical strings" }).modules).toBe(20);
  });

  it("is shorter where the reading itself is uncertain or the band is wider, longer where it is narrower", () => {
    expect(longestStringThatTells({ against: "expected value", uncertainty: "2 %" }).modules).toBe(14);
    expect(longestStringThatTells({ against: "identical strings", uncertainty: "2 %" }).modules).toBe(15);
    expect(longestStringThatTells({ against: "expected value", tolerance: "10 %" }).modules).toBe(9);
    expect(longestStringThatTells({ against: "expected value", tolerance: "2 %" }).modules).toBe(49);
    expect(longestStringThatTells({ against: "expected value", tolerance: "0.01 %" })).toMatchObject({
      modules: null,
      next: null,
    });
    expect(longestStringThatTells({ against: "expected value", uncertainty: "95 %" })).toMatchObject({
      modules: null,
      last: null,
    });
  });

  test.prop({ modules: fc.integer({ min: 2, max: 40 }), cell: fc.integer({ min: -10, max: 70 }) })(
    "up to it a missing module is always outside, beyond it never",
    ({ modules, cell }) => {
      const light = { module: module440, cellTemperature: cell, irradiance: 900 };
      const { low, high } = expectedReadings({ ...light, modules }).openCircuitVoltage;
      const value = expectedReadings({ ...light, modules: modules - 1 }).openCircuitVoltage.expected;
      const { verdict } = evaluateReading({ reading: "openCircuitVoltage", at: "S1", value, low, high });
      expect(verdict).toBe(
        modules <= longestStringThatTells({ against: "expected value" }).modules! ? "outside" : "within",
      );
    },
  );
});

describe("place of a single earth fault", () => {
  it("divides the string as the voltages to earth do", () => {
    expect(
      earthFaultPosition({ modules: 14, positiveToEarth: "148.64 V", negativeToEarth: "371.6 V" }).number,
    ).toBeCloseTo(4, 9);
    expect(() => earthFaultPosition({ modules: 14, positiveToEarth: "0 V", negativeToEarth: "0 V" })).toThrow(
      "earth fault",
    );
  });
});
