import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { reevaluate } from "../../src/evidence/index.js";
import { type PlantDescription, sizePlant } from "../../src/plant/index.js";
import { mathjsEvaluator } from "./mathjs-evaluator.js";

const folder = new URL("../../shared/plants/", import.meta.url);

// Every number of a whole sizing, worked out again by another program from the declarations that the record carries.
describe("no step of a sizing record differs when it is worked out again", () => {
  const plants = readdirSync(folder).filter((name) => name.endsWith(".json"));
  it.each(plants)("%s", (name) => {
    const plant = JSON.parse(readFileSync(new URL(name, folder), "utf8")) as PlantDescription;
    const { recomputed, differences } = reevaluate(sizePlant(plant), mathjsEvaluator);
    expect(differences).toEqual([]);
    expect(Math.min(recomputed.formula, recomputed.lookup, recomputed.conversion, recomputed.choice)).toBeGreaterThan(
      0,
    );
  });
});
