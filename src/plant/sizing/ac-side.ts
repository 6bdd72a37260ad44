import type { PlantRecord, RecordedFinding, RecordedRoute } from "../record/record.js";
import type { Recorder } from "../record/recorder.js";
import { acRoutes, pathToSupply } from "./ac-path.js";
import { proveAcRoute } from "./ac-protection.js";
import { sizeAcRoute } from "./ac-routes.js";
import { proveBoards } from "./boards.js";
import { sizeArrayBonding, sizeMainEarthing } from "./bonding.js";
import { sizeGridSettings } from "./grid-settings.js";
import { sizeGridVoltage } from "./grid-connection.js";
import { isNecWiring, proveBusbar } from "./nec.js";
import { feedFactorOf } from "./power-factor.js";
import type { Sizing } from "./sizing.js";
import { proveSiteExport } from "./site-export.js";
import type { StringGroup } from "./strings.js";
import { sizeSurge } from "./surge.js";

/** What the a.c. side of a plant came to. */
export interface AcSide {
  readonly routes: readonly RecordedRoute[];
  readonly findings: readonly RecordedFinding[];
  readonly grid: PlantRecord["grid"];
}

/** Sizes everything from the inverters to the connection point. */
export function sizeAcSide(sizing: Sizing, groups: readonly StringGroup[], recorder: Recorder): AcSide {
  const { plant } = sizing;
  const feed = feedFactorOf(sizing);
  const sized = acRoutes(plant).map((route) => sizeAcRoute(sizing, route, feed, recorder));
  const proofs = sized.flatMap((route) => {
    const path = pathToSupply(plant, route.inverters[0]!).slice(
      pathToSupply(plant, route.inverters[0]!).indexOf(route.index),
    );
    const fromSupply = path.map((index) => sized.find((other) => other.index === index)!).reverse();
    return proveAcRoute(sizing, route, fromSupply, recorder);
  });
  proveBoards(sizing, sized, ({ designCurrent }) => designCurrent);
  if (isNecWiring(sizing)) proveBusbar(sizing, sized);
  proveSiteExport(sizing, sized);
  const voltages = plant.inverters.map((inverter) => sizeGridVoltage(sizing, inverter, sized, feed, recorder));
  return {
    routes: sized.map(({ recorded }) => recorded),
    findings: [
      ...proofs,
      ...sizeArrayBonding(sizing, recorder),
      ...sizeMainEarthing(sizing, recorder),
      ...sizeSurge(sizing, groups),
    ],
    grid: {
      nominalVoltage: recorder.perhaps(voltages[0]?.nominalVoltage),
      voltageProfile: voltages.flatMap(({ points }) => points),
      limits: voltages.flatMap(({ limits }) => limits),
      settings: sizeGridSettings(sizing, recorder),
    },
  };
}
