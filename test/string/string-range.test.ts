import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { missing } from "../../src/formula/index.js";
import { InputError } from "../../src/quantity/index.js";
import { legalCeiling, stringChecks, stringRange, type StringInput } from "../../src/string/index.js";

const plain: StringInput = {
  module: {
    coldOpenCircuitVoltage: "50 V",
    coldMppVoltage: "42 V",
    hotMppVoltage: "25 V",
    hotOpenCircuitVoltage: "35 V",
  },
  ceilings: [
    { key: "inverter", limit: "1000 V" },
    { key: "module", limit: "1500 V" },
  ],
  mppVoltageRange: ["200 V", "800 V"],
  startVoltage: "180 V",
  voltageDrop: "0",
};

describe("range of lengths", () => {
  it("is exact on the limit: 20 times 50 V is 1000 V, and one tenth more is one module less", () => {
    expect(stringRange(plain).longest?.text).toBe("20");
    const warmer = (cold: string) =>
      stringRange({ ...plain, module: { ...plain.module, coldOpenCircuitVoltage: cold } }).longest?.text;
    expect([warmer("49.9 V"), warmer("50 V"), warmer("50.1 V")]).toEqual(["20", "20", "19"]);
  });

  it("is exact at the lower end: 8 times 25 V is 200 V", () => {
    const hot = (voltage: string) =>
      stringRange({ ...plain, module: { ...plain.module, hotMppVoltage: voltage } }).shortest?.text;
    expect([hot("25.1 V"), hot("25 V"), hot("24.9 V")]).toEqual(["8", "8", "9"]);
  });

  it("names what limits each end, and the count inside the tracking range", () => {
    const { longestForYield, limitedBy } = stringRange(plain);
    expect(longestForYield?.text).toBe("19");
    expect(limitedBy.longest).toMatchObject({ id: "string/cold-voltage-within-inverter", verdict: "not met" });
    expect(limitedBy.shortest?.id).toBe("string/hot-mpp-voltage-within-range");
    expect(limitedBy.longestForYield?.id).toBe("string/cold-mpp-voltage-within-range");
  });

  it("takes drop, margin, end of life and start into account, each by its own check", () => {
    const shortest = (change: Partial<StringInput>) => {
      const range = stringRange({ ...plain, ...change });
      return [range.shortest?.text, range.limitedBy.shortest?.rule.id];
    };
    expect(shortest({ voltageDrop: "1 %" })).toEqual(["9", "string/hot-mpp-voltage-within-range"]);
    expect(shortest({ windowMargin: "1.1" })).toEqual(["9", "string/hot-mpp-voltage-within-range"]);
    expect(shortest({ module: { ...plain.module, endOfLifeMppVoltage: "22 V" } })).toEqual([
      "10",
      "string/end-of-life-mpp-voltage-within-range",
    ]);
    expect(shortest({ startVoltage: "351 V" })).toEqual(["11", "string/hot-voltage-reaches-start"]);
  });

  it("leaves open what is not known, and narrows nothing by it", () => {
    const range = stringRange({
      ...plain,
      ceilings: [...plain.ceilings, { key: "switch", limit: missing("inverters[0].dcSwitch") }],
    });
    expect(range.longest?.text).toBe("20");
    expect(range.open.map(({ id, missing: lacks }) => [id, lacks])).toEqual([
      ["string/cold-voltage-within-switch", ["inverters[0].dcSwitch"]],
    ]);
    const cold = stringRange({
      ...plain,
      module: { ...plain.module, coldOpenCircuitVoltage: missing("site.coldest") },
    });
    expect(cold.longest).toBeNull();
    expect(cold.open).toHaveLength(2);
  });

  it("says why no count fits", () => {
    const high = { ...plain, module: { ...plain.module, coldOpenCircuitVoltage: "1001 V" } };
    expect(stringRange(high)).toMatchObject({
      longest: null,
      because: "one module already exceeds the limit of the inverter",
    });
    const narrow = stringRange({ ...plain, ceilings: [{ key: "inverter", limit: "300 V" }] });
    expect(narrow.because).toBe(
      "at least 8 modules are due by the lower end of the tracking range, at most 6 fit by the inverter",
    );
    expect(stringRange(plain).because).toBeNull();
  });

  it("knows the ceilings of the rules", () => {
    const limit = legalCeiling({ rules: "NFPA 70:2023", place: "dwelling" });
    const range = stringRange({ ...plain, ceilings: [...plain.ceilings, { key: "legal ceiling", limit }] });
    expect([range.longest?.text, range.limitedBy.longest?.rule.id]).toEqual([
      "12",
      "string/cold-voltage-within-legal-ceiling",
    ]);
    expect(legalCeiling({ rules: "NFPA 70:2023", place: missing("site.building") })).toEqual(missing("site.building"));
  });

  it("keeps two limits of one kind apart by their names", () => {
    const two = stringRange({
      ...plain,
      at: "INV1/A",
      ceilings: [
        { key: "connector", name: "roof", limit: "1000 V" },
        { key: "connector", name: "inverter", limit: "900 V" },
      ],
    });
    expect(two.limitedBy.longest?.id).toBe("string/cold-voltage-within-connector/INV1/A/inverter");
    expect(two.limits.map(({ key }) => key).slice(0, 2)).toEqual(["connector roof", "connector inverter"]);
  });
});

