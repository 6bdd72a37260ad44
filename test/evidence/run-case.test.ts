import { describe, expect, it } from "vitest";
import { judgeCase, noticedInputs, runCase } from "../../src/evidence/index.js";
import { ownCase } from "./own-case.js";
import { ownRules } from "./own-rules.js";

const run = (...altered: Parameters<typeof ownCase>) => runCase(ownCase(...altered), ownRules);

describe("a case agrees", () => {
  it("with the printed example", () =>
    expect(run()).toMatchObject({ status: "agrees", computed: "49.05", share: "0.0000" }));
  it("in another unit of its kind", () =>
    expect(run({ expected: { printed: "49050", unit: "mV" } }).status).toBe("agrees"));
  it("on a constant", () => {
    const constant = {
      kind: "constant",
      at: "constants.stcTemperature",
      inputs: {},
      expected: { printed: "25", unit: "°C" },
    } as const;
    expect(run(constant).status).toBe("agrees");
  });
  it("on a table, a condition, and a path into a calculation", () => {
    const cell = {
      checks: "own/ampacities",
      inputs: { section: { printed: "2.5 mm²" }, material: { printed: "copper" } },
    };
    expect(run({ ...cell, expected: { printed: "27", unit: "A" } }).status).toBe("agrees");
    const verdict = {
      checks: "own/within",
      at: "verdict",
      inputs: { value: { printed: "27.1 A" }, limit: { printed: "27 A" } },
    };
    expect(run({ ...verdict, expected: { printed: "not met", unit: "", rounding: "exact" } }).status).toBe("agrees");
    const inputs = {
      "route.section": { printed: "4 mm²" },
      "route.material": { printed: "copper" },
      factor: { printed: "0.5" },
    };
    const calculation = { checks: "own/cable-current", inputs };
    expect(run({ ...calculation, at: "allowed", expected: { printed: "18", unit: "A" } }).status).toBe("agrees");
    expect(
      run({ ...calculation, at: "check.verdict", expected: { printed: "not met", unit: "", rounding: "exact" } })
        .status,
    ).toBe("agrees");
    expect(
      run({ ...calculation, at: "sizes[0]", expected: { printed: "4 mm²", unit: "", rounding: "exact" } }).status,
    ).toBe("agrees");
    const byPosition = {
      checks: "own/second-of",
      inputs: { "[0]": { printed: "any" }, "[1].current": { printed: "3 A" } },
    };
    expect(run({ ...byPosition, expected: { printed: "3", unit: "A" } }).status).toBe("agrees");
  });
  it("on a number of a sizing record, in another unit", () => {
    const inputs = { "route.section": { printed: "4 mm²" }, "route.material": { printed: "copper" } };
    const record = { checks: "own/record-of", inputs };
    expect(run({ ...record, at: "routes[0].ampacity", expected: { printed: "0.036", unit: "kA" } }).status).toBe(
      "agrees",
    );
    expect(
      run({ ...record, at: "routes[0].verdict", expected: { printed: "not-met", unit: "", rounding: "exact" } }).status,
    ).toBe("agrees");
  });
});

describe("a case can fail", () => {
  it("by a wrong digit", () =>
    expect(run({ expected: { printed: "49.06" } })).toMatchObject({ status: "deviates", share: "2.0000" }));
  it("by a wrong unit", () => expect(run({ expected: { unit: "A" } })).toMatchObject({ status: "fails" }));
  it("by a unit that is none", () => expect(run({ expected: { unit: "volts" } }).problem).toContain("not a unit"));
  it("by an unknown rule", () =>
    expect(run({ checks: "own/none" })).toMatchObject({ status: "fails", problem: "own/none is not known" }));
  it("by a path into nothing", () => expect(run({ at: "there" }).problem).toContain("nothing at"));
  it("by an input that the rule refuses", () => expect(run({ inputs: {} }).problem).toContain("missing"));
  it("by calling a series", () => expect(run({ checks: "own/ratings" }).problem).toContain("series"));
  it("by comparing a name with digits", () =>
    expect(run({ expected: { printed: "big" } }).problem).toContain('only "exact"'));
  it("is disputed, not agreed, with an erratum", () =>
    expect(run({ erratum: "e" })).toMatchObject({ status: "disputed", agrees: true }));
});

