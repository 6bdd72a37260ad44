import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Check, isMissing } from "../../src/formula/index.js";
import {
  arrayPowerWithinInverter,
  stringChecks,
  stringFuse,
  stringPower,
  trackerChecks,
} from "../../src/string/index.js";
import { findStringings, rankingRule, type Stringing, type StringingInput } from "../../src/stringing/index.js";
import { runs } from "../harness/random.js";
import { inputOf, smallPlant } from "./random-plants.js";

const PATIENCE = 600_000;

/** Every requirement of `string/` that a stringing meets with, judged apart from the search. */
function judged(input: StringingInput, { strings }: Stringing): readonly Check[] {
  const checks: Check[] = [];
  for (const inverter of input.inverters) {
    const powers: ReturnType<typeof stringPower>[] = [];
    for (const tracker of inverter.trackers) {
      const own = strings.filter((each) => each.inverter === inverter.name && each.tracker === tracker.name);
      if (own.length === 0) continue;
      const groups = own.map(({ roof: name, modules, count }) => {
        const roof = input.roofs.find((each) => each.name === name)!;
        powers.push(stringPower({ modules: modules * count, modulePower: roof.maximumPower }));
        checks.push(
          ...stringChecks({
            modules,
            module: roof.module,
            ceilings: [{ key: "inverter", limit: inverter.maximumDcVoltage }, ...roof.ceilings],
            mppVoltageRange: inverter.mppVoltageRange,
            startVoltage: inverter.startVoltage,
            voltageDrop: roof.voltageDrop,
          }).checks,
        );
        return { name, count, modules, roof };
      });
      const all = groups.reduce((sum, { count }) => sum + count, 0);
      checks.push(
        ...trackerChecks({
          rules: input.rules,
          tracker,
          strings: groups.map(({ roof, ...group }) => ({
            ...group,
            moduleType: roof.moduleType,
            mppCurrent: roof.mppCurrent,
            shortCircuitCurrent: roof.shortCircuitCurrent,
          })),
        }).checks,
      );
      const { shortCircuitCurrent, maximumSeriesFuse } = groups[0]!.roof;
      const fuse = own[0]!.fused ? "choose" : "none";
      checks.push(
        ...stringFuse({
          rules: input.rules,
          strings: all,
          shortCircuitCurrent,
          maximumSeriesFuse,
          backfeedCurrent: inverter.backfeedCurrent,
          fuse,
        }).checks,
      );
    }
    const { maximumArrayPower: limit } = inverter;
    if (powers.length > 0 && limit !== undefined && !isMissing(limit)) {
      const watts = powers.reduce((sum, power) => sum + power.number, 0);
      checks.push(arrayPowerWithinInverter({ value: `${watts} W`, limit }));
    }
  }
  return checks;
}

describe("laws of the search", () => {
  it(
    "never returns a stringing that a check refuses, nor more modules or inputs than there are",
    () => {
      let premises = 0;
      fc.assert(
        fc.property(smallPlant, (plant) => {
          const input = inputOf(plant, 3);
          for (const stringing of findStringings(input).stringings) {
            premises += 1;
            const refused = judged(input, stringing).filter(
              ({ verdict, rule }) => verdict === "not met" && rule.force === "requirement",
            );
            expect(refused.map(({ id }) => id)).toEqual([]);
            for (const { name, modules } of input.roofs) {
              const used = stringing.strings
                .filter(({ roof }) => roof === name)
                .reduce((sum, each) => sum + each.modules * each.count, 0);
              expect(used + (stringing.unused.find(({ roof }) => roof === name)?.modules ?? 0)).toBe(modules);
            }
          }
        }),
        { numRuns: runs * 3 },
      );
      expect(premises).toBeGreaterThan(runs);
    },
    PATIENCE,
  );

  it(
    "a further module never lowers the number that is used, and an input more never does",
    () => {
      fc.assert(
        fc.property(smallPlant, (plant) => {
          const used = (changed: typeof plant) => findStringings(inputOf(changed, 1)).stringings[0]?.usedModules ?? 0;
          const now = used(plant);
          const [first, ...rest] = plant.roofs;
          expect(
            used({ ...plant, roofs: [{ ...first!, modules: first!.modules + 1 }, ...rest] }),
          ).toBeGreaterThanOrEqual(now);
          const more = plant.inverters.map((inverter) => ({
            ...inverter,
            trackers: inverter.trackers.map((tracker) => ({ ...tracker, inputs: tracker.inputs + 1 })),
          }));
          expect(used({ ...plant, inverters: more })).toBeGreaterThanOrEqual(now);
        }),
        { numRuns: runs },
      );
    },
    PATIENCE,
  );

  it(
    "says what is in the way, and names layouts that are used in full",
    () => {
      let premises = 0;
      fc.assert(
        fc.property(smallPlant, (plant) => {
          const input = inputOf(plant, 1);
          const found = findStringings(input);
          for (const { roof, unused, because, nearest } of found.blocked) {
            premises += 1;
            expect(because.length, `${roof} ${unused}`).toBeGreaterThan(0);
            for (const layout of nearest) {
              const roofs = input.roofs
                .map((each) => ({ ...each, modules: layout.find(({ roof: name }) => name === each.name)!.modules }))
                .filter(({ modules }) => modules > 0);
              if (roofs.length === 0) continue;
              expect(findStringings({ ...input, roofs }).stringings[0]?.unused).toEqual([]);
            }
          }
        }),
        { numRuns: runs },
      );
      expect(premises).toBeGreaterThan(runs * 0.2);
    },
    PATIENCE,
  );

  it("states the ranking rule, one line a criterion", () => {
    const found = findStringings(inputOf(fc.sample(smallPlant, { numRuns: 1, seed: 1 })[0]!, 1));
    expect(found.ranking).toBe(rankingRule);
    expect(rankingRule).toHaveLength(Object.keys(found.bound).length);
  });
});
