import { isMissing, type Known, whenKnown } from "../../../formula/index.js";
import { given, type Quantity } from "../../../quantity/index.js";
import type { Cable } from "../../cable.js";
import type { Stretch } from "../../stretch.js";
import { ampacityInAir, circuitsTogether } from "../compose.js";
import { iec60364_5_52_2009_b_52_17 } from "../iec/b-52-17.js";
import { ofAllParallel, parallelOf } from "../parallel.js";
import { refuse } from "../refusal.js";
import type { StretchAmpacity } from "../stretch-ampacity.js";
import { ambientBehindModules, conductorLimitFactor, pvAmbientFactor } from "./ambient.js";
import { en50618_2014_a_3 } from "./en-50618-a-3.js";
import { en50618_2014_a_4 } from "./en-50618-a-4.js";

/** What a conductor of a photovoltaic cable is held to where the route says nothing else. */
export const usualConductorLimit = "90 °C";

/** What EN 50618 allows for good, in °C. */
const PERMANENT = 90;

const notInAir: readonly Stretch["place"][] = ["in ground", "duct in ground"];

/** Ampacity of a photovoltaic cable on a stretch, after EN 50618. */
export function ampacityPv(cable: Cable, size: Quantity<"area">, stretch: Stretch): StretchAmpacity {
  if (notInAir.includes(stretch.place)) {
    const message = "EN 50618 tabulates photovoltaic cable in air only; for a stretch in the ground state its ampacity";
    refuse("stretches[].place", message, "a place in air, or statedAmpacity", stretch.place);
  }
  const notes: string[] = [];
  const single = stretch.arrangement === "spaced";
  const tabulatedAmpacity = en50618_2014_a_3({
    section: size,
    arrangement: single ? "single on a surface" : "two touching on a surface",
  });
  const stated = stretch.conductorLimit ?? usualConductorLimit;
  if (stretch.conductorLimit === undefined) {
    notes.push("the conductor is held to 90 °C, since plugs and terminals are no parts for 120 °C");
  }
  const conductorLimit: Known<Quantity<"temperature">> = isMissing(stated) ? stated : given(stated, "°C");
  if (!isMissing(conductorLimit) && conductorLimit.number > PERMANENT) {
    notes.push("a conductor above 90 °C is allowed for 20,000 h in all, not over the life of a plant");
  }
  const ambient = ambientOf(stretch);
  const temperatureFactor = whenKnown({ ambient, conductorLimit }, (known) =>
    pvAmbientFactor({
      limitFactor: conductorLimitFactor(known),
      tableFactor: en50618_2014_a_4({ ambient: known.ambient }),
    }),
  );
  const conductorsInParallel = parallelOf(cable);
  const groupingFactor = whenKnown({ grouped: stretch.grouped }, ({ grouped }) =>
    iec60364_5_52_2009_b_52_17({ circuits: circuitsTogether({ grouped, conductorsInParallel }), grouping: "bunched" }),
  );
  const ampacity = whenKnown({ temperatureFactor, groupingFactor }, (known) =>
    ampacityInAir({ tabulatedAmpacity, ...known }),
  );
  return Object.freeze({
    ampacity: ofAllParallel(ampacity, cable),
    tabulated: tabulatedAmpacity,
    factors: [
      { of: "ambient", factor: temperatureFactor } as const,
      { of: "grouping", factor: groupingFactor } as const,
    ],
    ambient,
    conductorLimit: isMissing(conductorLimit) ? null : conductorLimit,
    notes,
  });
}

function ambientOf({ place, ambient }: Stretch): Known<Quantity<"temperature">> {
  return whenKnown({ ambient }, (known) => {
    const stated = given(known.ambient, "°C");
    return place === "behind modules" ? ambientBehindModules({ ambient: stated }) : stated;
  });
}