describe("rounded inputs", () => {
  // The source worked with −0.1262 V/K and prints −0.13 V/K: 45.8 + 0.1262 · 25 = 48.955.
  const rounded = { expected: { printed: "48.955" } };
  it("agree only where the case says that they are rounded", () => {
    expect(run(rounded).status).toBe("deviates");
    const outcome = run({ ...rounded, inputsRounded: true });
    expect(outcome).toMatchObject({ status: "agrees", computed: "49.05" });
    expect(Number(outcome.share)).toBeGreaterThan(0);
    expect(Number(outcome.share)).toBeLessThan(1);
  });
  it("do not reach a value outside the ranges", () => {
    // Highest: 45.85 + 0.135 · 25.5 = 49.2925; printed 49.30 means 49.295 at least.
    expect(run({ expected: { printed: "49.30" }, inputsRounded: true }).status).toBe("deviates");
    expect(run({ expected: { printed: "49.29" }, inputsRounded: true }).status).toBe("agrees");
  });
  it("leave counts as they are", () => {
    const inputs = { ampacity: { printed: "20 A" }, factor: { printed: "2" } };
    const at = (printed: string) =>
      run({ checks: "own/derated", inputs, inputsRounded: true, expected: { printed, unit: "A" } }).status;
    expect([at("41"), at("42")]).toEqual(["agrees", "deviates"]);
  });
});

describe("noticing", () => {
  it("names the inputs of which the case notices a shift of 5 % or 2 K", () => {
    expect(noticedInputs(ownCase(), ownRules)).toEqual([
      "openCircuitVoltage",
      "absoluteVoltageCoefficient",
      "cellTemperature",
    ]);
    expect(noticedInputs(ownCase({ expected: { printed: "49" } }), ownRules)).toEqual(["openCircuitVoltage"]);
  });
  it("looks at the ranges of shifted inputs where a case says that they are rounded", () => {
    const rounded = { inputsRounded: true, expected: { printed: "48.955" } };
    expect(noticedInputs(ownCase(rounded), ownRules)).toEqual(Object.keys(ownCase().inputs));
    const coarse = { inputsRounded: true, expected: { printed: "49.0" } };
    expect(noticedInputs(ownCase(coarse), ownRules)).toEqual(["openCircuitVoltage", "cellTemperature"]);
  });
  it("puts the next standard size in the place of one that takes no fraction", () => {
    const inputs = {
      "route.section": { printed: "2.5 mm²" },
      "route.material": { printed: "copper" },
      factor: { printed: "1" },
    };
    const ampacity = { checks: "own/cable-current", at: "allowed", inputs, expected: { printed: "27", unit: "A" } };
    expect(noticedInputs(ownCase(ampacity), ownRules)).toEqual(["route.section", "factor"]);
  });
  it("does not credit an input that makes no difference", () => {
    const inputs = { designCurrent: { printed: "20 A" }, otherCurrent: { printed: "10 A" } };
    expect(
      noticedInputs(ownCase({ checks: "own/larger", inputs, expected: { printed: "20.0", unit: "A" } }), ownRules),
    ).toEqual(["designCurrent"]);
  });
  it("puts other rows and columns in the place of a table's heading", () => {
    const inputs = { section: { printed: "2.5 mm²" }, material: { printed: "copper" } };
    expect(
      noticedInputs(ownCase({ checks: "own/ampacities", inputs, expected: { printed: "27", unit: "A" } }), ownRules),
    ).toEqual(["section", "material"]);
  });
});

describe("counting is computed", () => {
  const why = (...altered: Parameters<typeof ownCase>) => judgeCase(ownCase(...altered), ownRules).notCounting;
  it("counts a published example", () => expect(why()).toBeNull());
  it.each([
    [
      "deviates",
      {
        expected: { printed: "49.1" } as const,
        example: "x",
        inputs: { ...ownCase().inputs, openCircuitVoltage: { printed: "46.8 V" } },
      },
    ],
    ["disputed", { erratum: "e" }],
    ["identity", { kind: "identity" }],
    ["copied", { seen: { in: "GSES handout:2011", place: "", grade: "copied" } }],
    ["memory", { seen: { in: "GSES handout:2011", place: "", grade: "memory" } }],
    ["digits not sure", { expected: { digitsSure: false } }],
    ["unprinted input", { inputs: { ...ownCase().inputs, cellTemperature: { unprinted: "0 °C", why: "inferred" } } }],
    ["notices nothing", { expected: { printed: "0e3" } }],
    ["fails", { checks: "own/none" }],
  ] as const)("does not count what is: %s", (reason, altered) => expect(why(altered)).toBe(reason));
});
