import { isMissing } from "../../formula/index.js";
import { given, type Quantity } from "../../quantity/index.js";
import type { Cable } from "../cable.js";
import { readSize } from "../size/size.js";
import type { Loaded, Stretch } from "../stretch.js";
import { isNfpa70, type WiringRules } from "../wiring.js";
import { ampacityBs } from "./bs/ampacity.js";
import { ampacityIec } from "./iec/ampacity.js";
import { ampacityNfpa } from "./nfpa/ampacity.js";
import { ampacityPv } from "./pv/ampacity.js";
import { refuse } from "./refusal.js";
import type { StretchAmpacity } from "./stretch-ampacity.js";

/** A cable of one size on one stretch, under a document of rules. */
export interface AmpacityRequest {
  readonly stretch: Stretch;
  readonly cable: Cable;
  /** `"4 mm²"`, or `"10 AWG"` where the rules are those of NFPA 70. */
  readonly size: string | number | Quantity<"area">;
  readonly loaded: Loaded;
  readonly wiring: WiringRules;
}

/**
 * What a cable can carry on one stretch, corrected to ambient, soil and group.
 *
 * @throws InputError where the document tabulates nothing for the combination, with the reason
 */
export function ampacityOf(request: AmpacityRequest): StretchAmpacity {
  const { statedAmpacity, sun = false } = request.stretch;
  if (statedAmpacity !== undefined) return stated(request.stretch, statedAmpacity);
  const found = tabulated(request);
  return sun ? Object.freeze({ ...found, notes: [...found.notes, IN_THE_SUN] }) : found;
}

const IN_THE_SUN =
  "the stretch lies in the sun: its ambient must hold what the sun adds, for which the tables have no factor";

function tabulated({ stretch, cable, wiring, ...request }: AmpacityRequest): StretchAmpacity {
  const size = readSize(request.size, wiring);
  const loaded = Number(request.loaded) === 3 ? 3 : 2;
  if (isNfpa70(wiring)) return ampacityNfpa(cable, size, stretch, loaded, wiring);
  if (cable.kind === "PV") return ampacityPv(cable, size, stretch);
  if (wiring === "IEC 60364:2009-2017") return ampacityIec(cable, size, stretch, loaded);
  if (wiring === "BS 7671:2018") return ampacityBs(cable, size, stretch, loaded);
  return refuse(
    "rules.wiring",
    `no capacities of ${wiring} are held for this cable; state the ampacity of the stretch`,
    "statedAmpacity",
    wiring,
  );
}

function stated(stretch: Stretch, statedAmpacity: NonNullable<Stretch["statedAmpacity"]>): StretchAmpacity {
  const ampacity = given(statedAmpacity, "A");
  const { ambient, conductorLimit } = stretch;
  return Object.freeze({
    ampacity,
    tabulated: ampacity,
    factors: [],
    ambient: isMissing(ambient) ? ambient : given(ambient, "°C"),
    conductorLimit: conductorLimit === undefined || isMissing(conductorLimit) ? null : given(conductorLimit, "°C"),
    notes: ["the ampacity of this stretch is stated, not looked up"],
  });
}
