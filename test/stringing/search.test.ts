import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findStringings, type Score } from "../../src/stringing/index.js";
import { runs } from "../harness/random.js";
import { bruteForce, type Criteria, isBefore } from "./brute-force.js";
import { inputOf, smallPlant } from "./random-plants.js";

const ROOFS_A_RUN = 20;
const MOST_TRIES = 30_000;
const PATIENCE = 600_000;

function criteriaOf({ unusedModules, fuses, joinedRoofs, balance, shortfall, ratioDistance }: Score): Criteria {
  return [unusedModules, fuses, joinedRoofs, Math.round(balance * 1e6), shortfall, Math.round(ratioDistance * 10)];
}

describe("against everything tried", () => {
  it(
    `finds the best of each of ${runs * ROOFS_A_RUN} random small plants, and ranks the next in order`,
    () => {
      let [tried, withSeveral, notFull] = [0, 0, 0];
      fc.assert(
        fc.property(smallPlant, (plant) => {
          const best = bruteForce(plant, 3, MOST_TRIES);
          if (best === null) return;
          tried += 1;
          const found = findStringings(inputOf(plant, 3));
          const places = plant.roofs.reduce((sum, { modules }) => sum + modules, 0);
          const whole = best.filter(([unused]) => unused < places);
          expect(found.stringings.map(({ score }) => criteriaOf(score))).toEqual(
            whole.slice(0, found.stringings.length),
          );
          expect(found.outcome).toBe(whole.length > 0 ? "optimal" : "none");
          if (found.stringings.length > 1) withSeveral += 1;
          if (best[0]![0] > 0) notFull += 1;
        }),
        { numRuns: runs * ROOFS_A_RUN },
      );
      expect(tried).toBeGreaterThan(runs * ROOFS_A_RUN * 0.5);
      expect(withSeveral).toBeGreaterThan(tried * 0.2);
      expect(notFull).toBeGreaterThan(tried * 0.2);
    },
    PATIENCE,
  );

  it("compares criteria one after the other", () => {
    expect(isBefore([0, 9, 9, 9, 9, 9], [1, 0, 0, 0, 0, 0])).toBe(true);
    expect(isBefore([0, 1, 0, 0, 0, 0], [0, 0, 9, 9, 9, 9])).toBe(false);
    expect(isBefore([0, 0, 0, 5, 0, 0], [0, 0, 0, 5, 0, 0])).toBe(false);
  });
});
