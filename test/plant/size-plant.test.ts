import { describe, expect, it } from "vitest";
import { compare, explain, type PlantRecord, type RecordedCheck, sizePlant } from "../../src/index.js";
import { bakeryWith, villageBakery } from "./demo.js";

const record = sizePlant(villageBakery());

function check(id: string, of: PlantRecord = record): RecordedCheck {
  const found = of.checks.find((item) => item.id === id);
  if (!found) throw new Error(`no check ${id}; there are ${of.checks.map((item) => item.id).join(", ")}`);
  return found;
}

function sized(changes: Readonly<Record<string, unknown>>): PlantRecord {
  return sizePlant(bakeryWith(changes) as never);
}

describe("the village bakery", () => {
  it("has strings within the inverter on the coldest morning", () => {
    // 38.9 V · (1 + 0.0025 · 41) · 13 = 557.53425 V, worked by hand.
    expect(record.strings[0]!.coldVoltage).toMatchObject({ value: "557.53425", unit: "V" });
    // 1000 V / 42.88725 V = 23.3
    expect(record.strings[0]!.longest!.value).toBe("23");
    expect(record.strings[0]!.limitedBy.longest).toBe("string/cold-voltage-within-inverter/Inverter/A");
  });

  it("has string cables for 1.25 times the short-circuit current", () => {
    expect(record.routes[0]!.current).toMatchObject({ value: "17.4375", unit: "A" });
    expect(record.routes.map(({ sizeName }) => sizeName)).toEqual(["4 mm²", "2.5 mm²", "10 mm²"]);
  });

  it("has a 25 A breaker on a 10 mm² cable with a 10 mm² protective conductor, and says what fixed it", () => {
    const [, , ac] = record.routes;
    expect([ac!.breaker!.value, ac!.size!.value, ac!.protectiveConductor!.value]).toEqual(["25", "10", "10"]);
    // 10 mm² by B2, three loaded, is 46 A; three circuits together leave 0.70 of it.
    expect(ac!.ampacity!.value).toBe("32.2");
    expect(ac!.fixedBy).toContain("protection/rating-within-ampacity/Inverter-Main board");
  });

  it("lifts the voltage along the network and the cable", () => {
    // 15 kW · 0.12 Ω / 400 V
    expect(record.grid.voltageProfile.map(({ change }) => Number(change!.value).toFixed(3))).toEqual([
      "4.500",
      expect.stringMatching(/^1\.6/),
    ]);
  });

  it("leaves open what the description cannot decide, and names it", () => {
    const open = record.checks.filter(({ verdict }) => verdict === "open");
    expect(open.every(({ missing }) => missing.length > 0)).toBe(true);
    expect(record.outcome.verdict).toBe("open");
  });

  it("asks for the unused input to be sealed", () => {
    expect(record.toDo).toContainEqual(expect.objectContaining({ kind: "seal", about: "Inverter/A" }));
  });
});

describe("verdicts", () => {
  it("are exact at the limit and one last digit on either side", () => {
    const verdict = (limit: string) =>
      check(
        "string/cold-voltage-within-inverter/Inverter/A",
        sized({ "inverters[0].maximumDcVoltage": limit, "inverters[0].mppVoltageRange": ["200 V", "500 V"] }),
      ).verdict;
    expect([verdict("557.53426 V"), verdict("557.53425 V"), verdict("557.53424 V")]).toEqual(["met", "met", "not-met"]);
  });

  it("come with the smallest change that would meet them", () => {
    const failed = check(
      "string/cold-voltage-within-inverter/Inverter/A",
      sized({ "inverters[0].maximumDcVoltage": "550 V", "inverters[0].mppVoltageRange": ["200 V", "500 V"] }),
    );
    expect(failed).toMatchObject({ verdict: "not-met", remedy: "at most 12 modules in series" });
  });

  it("are open where a finding is missing", () => {
    const without = sized({ "site.coldest": undefined, "inverters[0].trackers[0].shortCircuitRating": undefined });
    expect(check("string/cold-voltage-within-inverter/Inverter/A", without)).toMatchObject({
      verdict: "open",
      missing: ["site.coldest"],
    });
    expect(check("string/short-circuit-current-within-tracker/Inverter/A", without).missing).toEqual([
      "inverters[0].trackers[0].shortCircuitRating",
    ]);
  });

  it("verify what is stated and choose what is not", () => {
    const stated = sized({ "routes[2].cable.size": "4 mm2", "routes[2].breaker.rating": "32 A" });
    expect(stated.verified).toEqual(
      expect.arrayContaining(["strings", "routes[2].cable.size", "routes[2].breaker.rating"]),
    );
    // 4 mm² by B2 is 27 A; three circuits together leave 18.9 A.
    expect(check("protection/rating-within-ampacity/Inverter-Main board", stated).verdict).toBe("not-met");
    expect(stated.outcome.verdict).toBe("not-met");
  });
});

