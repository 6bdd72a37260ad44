import { describe, expect, it } from "vitest";
import {
  generatorCableChecks,
  powerFactorAboveAsked,
  reactiveCapabilityChecks,
  vdeArN4105_2011_powerFactorOfPlant,
  vdeArN4105_2018_powerFactorOfPlant,
} from "../../src/grid/index.js";
import { missing } from "../../src/formula/index.js";

describe("power factor steps of Germany", () => {
  it.each([
    ["4.6 kVA", "0.95"],
    ["4.601 kVA", "0.9"],
    ["4.599 kVA", "0.95"],
  ])("edition 2018: %s needs %s", (plantPower, due) => {
    expect(vdeArN4105_2018_powerFactorOfPlant({ plantPower }).text).toBe(due);
  });

  it.each([
    ["3.68 kVA", "1"],
    ["3.681 kVA", "0.95"],
    ["13.8 kVA", "0.95"],
    ["13.801 kVA", "0.9"],
  ])("edition 2011: %s needs %s", (plantPower, due) => {
    expect(vdeArN4105_2011_powerFactorOfPlant({ plantPower }).text).toBe(due);
  });
});

describe("apparent power for the reactive power that is asked", () => {
  const inverter = { plantPower: "12 kVA", apparentPower: "10 kVA", activePower: "9 kW", at: "INV1" } as const;
  const verdict = (rules: Parameters<typeof reactiveCapabilityChecks>[0]["rules"], more: object = {}) =>
    reactiveCapabilityChecks({ rules, ...inverter, ...more })[0]?.verdict;

  it("is P over cos φ in Europe, exactly", () => {
    expect([verdict("VDE-AR-N 4105:2018"), verdict("VDE-AR-N 4105:2018", { activePower: "9.001 kW" })]).toEqual([
      "met",
      "not met",
    ]);
    expect(verdict("VDE-AR-N 4105:2018", { plantPower: "4.6 kVA", activePower: "9.5 kW" })).toBe("met");
    expect(verdict("EN 50549-1:2019")).toBe("met");
  });

  it("is the root of P² and (0.44 S)² in North America", () => {
    expect(verdict("IEEE 1547:2018 category B III", { activePower: "8.979 kW" })).toBe("met");
    expect(verdict("IEEE 1547:2018 category B III", { activePower: "8.981 kW" })).toBe("not met");
  });

  it("is open while the power is not known, and not asked where the rules ask nothing", () => {
    expect(verdict("VDE-AR-N 4105:2018", { plantPower: missing("inverters[0].apparentPower") })).toBe("open");
    expect(verdict("EREC G98:2022")).toBeUndefined();
  });
});

describe("Spain", () => {
  it("wants a power factor above 0.98 and a cable for 125 %", () => {
    expect(powerFactorAboveAsked({ value: "0.981", limit: "0.98" }).verdict).toBe("met");
    const verdict = (ampacity: string) =>
      generatorCableChecks({ generatorCurrent: "16 A", ampacity, at: "INV1" })[0]!.verdict;
    expect([verdict("20 A"), verdict("19.9 A")]).toEqual(["met", "not met"]);
  });
});