describe("a string of a stated length", () => {
  it("has its margins in volts and in modules", () => {
    const { margins, checks } = stringChecks({ ...plain, modules: 18 });
    expect(margins.map(({ key, volts, modules }) => [key, volts.text, modules.text])).toEqual([
      ["inverter", "100", "2"],
      ["module", "600", "12"],
      ["upper end of the tracking range", "44", "1"],
      ["lower end of the tracking range", "250", "10"],
      ["start voltage", "450", "12"],
    ]);
    expect(checks.every(({ verdict }) => verdict === "met")).toBe(true);
  });

  it("is told the smallest change where it is too long or too short", () => {
    const long = stringChecks({ ...plain, modules: 21 });
    expect(long.checks[0]).toMatchObject({ verdict: "not met", remedy: "at most 20 modules in series" });
    expect([long.margins[0]?.volts.text, long.margins[0]?.modules.text]).toEqual(["-50", "-1"]);
    const short = stringChecks({ ...plain, modules: 5 });
    expect(short.checks.filter(({ verdict }) => verdict === "not met").map(({ remedy }) => remedy)).toEqual([
      "at least 8 modules in series",
      "at least 6 modules in series",
    ]);
    const none = stringChecks({ ...plain, modules: 1, ceilings: [{ key: "inverter", limit: "40 V" }] });
    expect(none.checks[0]?.remedy).toBe("no module of this type: one alone exceeds the limit");
  });

  it.each([0, -1, 1.5, Number.NaN, Infinity])("refuses %s modules", (modules) => {
    expect(() => stringChecks({ ...plain, modules })).toThrow(InputError);
  });
});

const tenths = (least: number, most: number) => fc.integer({ min: least, max: most }).map((value) => `${value / 10} V`);
const anyString: fc.Arbitrary<StringInput> = fc
  .record({
    cold: tenths(200, 900),
    hot: tenths(100, 400),
    open: tenths(100, 500),
    limit: tenths(1000, 15000),
    other: tenths(1000, 15000),
    low: tenths(500, 4000),
    start: tenths(500, 4000),
    drop: fc.integer({ min: 0, max: 60 }),
  })
  .map(({ cold, hot, open, limit, other, low, start, drop }) => ({
    module: { coldOpenCircuitVoltage: cold, hotMppVoltage: hot, hotOpenCircuitVoltage: open },
    ceilings: [
      { key: "inverter", limit },
      { key: "module", limit: other },
    ],
    mppVoltageRange: [low, "1500 V"],
    startVoltage: start,
    voltageDrop: `${drop / 10} %`,
  }));

describe("laws", () => {
  it("n is allowed and n + 1 is not, at every reported end", () => {
    fc.assert(
      fc.property(anyString, (input) => {
        const range = stringRange(input);
        for (const { count, met, beyond, end } of range.limits) {
          if (count === null) expect(beyond?.verdict).toBe("not met");
          else {
            expect(met?.verdict).toBe("met");
            if (end === "longest" || count.number > 1) expect(beyond?.verdict).toBe("not met");
          }
        }
        const safe = (modules: number) =>
          stringChecks({ ...input, modules }).checks.every(
            ({ verdict, rule }) => rule.force !== "requirement" || verdict === "met",
          );
        if (range.longest) expect([safe(range.longest.number), safe(range.longest.number + 1)]).toEqual([true, false]);
        else expect(safe(1)).toBe(false);
      }),
    );
  });

  it("colder never lengthens a string, hotter never shortens the shortest", () => {
    fc.assert(
      fc.property(anyString, fc.integer({ min: 0, max: 100 }), (input, tenth) => {
        const worse = (voltage: unknown, by: number) => `${Number(String(voltage).replace(" V", "")) + by / 10} V`;
        const { module } = input;
        const colder = stringRange({
          ...input,
          module: { ...module, coldOpenCircuitVoltage: worse(module.coldOpenCircuitVoltage, tenth) },
        });
        expect(colder.longest?.number ?? 0).toBeLessThanOrEqual(stringRange(input).longest?.number ?? 0);
        const hotter = stringRange({
          ...input,
          module: {
            ...module,
            hotMppVoltage: worse(module.hotMppVoltage, -tenth / 2),
            hotOpenCircuitVoltage: worse(module.hotOpenCircuitVoltage, -tenth / 2),
          },
        });
        expect(hotter.shortest!.number).toBeGreaterThanOrEqual(stringRange(input).shortest!.number);
      }),
    );
  });
});
