import { describe, expect, it } from "vitest";
import { isMissing, steps } from "../../src/formula/index.js";
import {
  designVoltages,
  hotCellTemperature,
  moduleAt,
  type ModuleDatasheet,
  mountings,
  readModule,
} from "../../src/module/index.js";
import { isInputError, isQuantity, type Problem, type Quantity } from "../../src/quantity/index.js";

/** A module of 440 W: a scenario of our own. */
const M440: ModuleDatasheet = {
  maximumPower: "440 W",
  openCircuitVoltage: "39.2 V",
  shortCircuitCurrent: "14.1 A",
  mppVoltage: "32.8 V",
  mppCurrent: "13.42 A",
  openCircuitVoltageCoefficient: "-0.26 %/K",
  shortCircuitCurrentCoefficient: "0.05 %/K",
  maximumPowerCoefficient: "-0.31 %/K",
  statedIn: "datasheet rev. 2",
};
const omitted = (from: ModuleDatasheet, key: keyof ModuleDatasheet): ModuleDatasheet => ({ ...from, [key]: undefined });
const PATH = "moduleTypes.M440";

function problemsOf(change: Partial<Record<keyof ModuleDatasheet, unknown>>): readonly Problem[] {
  try {
    readModule({ ...M440, ...change } as ModuleDatasheet, PATH);
  } catch (error) {
    if (isInputError(error)) return error.problems;
    throw error;
  }
  return [];
}

const text = (value: unknown): string => (isQuantity(value) ? `${value.text} ${value.unit}` : JSON.stringify(value));

describe("reading a datasheet", () => {
  it("brings every coefficient to one dimension, exactly", () => {
    const type = readModule({
      ...M440,
      openCircuitVoltageCoefficient: "-98 mV/K",
      shortCircuitCurrentCoefficient: "7.05 mA/K",
      maximumPowerCoefficient: "-1.32 W/K",
    });
    expect(text(type.openCircuitVoltageCoefficient)).toBe("-0.0025 1/K");
    expect(text(type.shortCircuitCurrentCoefficient)).toBe("0.0005 1/K");
    expect(text(type.maximumPowerCoefficient)).toBe("-0.003 1/K");
  });

  it("keeps where the values are from", () => {
    expect(steps(readModule(M440).openCircuitVoltage)[0]!.detail).toBe("datasheet rev. 2");
  });

  it("says which findings are missing, and where", () => {
    const type = readModule(M440, PATH);
    expect(type.maximumSeriesFuse).toEqual({ missing: ["moduleTypes.M440.maximumSeriesFuse"] });
    expect(isMissing(type.maximumSystemVoltage)).toBe(true);
  });

  it("reports every problem at its path, together", () => {
    const problems = problemsOf({
      openCircuitVoltageCoefficient: "0.26 %/K",
      mppVoltage: "",
      shortCircuitCurrentCoefficient: "5 V/K",
      maximumPowerCoefficient: "-0,3 %/K",
    });
    expect(problems.map(({ path, code }) => `${path} ${code}`)).toEqual([
      `${PATH}.mppVoltage empty`,
      `${PATH}.openCircuitVoltageCoefficient out-of-domain`,
      `${PATH}.shortCircuitCurrentCoefficient other-dimension`,
      `${PATH}.maximumPowerCoefficient decimal-comma`,
    ]);
  });

  it.each([
    ["V as mV", { openCircuitVoltage: 39200 }, "implausible"],
    ["a fact left out", { mppCurrent: undefined }, "missing"],
    ["mV as V in a coefficient", { openCircuitVoltageCoefficient: "-98 V/K" }, "out-of-domain"],
    ["mA as A in a coefficient", { shortCircuitCurrentCoefficient: "7 A/K" }, "out-of-domain"],
    ["a percentage without its unit", { openCircuitVoltageCoefficient: -0.26 }, "implausible"],
    ["null", { maximumPowerCoefficient: null }, "wrong-type"],
  ] as const)("refuses %s", (_, change, code) => {
    expect(problemsOf(change).map((problem) => problem.code)).toEqual([code]);
  });
});

