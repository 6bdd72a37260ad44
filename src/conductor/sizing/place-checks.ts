import { type Check, condition } from "../../formula/index.js";
import type { Cable, CableKind } from "../cable.js";
import type { Place, Stretch } from "../stretch.js";

/**
 * Is the cable made for the place it runs in?
 *
 * @function
 */
export const cableFitsPlace = /* @__PURE__ */ condition({
  id: "conductor/cable-fits-place", asks: "Is the cable made for the place it runs in?", force: "requirement",
  value: { named: true, about: "place of the stretch" }, relation: "one of", limit: { named: true, about: "places that the kind of cable is made for" },
  source: [{ in: "common practice", clause: "makers' statements of use: photovoltaic cable in air and in dry ducts, other cable away from the modules", grade: "common-practice" }],
});

const inBuildings: readonly Place[] = ["loft", "wall", "conduit", "trunking", "tray", "indoors"];

/** The places that each kind of cable is made for. */
const placesOf: Readonly<Record<CableKind, readonly Place[]>> = {
  PV: [...inBuildings, "behind modules", "roof", "free air", "outdoors", "duct in ground"],
  "single-core": [...inBuildings, "free air", "duct in ground", "in ground"],
  "multi-core": [...inBuildings, "roof", "free air", "outdoors", "duct in ground", "in ground"],
};

/** Checks the kind of cable against the place of each stretch; the maker's statement of use prevails. */
export function cablePlaceChecks({ kind }: Cable, stretches: readonly Stretch[], at: string): readonly Check[] {
  return stretches.map(({ place }, index) =>
    cableFitsPlace({ value: place, limit: placesOf[kind], at: `${at}/${index + 1} ${place}` }),
  );
}
