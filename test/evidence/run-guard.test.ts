import { describe, expect, it } from "vitest";
import { cellStates, type Guard, judgeCase, runGuard } from "../../src/evidence/index.js";
import { ownCase } from "./own-case.js";
import { ownRules } from "./own-rules.js";

const copy = (altered: object = {}): Guard => ({
  id: "own-copy",
  table: "own/ampacities",
  by: "copy",
  seen: { in: "UTE C15-712-1:undated", place: "table", grade: "reproduced" },
  columns: [["copper"], ["aluminium"]],
  cells: ["1.50  20  –", "2.5  27.0  21", "4  36"],
  ...altered,
});
const law = (altered: object = {}): Guard => ({
  id: "own-law",
  table: "own/ampacities",
  by: "formula",
  seen: { in: "IEC 60364-5-52:2009", place: "annex of a test", grade: "reproduced" },
  rule: "own/derated",
  row: "factor",
  rounding: "nearest",
  perColumn: { copper: { ampacity: "10 A" } },
  perRow: { "4": {} },
  ...altered,
});
// The row heading is a section and cannot feed a factor: the law of these tests names its rows one by one.
const byRow = (cell: string, ampacity: string, altered: object = {}): Guard =>
  law({ row: "", perColumn: { copper: {} }, perRow: { [cell]: { ampacity, factor: "1" } }, ...altered });
const states = (...guards: Guard[]) =>
  cellStates(
    [],
    guards.map((guard) => runGuard(guard, ownRules)),
    ownRules,
  ).map(({ place, guardedBy }) => `${place}: ${guardedBy}`);

describe("a copy", () => {
  it("compares by value, and only what it prints", () => {
    const { cells, problems } = runGuard(copy(), ownRules);
    expect(problems).toEqual([]);
    expect(cells.map(({ place, agrees }) => [place, agrees])).toEqual([
      ["1.5 | copper", true],
      ["2.5 | copper", true],
      ["2.5 | aluminium", true],
      ["4 | copper", true],
    ]);
  });
  it("names the cells that differ", () => {
    const { cells } = runGuard(copy({ cells: ["2.5  27  22"] }), ownRules);
    expect(cells.filter(({ agrees }) => !agrees)).toEqual([
      { place: "2.5 | aluminium", shipped: "21", due: "22", agrees: false, noticesShift: false },
    ]);
  });
  it.each([
    ["an unknown table", { table: "own/none" }, "own/none is not a table"],
    ["a place that the table has not", { cells: ["6  40"] }, "the table has no cell 6 | copper"],
    ["nothing to compare", { cells: [] }, "compares nothing"],
    ["a row twice", { cells: ["4  36", "4  36"] }, "stands twice"],
    ["too many cells", { cells: ["4  36  28  1"] }, "more cells than columns"],
  ])("has a fault: %s", (_, altered, fault) =>
    expect(runGuard(copy(altered), ownRules).problems.join()).toContain(fault),
  );
  it("of a series notices a size too many and one too few", () => {
    const sizes = (cells: string[]) => runGuard(copy({ table: "own/ratings", columns: undefined, cells }), ownRules);
    expect(sizes(["6 10", "16"])).toMatchObject({
      problems: [],
      cells: [{ agrees: true }, { agrees: true }, { agrees: true }],
    });
    expect(sizes(["6 10 13 16"]).problems).toEqual(["the copy has 13, which the series has not"]);
    expect(sizes(["6 10"]).cells.at(-1)).toMatchObject({ shipped: "16", agrees: false });
  });
});