describe("the record", () => {
  it("is frozen plain JSON, the same bytes for the same input", () => {
    expect(Object.isFrozen(record.checks[0])).toBe(true);
    expect(JSON.parse(JSON.stringify(record))).toEqual(record);
    expect(JSON.stringify(sizePlant(villageBakery()))).toBe(JSON.stringify(record));
  });

  it("leaves the description as it was", () => {
    const plant = villageBakery();
    sizePlant(plant);
    expect(plant).toEqual(villageBakery());
    expect(Object.isFrozen(plant.site)).toBe(false);
  });

  it("has an id of its own for every check", () => {
    const ids = record.checks.map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  it("has a step for every number, a declaration for every rule and a source for every citation", () => {
    const { steps, declarations } = record;
    const keys: string[] = [];
    JSON.stringify(record, (key, value: unknown) => {
      if (key === "step") keys.push(value as string);
      return value;
    });
    expect(keys.length).toBeGreaterThan(200);
    expect(keys.filter((key) => !steps![key])).toEqual([]);
    const cited = new Set(record.sources.map(({ key }) => key));
    for (const step of Object.values(steps!)) {
      if (step.id !== undefined) expect(declarations[step.id]).toBeDefined();
      for (const used of Object.values(step.uses ?? {}).flat()) expect(steps![used]).toBeDefined();
      for (const { in: key } of step.source ?? []) expect(cited).toContain(key);
    }
    for (const { rule } of record.checks) expect(declarations[rule]).toBeDefined();
  });

  it("drops its steps and nothing else without working, and explains itself all the same", () => {
    const short = sizePlant(villageBakery(), { working: false });
    const { steps, ...rest } = record;
    expect(short).toEqual(rest);
    const id = "string/cold-voltage-within-inverter/Inverter/A";
    expect(explain(short, id)).toEqual(explain(record, id));
    expect(Object.keys(steps!).length).toBeGreaterThan(100);
  });

  it("explains a check, inputs before results, and refuses an unknown id", () => {
    const working = explain(record, "string/cold-voltage-within-inverter/Inverter/A");
    expect(working.map(({ substituted }) => substituted)).toContain("13 · 42.88725 V");
    expect(() => explain(record, "no/such/check")).toThrow(/no check or step/);
  });
});

describe("comparison", () => {
  it("says what changed and which checks flipped", () => {
    const { changed, flipped } = compare(record, sized({ "inverters[0].maximumAcDevice": "20 A" }));
    expect(changed).toContainEqual({ path: "plant.inverters[0].maximumAcDevice", before: "40 A", after: "20 A" });
    expect(flipped).toContainEqual(
      expect.objectContaining({
        check: "protection/rating-within-largest-device/Inverter-Main board",
        after: "not-met",
      }),
    );
  });

  it("finds nothing between equal plants, and keeps ids when an unrelated part changes", () => {
    expect(compare(record, sizePlant(villageBakery()))).toEqual({ changed: [], flipped: [] });
    const other = sized({ "routes[2].stretches[1].length": "7 m" });
    expect(other.checks.map(({ id }) => id)).toEqual(record.checks.map(({ id }) => id));
  });
});
