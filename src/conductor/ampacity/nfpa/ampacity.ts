import { type Known, missing, whenKnown } from "../../../formula/index.js";
import { given, type Quantity } from "../../../quantity/index.js";
import type { Cable, ConductorMetal } from "../../cable.js";
import { sizeName } from "../../size/size.js";
import type { Place, Stretch } from "../../stretch.js";
import type { WiringRules } from "../../wiring.js";
import { circuitsTogether } from "../compose.js";
import { ofAllParallel, parallelOf } from "../parallel.js";
import { refuse } from "../refusal.js";
import type { StretchAmpacity } from "../stretch-ampacity.js";
import { ampacityInUse } from "./compose.js";
import { conductorsThatCount, currentCarryingConductors, racewayIsShort } from "./count.js";
import { type NfpaInsulation, nfpaInsulations } from "./insulations.js";
import { nfpa70_2017_rooftopAmbient, nfpa70_2023_rooftopAmbient } from "./rooftop.js";
import { nfpa70_2023_310_15_b_1_1 } from "./table-310-15-b-1-1.js";
import { nfpa70_2023_310_15_c_1 } from "./table-310-15-c-1.js";
import { nfpa70_2023_310_16 } from "./table-310-16.js";
import { nfpa70_2023_310_17 } from "./table-310-17.js";
import { nfpa70_2017_690_31_a } from "./table-690-31-a-2017.js";
import { nfpa70_2020_690_31_a_a } from "./table-690-31-a-a-2020.js";
import { nfpa70_2020_690_31_a_b } from "./table-690-31-a-b-2020.js";

/** Length up to which a raceway or bundle needs no adjustment. */
const UNADJUSTED = "600 mm";

const inFreeAir: readonly Place[] = ["free air", "behind modules"];

/** Whether a stretch is a single conductor in free air (table 310.17), not one in a raceway, cable or the earth (table 310.16). */
export function isInFreeAir({ kind }: Cable, { place }: Stretch): boolean {
  return kind !== "multi-core" && inFreeAir.includes(place);
}

/** Ampacity of a stretch after NFPA 70. */
export function ampacityNfpa(
  cable: Cable,
  size: Quantity<"area">,
  stretch: Stretch,
  loaded: 2 | 3,
  wiring: WiringRules,
): StretchAmpacity {
  const insulation = nfpaInsulationOf(cable, wiring);
  const name = sizeName(size);
  const tabulatedAmpacity = tabulatedNfpa(cable, name, stretch, insulation);
  const conductorsInParallel = parallelOf(cable);
  const ambient = ambientNfpa(stretch, insulation, isInFreeAir(cable, stretch), wiring);
  const temperatureFactor = whenKnown({ ambient }, (known) =>
    ambientFactorNfpa(known.ambient, cable, insulation, wiring),
  );
  const conductors = stretch.currentCarryingConductors ?? conductorsTogether(stretch, conductorsInParallel, loaded);
  const groupingFactor = whenKnown({ conductors }, (known) => adjustment(stretch, given(known.conductors, "1")));
  const ampacity = whenKnown({ temperatureFactor, groupingFactor }, (known) =>
    ampacityInUse({ tabulatedAmpacity, ...known }),
  );
  return Object.freeze({
    ampacity: ofAllParallel(ampacity, cable),
    tabulated: tabulatedAmpacity,
    factors: [{ of: "ambient", factor: temperatureFactor } as const, { of: "count", factor: groupingFactor } as const],
    ambient,
    conductorLimit: given(insulation.rating, "°C", `${insulation.key} insulation`),
    notes: [],
  });
}

/** The type of insulation of a cable; photovoltaic cable is photovoltaic wire of 90 °C where nothing else is stated. */
export function nfpaInsulationOf({ kind, insulation }: Cable, wiring: WiringRules): NfpaInsulation {
  const key = insulation ?? (kind === "PV" ? "PV wire" : undefined);
  const found = nfpaInsulations.find((each) => each.key === key);
  if (found === undefined) {
    return refuse(
      "cable.insulation",
      "NFPA 70 goes by types of insulation",
      nfpaInsulations.map((each) => each.key).join(", "),
      String(key),
    );
  }
  if (wiring === "NFPA 70:2017" && found.rating === "125 °C") {
    return refuse(
      "cable.insulation",
      "the edition of 2017 tabulates no conductor of 125 °C",
      "a rating up to 105 °C",
      found.key,
    );
  }
  return found;
}

