import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import "../harness/fast-check.js";
import {
  allocatedPhases,
  allocatePhases,
  phaseChecks,
  phaseUnbalance,
  voltageUnbalance,
  voltageUnbalanceChecks,
} from "../../src/grid/index.js";
import { problemsOf } from "./problems.js";

const inverters = (powers: readonly number[]) =>
  powers.map((power, index) => ({ name: `INV${index + 1}`, apparentPower: `${power} VA` }));

/** The least unbalance by trying every allocation. */
function byTryingAll(powers: readonly number[]): number {
  let best = Infinity;
  const place = (at: number, loads: readonly number[]): void => {
    if (at === powers.length) {
      best = Math.min(best, Math.max(...loads) - Math.min(...loads));
      return;
    }
    for (let phase = 0; phase < 3; phase += 1)
      place(
        at + 1,
        loads.map((load, index) => (index === phase ? load + powers[at]! : load)),
      );
  };
  place(0, [0, 0, 0]);
  return best;
}

describe("allocation of inverters to phases", () => {
  test.prop([
    fc.array(
      fc.integer({ min: 1, max: 60 }).map((tenths) => tenths * 100),
      { minLength: 1, maxLength: 9 },
    ),
  ])("has the least unbalance of all", (powers) => {
    const { unbalance, phases, loads } = allocatePhases(inverters(powers));
    expect(unbalance.number).toBe(byTryingAll(powers));
    expect(Object.values(phases).flat().sort()).toEqual(
      inverters(powers)
        .map(({ name }) => name)
        .sort(),
    );
    expect(Object.values(loads).reduce((sum, load) => sum + load.number, 0)).toBe(
      powers.reduce((sum, power) => sum + power, 0),
    );
  });

  it("takes nine different ratings, and equal ones besides", () => {
    const nine = [1000, 1500, 2000, 2500, 3000, 3600, 4000, 4600, 5000];
    expect(allocatePhases(inverters(nine)).unbalance.number).toBe(byTryingAll(nine));
    expect(allocatePhases(inverters(Array.from({ length: 30 }, () => 3000))).unbalance.text).toBe("0");
    expect(allocatePhases(inverters(Array.from({ length: 31 }, () => 3000))).unbalance.text).toBe("3000");
  });

  it("refuses ten different ratings, and two inverters of one name", () => {
    expect(problemsOf(() => allocatePhases(inverters([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])))[0]).toMatchObject({
      path: "inverters",
      code: "refused",
    });
    expect(problemsOf(() => allocatePhases([...inverters([1000]), ...inverters([2000])]))[0]).toMatchObject({
      path: "inverters[1].name",
      code: "contradiction",
    });
  });

  it("keeps every digit of a rating", () => {
    expect(
      allocatePhases(
        ["1.0001 kVA", "1 kVA", "1 kVA"].map((apparentPower, index) => ({ name: `INV${index}`, apparentPower })),
      ).unbalance.text,
    ).toBe("0.1");
  });
});

describe("limits of unbalance", () => {
  const on = (powers: readonly number[]) =>
    allocatedPhases(
      inverters(powers).map((inverter, index) => ({ ...inverter, phase: (["L1", "L2", "L3"] as const)[index]! })),
    );
  const verdicts = (rules: Parameters<typeof phaseChecks>[0]["rules"], powers: readonly number[]) =>
    phaseChecks({ rules, supply: "230/400 V 50 Hz", allocation: on(powers), at: "plant" }).map(
      ({ verdict }) => verdict,
    );

  it.each([
    [4600, "met"],
    [4599.9, "met"],
    [4600.1, "not met"],
  ])("Germany: %s VA is %s", (power, due) => {
    expect(verdicts("VDE-AR-N 4105:2018", [power])).toEqual([due, due]);
    expect(verdicts("VDE-AR-N 4105:2011", [power])).toEqual([due]);
  });

  it.each([
    [5000, "met"],
    [5000.1, "not met"],
  ])("Australia and New Zealand: %s VA is %s", (power, due) => {
    expect(verdicts("AS/NZS 4777.2:2020 Australia A", [power])).toEqual([due, due]);
  });

  it("Spain: less than 5 kW between phases, single-phase up to 15 kW, by date", () => {
    expect(verdicts("RD 1699/2011:2020", [8000, 3000])).toEqual(["not met"]);
    expect(verdicts("RD 1699/2011:2020", [8000, 3001, 3001])).toEqual(["met"]);
    expect(verdicts("RD 1699/2011:2020", [15000])).toEqual(["met"]);
    expect(verdicts("RD 1699/2011:2014", [15000])).toEqual(["not met"]);
    expect(verdicts("RD 1699/2011:2014", [5000])).toEqual(["met"]);
  });

  it("Great Britain and Ireland: current per phase at nominal voltage", () => {
    expect(verdicts("EREC G98:2022", [3680])).toEqual(["met"]);
    expect(verdicts("EREC G98:2022", [3680.1])).toEqual(["not met"]);
    expect(verdicts("ESB Networks micro-generation:2021", [5750])).toEqual(["met"]);
    expect(verdicts("ESB Networks micro-generation:2021", [6000])).toEqual(["not met"]);
    expect(verdicts("ESB Networks micro-generation:2021", [4000, 4000, 4000])).toEqual([
      "not met",
      "not met",
      "not met",
    ]);
  });

  it("counts what three-phase inverters add to each phase", () => {
    const allocation = on([1000]);
    const verdict = (each: string) =>
      phaseChecks({
        rules: "EREC G98:2022",
        supply: "230/400 V 50 Hz",
        allocation,
        threePhasePowerPerPhase: each,
        at: "plant",
      })[0]!.verdict;
    expect([verdict("2680 VA"), verdict("2681 VA")]).toEqual(["met", "not met"]);
  });

  it("is silent where the rules print no limit", () => {
    expect(verdicts("EN 50549-1:2019", [9000])).toEqual([]);
  });
});

describe("unbalance", () => {
  it("is the largest difference of powers, and the largest deviation of voltages from their mean", () => {
    expect(phaseUnbalance({ phaseLoads: ["5 kVA", "3 kVA", "4 kVA"] }).text).toBe("2000");
    expect(voltageUnbalance({ lineVoltages: ["400 V", "404 V", "396 V"] }).text).toBe("0.01");
    expect(voltageUnbalance({ lineVoltages: ["208 V", "208 V", "208 V"] }).text).toBe("0");
    expect(() => voltageUnbalance({ lineVoltages: ["208 V", "208 V"] })).toThrow("three line voltages");
  });

  it.each([
    [["206 V", "200 V", "194 V"], "met"],
    [["206.01 V", "200 V", "193.99 V"], "not met"],
  ])("stays within three per cent in North America: %s is %s", (lineVoltages, due) => {
    expect(voltageUnbalanceChecks({ lineVoltages, at: "service" })[0]!.verdict).toBe(due);
  });
});
