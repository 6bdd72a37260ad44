import type { Connection } from "../../grid/index.js";
import type { Plant } from "../description/plant-description.js";
import type { PlantRoute } from "./cables.js";

export type PlantInverter = Plant["inverters"][number];

/** A route of the a.c. side with the inverters that feed through it. */
export interface AcRoute {
  readonly route: PlantRoute;
  readonly index: number;
  readonly inverters: readonly PlantInverter[];
}

/** How an inverter is connected to its supply. */
export function connectionOf({ phases }: Pick<PlantInverter, "phases">): Connection {
  return phases === 3 ? "three-phase" : phases === 2 ? "split-phase" : "single-phase";
}

/** The routes from one inverter to the supply, inverter first. */
export function pathToSupply({ routes, supply }: Plant, inverter: PlantInverter): readonly number[] {
  const path: number[] = [];
  let place = inverter.name;
  while (place !== supply.at) {
    const index = routes.findIndex(({ from }) => from === place);
    path.push(index);
    place = routes[index]!.to;
  }
  return path;
}

/** Every route of the a.c. side, in the order of the description. */
export function acRoutes(plant: Plant): readonly AcRoute[] {
  const paths = plant.inverters.map((inverter) => ({ inverter, path: pathToSupply(plant, inverter) }));
  return plant.routes.flatMap((route, index) => {
    const inverters = paths.filter(({ path }) => path.includes(index)).map(({ inverter }) => inverter);
    return inverters.length > 0 ? [{ route, index, inverters }] : [];
  });
}
