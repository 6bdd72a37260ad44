import type { Quantity } from "../../quantity/index.js";
import type { Cable } from "../cable.js";
import { sizeName, sizesFor } from "../size/size.js";
import type { Loaded, Stretch } from "../stretch.js";
import { isNfpa70, type WiringRules } from "../wiring.js";
import { sizesTabulatedBs } from "./bs/ampacity.js";
import { tabulatedByIec } from "./iec/ampacity.js";
import { sectionsTabulatedIec } from "./iec/tabulated.js";
import { sizesTabulatedNfpa } from "./nfpa/ampacity.js";
import { en50618_2014_a_3 } from "./pv/en-50618-a-3.js";

/** A cable on its stretches under a document of rules, before a size is known. */
export interface LaidCable {
  readonly cable: Cable;
  readonly stretches: readonly Stretch[];
  readonly loaded: Loaded;
  readonly wiring: WiringRules;
}

/** The sizes that the tables hold for a cable on every stretch of its route, smallest first. */
export function sizesTabulated({ cable, stretches, loaded, wiring }: LaidCable): readonly Quantity<"area">[] {
  const named = stretches
    .filter(({ statedAmpacity }) => statedAmpacity === undefined)
    .map((stretch) => rowsFor(cable, stretch, Number(loaded) === 3 ? 3 : 2, wiring));
  return sizesFor(wiring).filter((size) => {
    const name = isNfpa70(wiring) ? sizeName(size) : size.text;
    return named.every((rows) => rows.includes(name));
  });
}

function rowsFor(cable: Cable, stretch: Stretch, loaded: 2 | 3, wiring: WiringRules): readonly string[] {
  if (isNfpa70(wiring)) return sizesTabulatedNfpa(cable, stretch, wiring);
  if (cable.kind === "PV") return en50618_2014_a_3.rows();
  if (wiring === "BS 7671:2018") return sizesTabulatedBs(cable, stretch, loaded);
  return sectionsTabulatedIec(tabulatedByIec(cable, stretch, loaded));
}
