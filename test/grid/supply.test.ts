import { describe, expect, it } from "vitest";
import {
  gridRuleSet,
  gridRuleSets,
  interfaceSettings,
  nominalVoltageOf,
  supplyBands,
  supplyFacts,
  supplySystem,
  supplySystems,
} from "../../src/grid/index.js";
import { problemsOf } from "./problems.js";

describe("supply systems", () => {
  it.each([
    ["230/400 V 50 Hz", "230", "400", "50", 3],
    ["120/240 V 60 Hz split-phase", "120", "240", "60", 1],
    ["208Y/120 V 60 Hz", "120", "208", "60", 3],
    ["480Y/277 V 60 Hz", "277", "480", "60", 3],
  ] as const)("%s has %s V, %s V and %s Hz", (supply, neutral, line, hertz, phases) => {
    const facts = supplyFacts(supply);
    expect([facts.lineToNeutral.text, facts.lineToLine.text, facts.frequency.text, facts.phases]).toEqual([
      neutral,
      line,
      hertz,
      phases,
    ]);
  });

  it("give each connection its voltage, and refuse one that they do not have", () => {
    expect(nominalVoltageOf("230/400 V 50 Hz", "single-phase").text).toBe("230");
    expect(nominalVoltageOf("230/400 V 50 Hz", "three-phase").text).toBe("400");
    expect(nominalVoltageOf("120/240 V 60 Hz split-phase", "split-phase").text).toBe("240");
    expect(problemsOf(() => nominalVoltageOf("120/240 V 60 Hz split-phase", "three-phase"))[0]).toMatchObject({
      path: "connection",
      code: "contradiction",
    });
  });

  it("are refused by an unknown name with the known ones", () => {
    const [problem] = problemsOf(() => supplySystem("230/400V 50Hz"));
    expect(problem!.expected).toBe(supplySystems.map(({ key }) => key).join("; "));
  });
});

describe("sets of connection rules", () => {
  it("are refused by an unknown name, with the nearest and all that are known", () => {
    const [problem] = problemsOf(() => gridRuleSet("VDE-AR-N 4105:2008"));
    expect(problem!.code).toBe("not-in-list");
    expect(problem!.message).toContain("did you mean VDE-AR-N 4105:20");
    for (const { key } of gridRuleSets) expect(problem!.expected).toContain(key);
  });

  it("are refused for a supply that they are not made for", () => {
    expect(problemsOf(() => interfaceSettings("EREC G98:2022", "208Y/120 V 60 Hz"))[0]).toMatchObject({
      path: "supply",
      code: "contradiction",
      expected: "230/400 V 50 Hz",
    });
  });

  it("bear one name each", () => {
    expect(new Set(gridRuleSets.map(({ key }) => key)).size).toBe(gridRuleSets.length);
  });
});

describe("supply bands", () => {
  const bandOf = (
    rules: Parameters<typeof supplyBands>[0],
    supply: Parameters<typeof supplyBands>[1],
    connection: "single-phase" | "three-phase",
  ) => {
    const nominal = nominalVoltageOf(supply, connection);
    return supplyBands(rules, supply).map(({ key, lowest, highest }) => [
      key,
      lowest(nominal).text,
      highest(nominal).text,
    ]);
  };

  it("follow the country behind the rules", () => {
    expect(bandOf("VDE-AR-N 4105:2018", "230/400 V 50 Hz", "single-phase")).toEqual([["EN 50160", "207", "253"]]);
    expect(bandOf("EREC G98:2022", "230/400 V 50 Hz", "single-phase")).toEqual([["Great Britain", "216.2", "253"]]);
    expect(bandOf("AS/NZS 4777.2:2020 Australia A", "230/400 V 50 Hz", "single-phase")).toEqual([
      ["Australia", "216.2", "253"],
    ]);
    expect(bandOf("RD 1699/2011:2020", "230/400 V 50 Hz", "three-phase")[0]).toEqual(["Spain", "372", "428"]);
  });

  it("carry the date in New Zealand", () => {
    expect(bandOf("AS/NZS 4777.2:2020 New Zealand", "230/400 V 50 Hz", "single-phase")).toEqual([
      ["New Zealand", "207", "253"],
      ["New Zealand before 2025", "216.2", "243.8"],
    ]);
  });

  it("are the two ranges of ANSI C84.1 in North America", () => {
    expect(bandOf("IEEE 1547:2018 category B II", "208Y/120 V 60 Hz", "single-phase")).toEqual([
      ["ANSI C84.1 range A", "114", "126"],
      ["ANSI C84.1 range B", "110", "127"],
    ]);
  });
});
