import { describe, expect, it } from "vitest";
import {
  assumed,
  choose,
  condition,
  formula,
  gradeOf,
  isMissing,
  missing,
  model,
  series,
  steps,
  table,
  whenKnown,
} from "../../src/formula/index.js";
import { given, InputError, type Problem } from "../../src/quantity/index.js";

// The kernel is proved on ten shapes of rule before any subject stands on it.
const source = [{ in: "common practice", clause: "shape for the test", grade: "common-practice" }] as const;

function problemsOf(call: () => unknown): readonly Problem[] {
  try {
    call();
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  throw new Error("nothing was thrown");
}

const openCircuitVoltageAt = formula({
  id: "shape/plain",
  about: "open-circuit voltage at a cell temperature",
  takes: {
    openCircuitVoltage: { unit: "V", symbol: "U_OC,STC", about: "open-circuit voltage", above: 0, usual: [0.5, 200] },
    openCircuitVoltageCoefficient: {
      unit: "1/K",
      symbol: "β_UOC",
      about: "coefficient",
      above: -0.01,
      below: 0,
      usual: [-0.006, -0.001],
    },
    cellTemperature: {
      unit: "°C",
      symbol: "T_c",
      about: "cell temperature",
      above: -273.15,
      to: 150,
      usual: [-50, 95],
    },
  },
  constants: {
    stcTemperature: {
      value: "25",
      unit: "°C",
      symbol: "T_STC",
      about: "temperature at standard test conditions",
      source,
    },
  },
  gives: { unit: "V", symbol: "U_OC" },
  expression: "openCircuitVoltage * (1 + openCircuitVoltageCoefficient * (cellTemperature - stcTemperature))",
  source,
});

describe("plain formula", () => {
  const cold = openCircuitVoltageAt({
    openCircuitVoltage: "49.8 V",
    openCircuitVoltageCoefficient: "-0.27 %/K",
    cellTemperature: "-10 °C",
  });

  it("keeps every digit and is exact", () => {
    expect(cold.text).toBe("54.5061");
    expect(cold.rounded).toBe(false);
    expect(cold.in("mV").text).toBe("54506.1");
    expect(cold.show({ digits: 4 })).toBe("54.51 V");
  });

  it("shows its working, inputs before results, conversions as steps", () => {
    const working = steps(cold);
    expect(working.map(({ kind }) => kind)).toEqual(["given", "given", "conversion", "given", "formula"]);
    expect(working.at(-1)).toMatchObject({
      equation: "U_OC = U_OC,STC · (1 + β_UOC · (T_c − T_STC))",
      substituted: "49.8 V · (1 + (−0.0027 1/K) · ((−10 °C) − 25 °C))",
      result: "54.5061 V",
      grade: "common-practice",
    });
  });

  it("reports every problem at once, with the nearest key and a guess at the unit", () => {
    const call = openCircuitVoltageAt as (inputs: object) => unknown;
    const problems = problemsOf(() =>
      call({ openCircuitVoltage: 49800, openCircuitVoltageCoeficient: "-0.27 %/K", cellTemperature: "10 K" }),
    );
    expect(problems.map(({ path, code }) => [path, code])).toEqual([
      ["openCircuitVoltage", "implausible"],
      ["openCircuitVoltageCoefficient", "missing"],
      ["cellTemperature", "other-dimension"],
      ["openCircuitVoltageCoeficient", "unknown-key"],
    ]);
    expect(problems[0]!.message).toContain("did you mean mV?");
    expect(problems[3]!.message).toContain("did you mean openCircuitVoltageCoefficient?");
  });

  it("refuses a rising open-circuit voltage as out of its domain", () => {
    const rising = {
      openCircuitVoltage: "49.8 V",
      openCircuitVoltageCoefficient: "0.27 %/K",
      cellTemperature: "20 °C",
    };
    expect(problemsOf(() => openCircuitVoltageAt(rising))[0]!.code).toBe("out-of-domain");
  });
});

describe("formula over a list", () => {
  const total = formula({
    id: "shape/list",
    about: "sum of drops",
    takes: { drops: { each: "V", symbol: "ΔU_i", about: "drop of each stretch", from: 0 } },
    gives: { unit: "V", symbol: "ΔU" },
    expression: "sum(drops)",
    source,
  });

  it("adds quantities of any unit of the kind", () => {
    expect(total({ drops: ["1.2 V", "300 mV", 0.5] }).text).toBe("2");
  });

  it("names the item that is wrong, and refuses an empty list", () => {
    expect(problemsOf(() => total({ drops: ["1 V", "-1 V"] }))[0]!.path).toBe("drops[1]");
    expect(problemsOf(() => total({ drops: [] }))[0]!.code).toBe("empty");
  });
});

describe("piecewise formula", () => {
  const size = formula({
    id: "shape/piecewise",
    about: "smallest protective conductor",
    takes: { line: { unit: "mm²", symbol: "S", about: "line conductor", above: 0, usual: [1, 1000] } },
    constants: {
      lower: { value: "16", unit: "mm²", symbol: "S_1", about: "lower bound", source },
      upper: { value: "35", unit: "mm²", symbol: "S_2", about: "upper bound", source },
    },
    gives: { unit: "mm²", symbol: "S_PE" },
    expression: "line <= lower ? line : line <= upper ? lower : line / 2",
    source,
  });

  it.each([
    ["4", "4"],
    ["16", "16"],
    ["16.01", "16"],
    ["35", "16"],
    ["35.02", "17.51"],
    ["70", "35"],
  ])("%s mm² needs %s mm²", (line, due) => {
    expect(size({ line: `${line} mm²` }).text).toBe(due);
  });

  it("refuses an AWG size and names the lookup", () => {
    expect(problemsOf(() => size({ line: "10 AWG" }))[0]!.message).toContain("awgArea");
  });
});

describe("formula with a root", () => {
  const current = formula({
    id: "shape/root",
    about: "line current",
    takes: {
      apparentPower: { unit: "VA", symbol: "S", about: "apparent power", above: 0 },
      lineVoltage: { unit: "V", symbol: "U", about: "line-to-line voltage", above: 0 },
    },
    gives: { unit: "A", symbol: "I" },
    expression: "apparentPower / (sqrt(3) * lineVoltage)",
    source,
  });

  it("marks the result as rounded, to 28 digits", () => {
    const rated = current({ apparentPower: "15 kVA", lineVoltage: "400 V" });
    expect(rated.show({ digits: 5 })).toBe("21.651 A");
    expect([rated.rounded, rated.keeps]).toEqual([true, 28]);
  });
});

describe("formula with a requirement between symbols", () => {
  const rise = formula({
    id: "shape/requires",
    about: "conductor temperature under load",
    takes: {
      ambient: { unit: "°C", symbol: "θ_a", about: "ambient temperature" },
      highest: { unit: "°C", symbol: "θ_max", about: "highest conductor temperature" },
      share: { unit: "1", symbol: "u", about: "share of the ampacity", from: 0 },
    },
    requires: [{ that: "ambient < highest", because: "the ambient must be cooler than the conductor may become" }],
    gives: { unit: "°C", symbol: "θ" },
    expression: "ambient + (highest - ambient) * share ^ 2",
    source,
  });

  it("computes where it holds and says why where it does not", () => {
    expect(rise({ ambient: "30 °C", highest: "70 °C", share: "0.5" }).text).toBe("40");
    const [problem] = problemsOf(() => rise({ ambient: "70 °C", highest: "70 °C", share: "0.5" }));
    expect(problem).toMatchObject({ code: "requirement", path: "ambient < highest" });
    expect(problem!.message).toContain("cooler");
  });
});

describe("table with two headings", () => {
  const ampacity = table({
    id: "shape/two-headings",
    about: "ampacity",
    rows: { name: "section", unit: "mm²", symbol: "S" },
    rowRule: "exact",
    columns: { material: ["copper", "aluminium"], method: ["A1", "C"] },
    gives: { unit: "A", symbol: "I_z" },
    source,
    cellGrades: { memory: ["2.5 | aluminium | C"] },
    cells: `
      1.5   13.5  17.5  –   –
      2.5   18    24    14  18.5
    `,
  });

  it("finds a cell, its row, column and grade", () => {
    const cell = ampacity({ section: "2.5 mm2", material: "aluminium", method: "C" });
    expect(cell.show()).toBe("18.5 A");
    expect(steps(cell).at(-1)!.detail).toBe("section 2.5, material aluminium, method C");
    expect(gradeOf(cell)).toBe("memory");
    expect(gradeOf(ampacity({ section: 2.5, material: "copper", method: "C" }))).toBe("common-practice");
  });

  it("refuses what is not tabulated, not a row, or not a heading", () => {
    expect(problemsOf(() => ampacity({ section: "1.5 mm2", material: "aluminium", method: "C" }))[0]!.code).toBe(
      "not-tabulated",
    );
    expect(problemsOf(() => ampacity({ section: "4 mm2", material: "copper", method: "C" }))[0]!.code).toBe(
      "not-tabulated",
    );
    const call = ampacity as (headings: object) => unknown;
    expect(problemsOf(() => call({ section: "1.5 mm2", material: "steel" })).map(({ path }) => path)).toEqual([
      "material",
      "method",
    ]);
  });

  it.each([
    ["next above", "2.5"],
    ["next below", "1.5"],
  ] as const)("takes the row %s", (rowRule, row) => {
    const ruled = table({
      id: "shape/row-rule",
      about: "factors",
      rows: { name: "section", unit: "mm²", symbol: "S" },
      rowRule,
      gives: { unit: "1", symbol: "k" },
      source,
      cells: "1.5  1.5\n2.5  2.5",
    });
    expect(ruled({ section: "2 mm2" }).text).toBe(row);
    expect(problemsOf(() => ruled({ section: rowRule === "next above" ? "3 mm2" : "1 mm2" }))[0]!.code).toBe(
      "not-tabulated",
    );
  });

  it("interpolates only where the rule of the table says so", () => {
    const between = table({
      id: "shape/between",
      about: "factors",
      rows: { name: "section", unit: "mm²", symbol: "S" },
      rowRule: "between",
      gives: { unit: "1", symbol: "k" },
      source,
      cells: "1  10\n3  20",
    });
    expect(between({ section: "2 mm2" }).text).toBe("15");
    expect(between({ section: "3 mm2" }).text).toBe("20");
  });
});

describe("table with named rows", () => {
  const highest = table({
    id: "shape/named-rows",
    about: "highest temperature",
    rows: { name: "insulation", names: "in the first column" },
    rowRule: "exact",
    gives: { unit: "°C", symbol: "θ_max" },
    source,
    cells: "PVC   70\nXLPE  90",
  });
  const size = table({
    id: "shape/named-cells",
    about: "grounding conductor",
    rows: { name: "device", unit: "A", symbol: "I_n" },
    rowRule: "next above",
    gives: { names: "conductor size", symbol: "EGC" },
    source,
    cells: "15  14 AWG\n20  12 AWG\n60  10 AWG",
  });

  it("finds a number by name and a name by number", () => {
    expect(highest({ insulation: "XLPE" }).show()).toBe("90 °C");
    expect(size({ device: "40 A" }).name).toBe("10 AWG");
    expect(problemsOf(() => highest({ insulation: "rubber" }))[0]!.expected).toBe("one of PVC, XLPE");
  });
});

describe("choice from a series", () => {
  const ratings = series({
    id: "shape/ratings",
    about: "ratings",
    unit: "A",
    symbol: "I_n",
    sizes: "6 10 13 16 20 25 32",
    source,
  });
  const above = condition({
    id: "shape/above",
    asks: "Is the rating at least the current?",
    force: "requirement",
    value: { unit: "A", symbol: "I_b", about: "current" },
    relation: "≤",
    limit: { unit: "A", symbol: "I_n", about: "rating" },
    source,
  });
  const roomy = condition({
    id: "shape/roomy",
    asks: "Is the rating well above the current?",
    force: "recommendation",
    value: { unit: "A", symbol: "I_b", about: "current" },
    relation: "≤",
    limit: { unit: "A", symbol: "0.8 I_n", about: "share of the rating" },
    source,
  });
  const share = formula({
    id: "shape/share",
    about: "share of a rating",
    takes: { rating: { unit: "A", symbol: "I_n", about: "rating" } },
    gives: { unit: "A", symbol: "I" },
    expression: "3 * rating / 2 / 2",
    source,
  });

  it("takes the smallest that meets the requirement, exactly at the limit too, and says why smaller ones fail", () => {
    const choice = choose(ratings, (rating) => [above({ value: "16 A", limit: rating })]);
    expect(choice.chosen!.text).toBe("16");
    expect(choice.rejected.map(({ size: { text } }) => text)).toEqual(["6", "10", "13"]);
    expect(choice.fixedBy.map(({ id }) => id)).toEqual(["shape/above"]);
    expect(steps(choice.chosen!).at(-1)!.detail).toContain("13 A fails: Is the rating at least the current?");
  });

  it("follows a recommendation while some size can meet it, and drops it where none can", () => {
    const follow = (current: string) =>
      choose(ratings, (rating) => [
        above({ value: current, limit: rating }),
        roomy({ value: current, limit: share({ rating }) }),
      ]).chosen?.text;
    expect(follow("16 A")).toBe("25");
    expect(follow("30 A")).toBe("32");
    expect(follow("33 A")).toBeUndefined();
  });

  it("lets the requirements decide where no size follows all recommendations at once", () => {
    const small = condition({
      id: "shape/small", asks: "Is the rating small?", force: "recommendation",
      value: { unit: "A", symbol: "I_n", about: "rating" }, relation: "≤", limit: { unit: "A", symbol: "I", about: "limit" }, source,
    });
    const choice = choose(ratings, (rating) => [
      above({ value: "12 A", limit: rating }),
      small({ value: rating, limit: "16 A" }),
      roomy({ value: "24 A", limit: share({ rating }) }),
    ]);
    expect(choice.chosen!.text).toBe("13");
  });

  it("does not try sizes beyond the first that meets everything", () => {
    const tried: string[] = [];
    choose(ratings, (rating) => {
      tried.push(rating.text);
      return [above({ value: "12 A", limit: rating })];
    });
    expect(tried).toEqual(["6", "10", "13"]);
  });
});

describe("condition on numbers", () => {
  const within = condition({
    id: "shape/within",
    asks: "Is the voltage within the limit?",
    force: "requirement",
    value: { unit: "V", symbol: "U", about: "voltage" },
    relation: "≤",
    limit: { unit: "V", symbol: "U_max", about: "limit" },
    source,
  });

  it("is exact at the limit and one last digit on either side", () => {
    const verdict = (value: string) => within({ value, limit: "1000 V" }).verdict;
    expect([verdict("999.9 V"), verdict("1000 V"), verdict("1000.1 V"), verdict("1 kV")]).toEqual([
      "met",
      "met",
      "not met",
      "met",
    ]);
  });

  it("carries place, utilisation, grade and remedy", () => {
    const check = within({ value: "800 V", limit: "1000 V", at: "INV1/A", remedy: "fewer modules" });
    expect(check).toMatchObject({
      id: "shape/within/INV1/A",
      utilisation: "0.8",
      grade: "common-practice",
      remedy: "fewer modules",
    });
  });

  it("leaves a rounded value at the limit open, never met", () => {
    const root = formula({
      id: "shape/sqrt",
      about: "root",
      takes: { x: { unit: "1", symbol: "x", about: "x", from: 0 } },
      constants: { volt: { value: "1", unit: "V", symbol: "V", about: "one volt", source } },
      gives: { unit: "V", symbol: "y" },
      expression: "sqrt(x) * sqrt(x) * volt",
      source,
    });
    expect(within({ value: root({ x: "3" }), limit: "3 V" }).verdict).toBe("open");
    expect(within({ value: root({ x: "3" }), limit: "3.1 V" }).verdict).toBe("met");
  });

  it("is open within the digits that a model kept", () => {
    const double = model(
      {
        id: "shape/model",
        about: "model",
        method: "double",
        digits: 6,
        source,
        takes: { x: { unit: "V", symbol: "x", about: "x" } },
        gives: { unit: "V", symbol: "y" },
      },
      ({ x }) => x,
    );
    expect(within({ value: double({ x: "1000.0005 V" }), limit: "1000 V" }).verdict).toBe("open");
    expect(within({ value: double({ x: "1000.01 V" }), limit: "1000 V" }).verdict).toBe("not met");
  });
});

describe("condition on a closed list, and one left open", () => {
  const type = condition({
    id: "shape/type",
    asks: "Is the type of the residual current device allowed?",
    force: "requirement",
    value: { named: true, about: "type" },
    relation: "one of",
    limit: { named: true, about: "allowed types" },
    source,
  });

  it("judges names", () => {
    expect(type({ value: "B", limit: ["B", "B+"] }).verdict).toBe("met");
    expect(type({ value: "AC", limit: ["B", "B+"] }).verdict).toBe("not met");
  });

  it("is open, naming what is missing, and passes a missing finding through", () => {
    expect(type({ missing: ["residualCurrent.rcdTypeAllowed"] })).toMatchObject({
      verdict: "open",
      missing: ["residualCurrent.rcdTypeAllowed"],
    });
    const loop = missing("supply.loop");
    expect(type({ value: "B", limit: loop }).missing).toEqual(["supply.loop"]);
    const passed = whenKnown({ loop: loop, other: "x" }, () => 1);
    expect(isMissing(passed)).toBe(true);
  });
});

describe("coefficient in V/K or %/K", () => {
  const relative = formula({
    id: "shape/relative",
    about: "relative coefficient from an absolute one",
    takes: {
      absoluteCoefficient: { unit: "V/K", symbol: "β_U", about: "absolute coefficient", below: 0 },
      openCircuitVoltage: { unit: "V", symbol: "U_OC", about: "open-circuit voltage", above: 0 },
    },
    gives: { unit: "1/K", symbol: "β" },
    expression: "absoluteCoefficient / openCircuitVoltage",
    source,
  });

  it("brings both to one dimension by a named formula, exactly", () => {
    const beta = relative({ absoluteCoefficient: "-130 mV/°C", openCircuitVoltage: "50 V" });
    expect(beta.text).toBe("-0.0026");
    const call = openCircuitVoltageAt as (inputs: object) => unknown;
    expect(
      problemsOf(() =>
        call({ openCircuitVoltage: "50 V", openCircuitVoltageCoefficient: "-130 mV/K", cellTemperature: 20 }),
      )[0]!.code,
    ).toBe("other-dimension");
  });
});

describe("given and assumed", () => {
  it("say where they are from", () => {
    expect(steps(given("39.2 V", "V", "datasheet rev. 2"))[0]!.detail).toBe("datasheet rev. 2");
    expect(gradeOf(assumed("0.08", "Ω/km", "reactance", source))).toBe("common-practice");
  });
});
