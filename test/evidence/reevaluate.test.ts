import { describe, expect, it } from "vitest";
import { reevaluate, type Working, workingOf } from "../../src/evidence/index.js";
import { formula, steps, table } from "../../src/formula/index.js";
import { given, type Quantity } from "../../src/quantity/index.js";
import { mathjsEvaluator } from "../laws/mathjs-evaluator.js";
import { ownRules } from "./own-rules.js";

const source = [{ in: "common practice", clause: "rule of a test", grade: "common-practice" }] as const;
const rise = formula({
  id: "own/rise", about: "rise", takes: { drops: { each: "V", symbol: "ΔU", about: "drops" }, factor: { unit: "1", symbol: "k", about: "factor" } },
  requires: [{ that: "factor > 0", because: "a factor is positive" }],
  gives: { unit: "V", symbol: "U" }, expression: "sqrt(3) * sum(drops) * factor", source,
});
const between = table({
  id: "own/between", about: "factors", rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "between",
  gives: { unit: "1", symbol: "k" }, source, cells: "1  0.8\n4  1.1",
});
const above = table({
  id: "own/above", about: "factors", rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "next above",
  columns: { material: ["copper", "aluminium"] }, gives: { unit: "1", symbol: "k" }, source, cells: "1  0.8  –\n4  1.1  1.2",
});

const value = rise({ drops: ["1.25 V", given("300 mV", "V")], factor: between({ section: "2 mm²" }) }).in("mV");
const working = workingOf([value, above({ section: "2 mm²", material: "aluminium" })]);

function altered(
  alter: (copy: {
    steps: Record<string, { value: string; id?: string; rows?: string[] }>;
    declarations: Record<string, { cells: string }>;
  }) => void,
): Working {
  const copy = structuredClone(working) as never;
  alter(copy);
  return copy;
}
const differences = (record: Working) =>
  reevaluate(record, mathjsEvaluator).differences.map(({ id, due }) => [id, due]);
const stepOf = (id: string | undefined) => Object.entries(working.steps ?? {}).find(([, step]) => step.id === id)![0];

describe("re-evaluation", () => {
  it("works out every formula, lookup and change of unit again, and finds no difference", () => {
    expect(reevaluate(working, mathjsEvaluator)).toEqual({
      recomputed: { formula: 1, lookup: 2, conversion: 2, choice: 0 },
      differences: [],
    });
    expect(steps(value).length).toBeGreaterThan(5);
  });

  it("notices a wrong result of a formula and of a change of unit", () => {
    const wrong = altered(({ steps: all }) => (all[stepOf("own/rise")]!.value = "2.4162"));
    expect(differences(wrong).map(([id]) => id)).toEqual(["own/rise", null]);
  });

  it("notices another cell, another row, and a missing declaration", () => {
    expect(
      differences(altered(({ declarations }) => (declarations["own/above"]!.cells = "1  0.8  –\n4  1.1  1.3"))),
    ).toEqual([["own/above", "1.3"]]);
    expect(differences(altered(({ steps: all }) => (all[stepOf("own/above")]!.rows = ["1"])))[0]![1]).toContain(
      "rows due",
    );
    expect(differences(altered(({ declarations }) => delete declarations["own/above"]))[0]![1]).toContain(
      "does not carry",
    );
  });

  it("reads a calculation of the tests' own rules", () => {
    const { allowed } = ownRules.calculations
      .get("own/cable-current")!
      .call({ route: { section: "4 mm²", material: "copper" }, factor: "0.6" }) as { allowed: Quantity };
    expect(reevaluate(workingOf([allowed]), mathjsEvaluator)).toMatchObject({
      recomputed: { formula: 1, lookup: 1 },
      differences: [],
    });
  });
});
