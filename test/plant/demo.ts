import { readFileSync } from "node:fs";
import type { PlantDescription } from "../../src/index.js";

/** The description of the village bakery, a fresh copy at each call. */
export function villageBakery(): PlantDescription {
  return JSON.parse(
    readFileSync(new URL("../../shared/plants/village-bakery.json", import.meta.url), "utf8"),
  ) as PlantDescription;
}

type Loose = { [key: string]: Loose } & { [index: number]: Loose };

/** The village bakery after some changes, each a path and its value; `undefined` removes what stands there. */
export function bakeryWith(changes: Readonly<Record<string, unknown>>): unknown {
  const plant = villageBakery() as unknown as Loose;
  for (const [path, value] of Object.entries(changes)) {
    const steps = path.replaceAll("[", ".").replaceAll("]", "").split(".");
    const last = steps.pop()!;
    const owner = steps.reduce((at, step) => at[step]!, plant);
    if (value === undefined) Reflect.deleteProperty(owner, last);
    else owner[last] = value as Loose;
  }
  return plant;
}
