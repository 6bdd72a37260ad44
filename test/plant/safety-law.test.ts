import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { conditions } from "../../src/catalogue/index.js";
import { isInputError, type PlantDescription, type PlantRecord, sizePlant } from "../../src/index.js";
import { everyPath } from "../../src/plant/description/path.js";
import { plantSchema } from "../../src/plant/description/plant-description.js";
import { runs, seed } from "../harness/random.js";
import { frozenPlant } from "./frozen-plant.js";
import { moved, placesOf, valueAt, withValue } from "./walk.js";

const folder = new URL("../../shared/plants/", import.meta.url);
const demos = readdirSync(folder)
  .filter((name) => name.endsWith(".json"))
  .map((name) => JSON.parse(readFileSync(new URL(name, folder), "utf8")) as PlantDescription);

const declared = conditions().map(({ id, declaration }) => ({ id, worse: Object.entries(declaration.worse ?? {}) }));
const pathsWalked = [
  ...new Set(
    declared.flatMap(({ worse }) => worse.filter(([, way]) => way !== "either").map(([path, way]) => `${path} ${way}`)),
  ),
];

/** A small generator of its own, so that one printed seed repeats a run. */
function dice(from: number): () => number {
  let state = from >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A demo with some of its numbers moved a little. */
function variant(plant: PlantDescription, roll: () => number): PlantDescription {
  let changed = structuredClone(plant);
  for (const key of pathsWalked) {
    const [path] = key.split(" ") as [string];
    for (const place of placesOf(changed, path)) {
      if (roll() > 0.15) continue;
      const value = moved(valueAt(changed, place), roll() < 0.5 ? "up" : "down", 1 + roll() * 0.25);
      if (typeof value === "string") changed = withValue(changed, place, value);
    }
  }
  return changed;
}

function sized(plant: PlantDescription): PlantRecord | undefined {
  try {
    return sizePlant(plant, { working: false });
  } catch (error) {
    if (isInputError(error)) return undefined;
    throw error;
  }
}

const RANK = { met: 0, open: 1, "not-met": 2 } as const;

describe("safety law", () => {
  it("is declared along keys of the description only", () => {
    const known = new Set(everyPath(plantSchema).map((path) => path.replaceAll("{}", "[]")));
    const unknown = declared.flatMap(({ id, worse }) =>
      worse.filter(([path]) => !known.has(path)).map(([path]) => `${id}: ${path}`),
    );
    expect(unknown).toEqual([]);
  });

  it("worse inputs never improve a check, and often enough fail it", { timeout: 600_000 }, () => {
    const roll = dice(seed);
    const plants = Math.max(2, Math.round(runs / 20));
    let walks = 0;
    let failing = 0;
    const improved: string[] = [];
    for (let count = 0; count < plants; count += 1) {
      const first = sized(variant(demos[count % demos.length]!, roll));
      if (!first) continue;
      const plant = frozenPlant(first);
      const before = sized(plant);
      if (!before) continue;
      for (const key of pathsWalked) {
        const [path, way] = key.split(" ") as [string, "up" | "down"];
        const places = placesOf(plant, path);
        if (places.length === 0) continue;
        const place = places[Math.floor(roll() * places.length)]!;
        const value = moved(valueAt(plant, place), way, [1.3, 2, 4][Math.floor(roll() * 3)]!);
        if (value === undefined) continue;
        const after = sized(withValue(plant, place, value));
        if (!after) continue;
        const verdicts = new Map(after.checks.map(({ id, verdict }) => [id, verdict]));
        const rules = new Set(
          declared
            .filter(({ worse }) => worse.some(([other, direction]) => other === path && direction === way))
            .map(({ id }) => id),
        );
        for (const check of before.checks) {
          const now = verdicts.get(check.id);
          if (!rules.has(check.rule) || now === undefined) continue;
          walks += 1;
          if (check.verdict === "met" && now === "not-met") failing += 1;
          if (RANK[now] < RANK[check.verdict])
            improved.push(
              `${check.id}: ${check.verdict} became ${now} when ${place.join(".")} went ${way} to ${JSON.stringify(value)}`,
            );
        }
      }
    }
    console.log(`safety law: ${plants} plants, ${walks} walks, ${failing} turned met into not met, seed ${seed}`);
    expect([...new Set(improved)]).toEqual([]);
    expect(failing / walks).toBeGreaterThan(0.05);
  });
});
