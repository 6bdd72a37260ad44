import type { PlantRecord, RecordedFinding, RecordedRoute } from "../record/record.js";
import type { Recorder } from "../record/recorder.js";
import { acRoutes } from "./ac-path.js";
import { sizeAcRoute } from "./ac-routes.js";
import { sizeArrayBonding } from "./bonding.js";
import { sizeGridSettings } from "./grid-settings.js";
import { sizeGridVoltage } from "./grid-connection.js";
import { feedFactorOf } from "./power-factor.js";
import type { Sizing } from "./sizing.js";

/** What the a.c. side of a plant came to. */
export interface AcSide {
  readonly routes: readonly RecordedRoute[];
  readonly findings: readonly RecordedFinding[];
  readonly grid: PlantRecord["grid"];
}

/** Sizes everything from the inverters to the connection point. */
export function sizeAcSide(sizing: Sizing, recorder: Recorder): AcSide {
  const { plant } = sizing;
  const feed = feedFactorOf(sizing);
  const sized = acRoutes(plant).map((route) => sizeAcRoute(sizing, route, feed, recorder));
  const voltages = plant.inverters.map((inverter) => sizeGridVoltage(sizing, inverter, sized, feed, recorder));
  return {
    routes: sized.map(({ recorded }) => recorded),
    findings: sizeArrayBonding(sizing, recorder),
    grid: {
      nominalVoltage: recorder.perhaps(voltages[0]?.nominalVoltage),
      voltageProfile: voltages.flatMap(({ points }) => points),
      limits: voltages.flatMap(({ limits }) => limits),
      settings: sizeGridSettings(sizing, recorder),
    },
  };
}