function metalOf({ kind, conductor }: Cable): ConductorMetal {
  if (kind === "PV") return "copper";
  return (
    conductor ?? refuse("cable.conductor", "the conductor's metal decides the table", "copper, aluminium", "undefined")
  );
}

function tabulatedNfpa(
  cable: Cable,
  size: string,
  stretch: Stretch,
  { rating, key }: NfpaInsulation,
): Quantity<"current"> {
  const conductor = metalOf(cable);
  const free = isInFreeAir(cable, stretch);
  if (rating === "105 °C" || rating === "125 °C") {
    if (free || conductor === "aluminium") {
      const message =
        "conductors of 105 °C and 125 °C are tabulated for copper in a raceway, cable or the earth only; state the ampacity";
      return refuse("stretches[].place", message, "a raceway, or statedAmpacity", `${key}, ${stretch.place}`);
    }
    return nfpa70_2020_690_31_a_b({ conductorSize: size, rating });
  }
  return (free ? nfpa70_2023_310_17 : nfpa70_2023_310_16)({ conductorSize: size, conductor, rating });
}

/** The sizes that the tables of NFPA 70 hold for a cable on a stretch. */
export function sizesTabulatedNfpa(cable: Cable, stretch: Stretch, wiring: WiringRules): readonly string[] {
  const { rating } = nfpaInsulationOf(cable, wiring);
  if (rating === "105 °C" || rating === "125 °C") return nfpa70_2020_690_31_a_b.rows();
  const conductor = metalOf(cable);
  const table = isInFreeAir(cable, stretch) ? nfpa70_2023_310_17 : nfpa70_2023_310_16;
  return table
    .cells()
    .filter(({ column }) => column[0] === conductor && column[1] === rating)
    .map(({ row }) => row);
}

function ambientNfpa(
  stretch: Stretch,
  { key }: NfpaInsulation,
  free: boolean,
  wiring: WiringRules,
): Known<Quantity<"temperature">> {
  const { place, ambient, heightAboveRoof = missing("stretches[].heightAboveRoof") } = stretch;
  if (place !== "roof" || free || key === "XHHW-2")
    return whenKnown({ ambient }, (known) => given(known.ambient, "°C"));
  const raised = wiring === "NFPA 70:2023" ? nfpa70_2023_rooftopAmbient : nfpa70_2017_rooftopAmbient;
  return whenKnown({ ambient, heightAboveRoof }, (known) => raised(known));
}

function ambientFactorNfpa(
  ambient: Quantity<"temperature">,
  { kind }: Cable,
  { rating }: NfpaInsulation,
  wiring: WiringRules,
): Quantity<"ratio"> {
  if (rating !== "125 °C" && wiring === "NFPA 70:2017" && (kind === "PV" || rating === "105 °C")) {
    return nfpa70_2017_690_31_a({ ambient, rating });
  }
  if (rating === "105 °C" || rating === "125 °C") return nfpa70_2020_690_31_a_a({ ambient, rating });
  return nfpa70_2023_310_15_b_1_1({ ambient, rating });
}

function conductorsTogether(
  { grouped }: Stretch,
  conductorsInParallel: Quantity<"ratio">,
  loaded: 2 | 3,
): Known<Quantity<"ratio">> {
  return whenKnown({ grouped }, (known) => {
    const circuits = circuitsTogether({ grouped: known.grouped, conductorsInParallel });
    return currentCarryingConductors({ circuits, loadedConductors: loaded });
  });
}

function adjustment({ length, arrangement }: Partial<Stretch>, conductors: Quantity<"ratio">): Quantity<"ratio"> {
  const short = length !== undefined && racewayIsShort({ value: length, limit: UNADJUSTED }).verdict === "met";
  const counted = short || arrangement === "spaced" ? 1 : conductorsThatCount({ conductors });
  return nfpa70_2023_310_15_c_1({ conductors: counted });
}