describe("a law", () => {
  it("computes the cells of the columns and rows that it names", () => {
    expect(runGuard(byRow("4", "36.4 A"), ownRules)).toMatchObject({
      problems: [],
      cells: [{ place: "4 | copper", due: "36.4", agrees: true, noticesShift: true }],
    });
    expect(runGuard(byRow("4", "36.6 A"), ownRules).cells[0]!.agrees).toBe(false);
  });
  it("is rounded to a step where it says so", () => {
    const steps = [{ below: "30", is: "0.5" }, { is: "2" }];
    expect(runGuard(byRow("4", "36.9 A", { steps }), ownRules).cells[0]!.agrees).toBe(true);
    expect(runGuard(byRow("2.5", "27.3 A", { steps }), ownRules).cells[0]!.agrees).toBe(false);
    expect(runGuard(byRow("2.5", "27.25 A", { steps }), ownRules).cells[0]!.agrees).toBe(true);
    expect(runGuard(byRow("2.5", "27.04 A", { digits: 1 }), ownRules).cells[0]!.agrees).toBe(true);
    expect(runGuard(byRow("2.5", "27.06 A", { digits: 1 }), ownRules).cells[0]!.agrees).toBe(false);
  });
  it("has no exception that follows it, and none for a cell that is not there", () => {
    expect(
      runGuard(byRow("4", "36 A", { except: [{ cell: "4 | copper", why: "?" }] }), ownRules).problems[0],
    ).toContain("follows the law");
    expect(
      runGuard(byRow("4", "36 A", { except: [{ cell: "9 | copper", why: "?" }] }), ownRules).problems[0],
    ).toContain("no cell 9");
    expect(runGuard(byRow("4", "36 A", { rule: "own/none" }), ownRules).problems[0]).toContain("not known");
  });
});

describe("what guards a cell", () => {
  it("is an edited copy of another print, the law, or nothing", () => {
    expect(states(copy({ cells: ["4  36"] }))).toEqual([
      "1.5 | copper: none",
      "2.5 | copper: none",
      "2.5 | aluminium: none",
      "4 | copper: copy",
      "4 | aluminium: none",
    ]);
    expect(states(byRow("4", "36 A"))).toContain("4 | copper: formula");
  });
  it("is not the print that the table was typed from, nor a memory, nor a copy that differs", () => {
    for (const seen of [
      { in: "GSES handout:2011", place: "", grade: "original" },
      { in: "UTE C15-712-1:undated", place: "", grade: "memory" },
    ]) {
      expect(states(copy({ seen }))).toContain("4 | copper: none");
    }
    expect(states(copy({ cells: ["4  37"] }))).toContain("4 | copper: none");
  });
  it("is a copy without an editor only beside another one of another publisher, or the law", () => {
    const copied = (source: string, id = source) => copy({ id, seen: { in: source, place: "", grade: "copied" } });
    expect(states(copied("UTE C15-712-1:undated"))).toContain("4 | copper: none");
    expect(states(copied("UTE C15-712-1:undated"), copied("UTE C15-712-1:undated", "again"))).toContain(
      "4 | copper: none",
    );
    expect(states(copied("UTE C15-712-1:undated"), copied("NFPA 70:2017"))).toContain("4 | copper: copy");
    expect(states(copied("UTE C15-712-1:undated"), byRow("4", "36 A"))).toContain("4 | copper: copy");
  });
  it("is a counting case that would notice another last digit", () => {
    const inputs = {
      "route.section": { printed: "4 mm²" },
      "route.material": { printed: "copper" },
      factor: { printed: "0.58" },
    };
    const noticing = judgeCase(
      ownCase({ checks: "own/cable-current", at: "allowed", inputs, expected: { printed: "20.9", unit: "A" } }),
      ownRules,
    );
    const coarse = judgeCase(
      ownCase({ checks: "own/cable-current", at: "allowed", inputs, expected: { printed: "21", unit: "A" } }),
      ownRules,
    );
    const verdict = judgeCase(
      ownCase({
        checks: "own/cable-current",
        at: "check.verdict",
        inputs: { ...inputs, factor: { printed: "0.56" } },
        expected: { printed: "met", unit: "", rounding: "exact" },
      }),
      ownRules,
    );
    const by = (one: typeof noticing) => cellStates([one], [], ownRules).find(({ place }) => place === "4 | copper");
    expect(by(noticing)).toMatchObject({ guardedBy: "example", shiftNoticed: true });
    expect(by(coarse)).toMatchObject({ guardedBy: "example" });
    expect(by(verdict)).toMatchObject({ guardedBy: "example" });
    expect(
      by(judgeCase(ownCase({ ...noticing.case, seen: { ...noticing.case.seen, grade: "memory" } }), ownRules)),
    ).toMatchObject({ guardedBy: "none" });
  });
});
