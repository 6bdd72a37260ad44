import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import "../harness/fast-check.js";
import {
  exportChecks,
  exportLimiterChecks,
  flickerChecks,
  interfaceRelayChecks,
  interfaceRelayThreshold,
  longTermFlickerOf,
  rapidVoltageChange,
  rebtHarmonicLimit,
  shortTermFlicker,
} from "../../src/grid/index.js";
import { missing } from "../../src/formula/index.js";
import { problemsOf } from "./problems.js";

describe("site under export", () => {
  const site = {
    rules: "EREC G99:2019",
    inverterCurrents: ["16 A", "19 A"],
    serviceDevice: "35 A",
    serviceAmpacity: "40 A",
    plantPower: "8 kVA",
    at: "service",
  } as const;
  const verdicts = (more: object) => exportChecks({ ...site, ...more }).map(({ verdict }) => verdict);

  it("loads the service with all inverters and no load, exactly", () => {
    expect(verdicts({})).toEqual(["met", "met"]);
    expect(verdicts({ inverterCurrents: ["16 A", "19.1 A"] })).toEqual(["not met", "met"]);
    expect(verdicts({ serviceAmpacity: missing("supply.serviceCable") })).toEqual(["met", "open"]);
  });

  it("leaves half of the line in Spain, and asks for what it needs", () => {
    const spain = { rules: "RD 1699/2011:2020", capacity: "100 kVA", connectedPower: "40 kVA" };
    expect(verdicts({ ...spain, plantPower: "10 kVA" })).toEqual(["met", "met", "met", "met"]);
    expect(verdicts({ ...spain, plantPower: "10001 VA" })).toEqual(["met", "met", "not met", "met"]);
    expect(exportChecks({ ...site, rules: "RD 1699/2011:2020" })[2]!.missing).toEqual([
      "supply.capacity",
      "supply.connectedPower",
    ]);
  });
});

describe("interface relay", () => {
  it.each([
    ["VDE-AR-N 4105:2018", "30 kVA"],
    ["AS/NZS 4777.2:2020 Australia A", "30 kVA"],
    ["TOR Erzeuger:undated", "30 kVA"],
    ["CEI 0-21:2016", "11.08 kVA"],
  ] as const)("%s: beside the inverter above %s", (rules, threshold) => {
    expect(interfaceRelayThreshold(rules)!.in("kVA").show()).toBe(threshold);
    expect(interfaceRelayChecks({ rules, plantPower: threshold, at: "plant" })[0]!.verdict).toBe("met");
    expect(interfaceRelayChecks({ rules, plantPower: "30.001 kVA", at: "plant" })[0]!.verdict).toBe("not met");
  });

  it("opens in time and in spite of one fault", () => {
    const relay = (switchTime: string, couplingSwitch: "one switch" | "two switches in series") =>
      interfaceRelayChecks({
        rules: "VDE-AR-N 4105:2018",
        plantPower: "60 kVA",
        relay: { relayTime: "0.13 s", switchTime, couplingSwitch },
        at: "plant",
      }).map(({ verdict }) => verdict);
    expect(relay("0.07 s", "two switches in series")).toEqual(["met", "met"]);
    expect(relay("0.071 s", "one switch")).toEqual(["not met", "not met"]);
  });
});

describe("export limiter", () => {
  it("holds the agreement, acts in time and fails safe", () => {
    const limiter = {
      agreedExport: "5 kW",
      exportSetting: "5 kW",
      actingTime: "5 s",
      onFailure: "stops",
      at: "meter",
    } as const;
    expect(exportLimiterChecks(limiter).map(({ verdict }) => verdict)).toEqual(["met", "met", "met"]);
    expect(
      exportLimiterChecks({ ...limiter, exportSetting: "5.01 kW", actingTime: "5.1 s", onFailure: "goes on" }).map(
        ({ verdict }) => verdict,
      ),
    ).toEqual(["not met", "not met", "not met"]);
  });
});

describe("flicker and rapid voltage change", () => {
  it("scale with the unit and fall with the network", () => {
    const change = (apparentPower: string) =>
      rapidVoltageChange({ inrushFactor: "1.2", apparentPower, shortCircuitPower: "800 kVA" }).text;
    expect([change("10 kVA"), change("20 kVA")]).toEqual(["0.015", "0.03"]);
  });

  it.each([
    ["20 kVA", "met"],
    ["20.01 kVA", "not met"],
  ])("Germany allows 3 %%: %s is %s", (apparentPower, due) => {
    const checks = flickerChecks({
      rules: "VDE-AR-N 4105:2018",
      shortCircuitPower: "800 kVA",
      largestUnit: { inrushFactor: "1.2", apparentPower },
      at: "plant",
    });
    expect(checks.map(({ verdict }) => verdict)).toEqual([due]);
  });

  it("is open while the network is not known", () => {
    const checks = flickerChecks({
      rules: "EREC G99:2019",
      shortCircuitPower: missing("supply.shortCircuitPower"),
      largestUnit: { inrushFactor: 1, apparentPower: "5 kVA" },
      at: "plant",
    });
    expect(checks[0]).toMatchObject({ verdict: "open", missing: ["supply.shortCircuitPower"] });
  });

  it("adds units by their squares", () => {
    const unit = { flickerCoefficient: 10, apparentPower: "3 kVA" };
    const [, flicker] = flickerChecks({
      rules: "VDE-AR-N 4105:2018",
      shortCircuitPower: "100 kVA",
      largestUnit: { inrushFactor: 1, apparentPower: "3 kVA" },
      units: [unit, { ...unit, apparentPower: "4 kVA" }],
      at: "plant",
    });
    expect(flicker!.value).toMatchObject({ number: 0.5 });
  });

  test.prop([fc.integer({ min: 1, max: 300 })])(
    "twelve equal short-term values are their own long-term value",
    (hundredths) => {
      expect(longTermFlickerOf(Array.from({ length: 12 }, () => hundredths / 100)).number).toBeCloseTo(
        hundredths / 100,
        12,
      );
    },
  );

  it("needs twelve values", () => {
    expect(problemsOf(() => longTermFlickerOf([1, 1, 1]))[0]).toMatchObject({
      path: "shortTerm",
      received: "3 values",
    });
  });

  it("gives 0.714 for a constant level of one", () => {
    expect(
      shortTermFlicker({ percentile01: 1, percentile1: 1, percentile3: 1, percentile10: 1, percentile50: 1 }).show({
        digits: 3,
      }),
    ).toBe("0.714");
  });
});

describe("voltage harmonics in Spain", () => {
  it.each([
    [2, "2"],
    [3, "5"],
    [4, "1"],
    [5, "5"],
    [25, "1"],
  ])("order %s: %s %%", (order, due) => {
    expect(rebtHarmonicLimit(order).in("%").text).toBe(due);
  });

  it("have whole orders", () => {
    expect(problemsOf(() => rebtHarmonicLimit(2.5))[0]!.path).toBe("order");
  });
});
