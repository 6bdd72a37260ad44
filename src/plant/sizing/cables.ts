import { missing } from "../../formula/index.js";
import type { Cable, Stretch } from "../../conductor/index.js";
import type { Plant } from "../description/plant-description.js";

export type PlantRoute = Plant["routes"][number];

/** The cable of a route without its size, in the terms of `conductor/`. */
export function cableOf({ cable }: PlantRoute): Cable {
  const { kind, conductor, insulation, conductorClass, parallel } = cable;
  return {
    kind,
    ...(conductor === undefined ? {} : { conductor }),
    ...(insulation === undefined ? {} : { insulation }),
    ...(conductorClass === undefined ? {} : { conductorClass }),
    ...(parallel === undefined ? {} : { parallel }),
  };
}

/** The stretches of a route in the terms of `conductor/`; `beside` circuits of the route itself count with the stated ones. */
export function stretchesOf(route: PlantRoute, path: string, beside: number): readonly Stretch[] {
  return route.stretches.map((stretch, index) => {
    const at = `${path}.stretches[${index}]`;
    const {
      ambient,
      grouped,
      length,
      place,
      referenceMethod,
      arrangement,
      trayKind,
      trays,
      underCeiling,
      clearance,
      soilThermalResistivity,
      heightAboveRoof,
      statedAmpacity,
    } = stretch;
    return {
      place,
      length,
      ambient: ambient ?? missing(`${at}.ambient`),
      grouped: grouped === undefined ? missing(`${at}.grouped`) : grouped + beside,
      ...(referenceMethod === undefined ? {} : { referenceMethod }),
      ...(arrangement === undefined ? {} : { arrangement }),
      ...(trayKind === undefined ? {} : { trayKind }),
      ...(trays === undefined ? {} : { trays }),
      ...(underCeiling === undefined ? {} : { underCeiling }),
      ...(clearance === undefined ? {} : { clearance }),
      ...(soilThermalResistivity === undefined ? {} : { soilThermalResistivity }),
      ...(heightAboveRoof === undefined ? {} : { heightAboveRoof }),
      ...(statedAmpacity === undefined ? {} : { statedAmpacity }),
      ...(route.conductorLimit === undefined ? {} : { conductorLimit: route.conductorLimit }),
    };
  });
}

/** How a cable is called in the record and the material list. */
export function cableName({ cable }: PlantRoute): string {
  const parts = [
    cable.kind === "PV" ? "PV cable" : `${cable.kind} cable`,
    cable.conductor ?? "copper",
    cable.insulation,
    cable.type,
  ];
  return parts.filter((part) => part !== undefined).join(", ");
}

/** The terminals of an inverter on one side, in the terms of `conductor/`. */
export function terminalsOf(inverter: Plant["inverters"][number], path: string, side: "ac" | "dc", route: string) {
  const { terminals } = inverter;
  const at = `${path}.terminals`;
  return {
    at: `${route}/${inverter.name}`,
    range: terminals?.[side] ?? missing(`${at}.${side}`),
    temperature: terminals?.temperature ?? missing(`${at}.temperature`),
    aluminium: terminals?.aluminium ?? missing(`${at}.aluminium`),
  };
}
