import { describe, expect, it } from "vitest";
import { missing } from "../../src/formula/index.js";
import { InputError } from "../../src/quantity/index.js";
import { findStringings, type StringingInput, type StringingRoof } from "../../src/stringing/index.js";

const PATIENCE = 300_000;

const roof = (name: string, modules: number, change: Partial<StringingRoof> = {}): StringingRoof => ({
  name,
  moduleType: "M440",
  modules,
  orientation: name,
  module: {
    coldOpenCircuitVoltage: "43.2 V",
    coldMppVoltage: "36 V",
    hotMppVoltage: "28.1 V",
    hotOpenCircuitVoltage: "34.9 V",
  },
  ceilings: [{ key: "module", limit: "1000 V" }],
  maximumPower: "440 W",
  mppCurrent: "13.42 A",
  shortCircuitCurrent: "14.1 A",
  maximumSeriesFuse: "25 A",
  voltageDrop: "1 %",
  ...change,
});

const plant = (
  roofs: readonly StringingRoof[],
  inverters: number,
  trackers: number,
  change: object = {},
): StringingInput => ({
  rules: "IEC 62548-1:2023",
  fuses: "choose",
  joinRoofs: true,
  most: 1,
  targetRatio: "1.3",
  roofs,
  inverters: Array.from({ length: inverters }, (_, at) => ({
    name: `INV${at}`,
    maximumDcVoltage: "1000 V",
    mppVoltageRange: ["200 V", "850 V"] as const,
    startVoltage: "180 V",
    backfeedCurrent: "0 A",
    ratedPower: "50 kW",
    trackers: Array.from({ length: trackers }, (__, place) => ({
      name: `T${place}`,
      inputs: 2,
      maximumInputCurrent: "30 A",
      shortCircuitRating: "45 A",
    })),
    ...change,
  })),
});

const other = {
  moduleType: "M400",
  maximumPower: "400 W",
  mppCurrent: "12.9 A",
  shortCircuitCurrent: "13.6 A",
  maximumSeriesFuse: "25 A",
};

describe("the promised sizes are proven optimal", () => {
  it.each([
    ["one roof of 5 000", plant([roof("A", 5000)], 40, 6)],
    ["one roof of 5 000 with an array power", plant([roof("A", 5000)], 40, 6, { maximumArrayPower: "58 kW" })],
    ["two roofs of 5 000", plant([roof("A", 2611), roof("B", 2389)], 40, 6)],
    [
      "two roofs of 5 000 with an array power",
      plant([roof("A", 2611), roof("B", 2389)], 40, 6, { maximumArrayPower: "57 kW" }),
    ],
    ["two types of 5 000", plant([roof("A", 2611), roof("B", 2389, other)], 40, 6)],
    [
      "two types of 5 000 with an array power",
      plant([roof("A", 2611), roof("B", 2389, other)], 40, 6, { maximumArrayPower: "57 kW" }),
    ],
    [
      "two roofs, more modules than fit",
      plant([roof("A", 3611), roof("B", 3389)], 40, 6, { maximumArrayPower: "57 kW" }),
    ],
    [
      "six roofs of 500",
      plant(
        [83, 97, 71, 99, 60, 90].map((modules, at) => roof(`R${at}`, modules)),
        4,
        6,
      ),
    ],
    [
      "six roofs of 500 with an array power",
      plant(
        [83, 97, 71, 99, 60, 90].map((modules, at) => roof(`R${at}`, modules)),
        4,
        6,
        { maximumArrayPower: "60 kW" },
      ),
    ],
  ])(
    "%s",
    (_, input) => {
      const found = findStringings(input);
      expect(found.outcome).toBe("optimal");
      expect(found.bound).toEqual(found.stringings[0]?.score);
    },
    PATIENCE,
  );
});

describe("what a person can check", () => {
  it("halves 28 modules over two trackers", () => {
    const found = findStringings({ ...plant([roof("A", 28)], 1, 2), most: 3 });
    expect(found.stringings[0]?.strings.map(({ tracker, modules, count }) => [tracker, modules, count])).toEqual([
      ["T0", 14, 1],
      ["T1", 14, 1],
    ]);
    expect(found.stringings[0]?.score).toMatchObject({ unusedModules: 0, fuses: 0, joinedRoofs: 0 });
    expect(found.stringings).toHaveLength(3);
    expect(found.blocked).toEqual([]);
  });

  it("gives each roof its own tracker", () => {
    const found = findStringings(plant([roof("A", 11), roof("B", 9)], 1, 2));
    expect(found.stringings[0]?.strings.map(({ roof: name, modules, count }) => [name, modules, count]).sort()).toEqual(
      [
        ["A", 11, 1],
        ["B", 9, 1],
      ],
    );
  });

  it("joins roofs on a tracker only where that places more modules, and only where it is allowed", () => {
    const two = plant([roof("A", 10), roof("B", 10)], 1, 1);
    expect(findStringings(two).stringings[0]).toMatchObject({ usedModules: 20, score: { joinedRoofs: 1 } });
    expect(findStringings({ ...two, joinRoofs: false }).stringings[0]).toMatchObject({ usedModules: 10 });
    expect(findStringings(plant([roof("A", 10), roof("B", 10, other)], 1, 1)).stringings[0]).toMatchObject({
      usedModules: 10,
    });
  });

  it("takes fuses where they place more modules, and leaves strings off where none are wanted", () => {
    const three = { trackers: [{ name: "T", inputs: 3, maximumInputCurrent: "45 A", shortCircuitRating: "60 A" }] };
    const fused = plant([roof("A", 60)], 1, 1, three);
    expect(findStringings(fused).stringings[0]).toMatchObject({ usedModules: 60, score: { fuses: 3 } });
    expect(findStringings({ ...fused, fuses: "none" }).stringings[0]).toMatchObject({
      usedModules: 46,
      score: { fuses: 0 },
    });
  });

  it("says why nothing fits", () => {
    const because = (input: StringingInput) => findStringings(input).blocked[0]?.because;
    expect(findStringings(plant([roof("A", 5)], 1, 1))).toMatchObject({ outcome: "none", stringings: [] });
    expect(because(plant([roof("A", 5)], 1, 1))).toEqual([
      "5 modules of A do not divide into strings of the lengths that the trackers take",
    ]);
    expect(because(plant([roof("A", 60)], 1, 1))).toEqual([
      "the inverter takes at most 46 modules of this roof, with all of their trackers",
    ]);
    expect(
      because(
        plant(
          [roof("A", 20, { module: { ...roof("A", 1).module, coldOpenCircuitVoltage: missing("site.coldest") } })],
          1,
          1,
        ),
      ),
    ).toEqual(["not known: site.coldest"]);
    expect(because(plant([roof("A", 20, { shortCircuitCurrent: "50 A" })], 1, 1))).toEqual([
      "one string exceeds the tracker's short-circuit rating",
    ]);
  });

  it("refuses what cannot be searched, all at once", () => {
    expect(() => findStringings(plant([], 0, 1))).toThrow(/roofs.*inverters/);
    expect(() => findStringings({ ...plant([roof("A", 1.5)], 1, 0), most: 0 })).toThrow(InputError);
  });
});
