import { type Known, missing, whenKnown } from "../../formula/index.js";
import { conductorProperties, loadedConductors } from "../../conductor/index.js";
import { type FaultLoop, faultLoop, type LoopStretch } from "../../protection/index.js";
import type { Quantity } from "../../quantity/index.js";
import { impedanceOfStretch, impedanceThereAndBack } from "./ac-formulas.js";
import { connectionOf } from "./ac-path.js";
import type { SizedAcRoute } from "./ac-routes.js";
import { cableOf } from "./cables.js";
import type { Sizing } from "./sizing.js";

/** The loop of a fault to earth at the far end of a path, from the supply to there. */
export function loopAlong({ plant, rules }: Sizing, path: readonly SizedAcRoute[]): Known<FaultLoop> {
  const { lineToProtective } = plant.supply.loop ?? {};
  const source = whenKnown(
    {
      resistance: lineToProtective?.r ?? missing("supply.loop.lineToProtective.r"),
      reactance: lineToProtective?.x ?? missing("supply.loop.lineToProtective.x"),
    },
    (known) => known,
  );
  return faultLoop(
    source,
    path.flatMap((route) => stretchesOfLoop(route, rules.wiring)),
  );
}

function stretchesOfLoop(route: SizedAcRoute, wiring: Sizing["rules"]["wiring"]): readonly Known<LoopStretch>[] {
  const { sized, protectiveConductor, index } = route;
  return route.route.stretches.map(({ length }, part): Known<LoopStretch> => {
    // A fault heats the conductors from their limit, so the loop is taken there, at its highest.
    const limit = sized.ampacity?.stretches[part]?.conductorLimit;
    if (!sized.size || !limit) return missing(`routes[${index}].cable.size`);
    if (!protectiveConductor) return missing(`routes[${index}].cable.protectiveConductor`);
    const of = (size: Quantity<"area">) =>
      conductorProperties({
        cable: cableOf(route.route),
        size,
        temperature: limit,
        wiring,
        direct: false,
        loaded: loadedConductors(connectionOf(route.inverters[0]!)),
      });
    const [line, protective] = [of(sized.size), of(protectiveConductor)];
    const reactance = line.reactancePerLength;
    if (!reactance) return missing(`routes[${index}].cable`);
    return {
      lineResistance: impedanceOfStretch({ impedancePerLength: line.resistancePerLength, length }),
      protectiveResistance: impedanceOfStretch({ impedancePerLength: protective.resistancePerLength, length }),
      reactance: impedanceThereAndBack({ impedance: impedanceOfStretch({ impedancePerLength: reactance, length }) }),
    };
  });
}