describe("the coefficient of U_MPP", () => {
  it.each([
    [{ mppVoltageCoefficient: "-0.34 %/K" }, "stated", "-0.0034 1/K"],
    [{ mppCurrentCoefficient: "0.02 %/K" }, "from power and current", "-0.0033 1/K"],
    [{}, "from power and short-circuit current", "-0.0036 1/K"],
  ] as const)("with %j is %s", (change, basis, due) => {
    const type = readModule({ ...M440, ...change });
    expect([type.mppVoltageCoefficientBasis, text(type.mppVoltageCoefficient)]).toEqual([basis, due]);
  });

  it("is missing where nothing yields it; that of U_OC never stands in", () => {
    const without = omitted(M440, "maximumPowerCoefficient");
    const type = readModule(without, PATH);
    expect(type.mppVoltageCoefficientBasis).toBe("unknown");
    const { hotMppVoltage, hotOpenCircuitVoltage } = designVoltages(type, { coldest: "-14 °C", hottestCell: "71 °C" });
    expect(hotMppVoltage).toEqual({ missing: ["moduleTypes.M440.mppVoltageCoefficient"] });
    expect(text(hotOpenCircuitVoltage)).toBe("34.51168 V");
  });
});

describe("the voltages that strings are designed with", () => {
  const type = readModule(M440, PATH);
  const hottestCell = hotCellTemperature({ hottest: "36 °C", mounting: "close roof mount" });

  it("are those of the coldest ambient and of the hottest cells", () => {
    const voltages = designVoltages(type, { coldest: "-14 °C", hottestCell });
    expect(Object.fromEntries(Object.entries(voltages).map(([key, value]) => [key, text(value)]))).toMatchObject({
      coldCellTemperature: "-14 °C",
      hotCellTemperature: "71 °C",
      coldOpenCircuitVoltage: "43.17488 V",
      hotOpenCircuitVoltage: "34.51168 V",
      hotMppVoltage: "27.36832 V",
      coldMppVoltage: "37.40512 V",
      hotShortCircuitCurrent: "14.4243 A",
    });
  });

  it("are missing where the site's temperature is, and only then", () => {
    const voltages = designVoltages(type, { coldest: { missing: ["site.coldest"] }, hottestCell });
    expect(voltages.coldOpenCircuitVoltage).toEqual({ missing: ["site.coldest"] });
    expect(isQuantity(voltages.hotMppVoltage)).toBe(true);
  });

  it("need no coefficient of the current but for the current", () => {
    const without = omitted(M440, "shortCircuitCurrentCoefficient");
    const at = moduleAt(readModule(without, PATH), "0 °C");
    expect(at.shortCircuitCurrent).toEqual({ missing: ["moduleTypes.M440.shortCircuitCurrentCoefficient"] });
    expect(isQuantity(at.openCircuitVoltage)).toBe(true);
  });
});

describe("the hottest cells", () => {
  it.each([
    ["open rack", "61"],
    ["close roof mount", "71"],
  ])("on %s are at %s °C for an ambient of 36 °C", (mounting, due) => {
    expect((hotCellTemperature({ hottest: "36 °C", mounting }) as Quantity).text).toBe(due);
  });

  it("follow the Sandia model in calm air for an insulated back", () => {
    expect((hotCellTemperature({ hottest: "36 °C", mounting: "insulated back" }) as Quantity).show()).toBe("96.2 °C");
  });

  it("are known for every mounting of the list and refused for others", () => {
    for (const { key } of mountings)
      expect(isQuantity(hotCellTemperature({ hottest: "30 °C", mounting: key }))).toBe(true);
    expect(() => hotCellTemperature({ hottest: "30 °C", mounting: "floating" })).toThrow("mounting");
    expect(
      hotCellTemperature({ hottest: { missing: ["site.hottest"] }, mounting: { missing: ["roofs[0].mounting"] } }),
    ).toEqual({ missing: ["site.hottest", "roofs[0].mounting"] });
  });
});
