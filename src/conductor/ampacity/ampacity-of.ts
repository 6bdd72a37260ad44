import { isMissing, type Known, missing } from "../../formula/index.js";
import { given, type Quantity } from "../../quantity/index.js";
import type { Cable } from "../cable.js";
import type { Stretch } from "../stretch.js";
import { isNfpa70, type WiringRules } from "../wiring.js";
import { ampacityIec } from "./iec/ampacity.js";
import { ampacityNfpa } from "./nfpa/ampacity.js";
import { ampacityPv } from "./pv/ampacity.js";
import { refuse } from "./refusal.js";
import { routeMinimum } from "./route-minimum.js";
import type { StretchAmpacity } from "./stretch-ampacity.js";

/** A cable of one size on one stretch, under a document of rules. */
export interface AmpacityRequest {
  readonly stretch: Stretch;
  readonly cable: Cable;
  readonly size: Quantity<"area">;
  /** Loaded conductors: two for direct current and single phase, three for three phases. */
  readonly loaded: 2 | 3;
  readonly wiring: WiringRules;
}

/**
 * What a cable can carry on one stretch, corrected to ambient, soil and group.
 *
 * @throws InputError where the document tabulates nothing for the combination, with the reason
 */
export function ampacityOf({ stretch, cable, size, loaded, wiring }: AmpacityRequest): StretchAmpacity {
  if (stretch.statedAmpacity !== undefined) return stated(stretch, stretch.statedAmpacity);
  if (isNfpa70(wiring)) return ampacityNfpa(cable, size, stretch, loaded, wiring);
  if (cable.kind === "PV") return ampacityPv(cable, size, stretch);
  if (wiring === "IEC 60364:2009-2017") return ampacityIec(cable, size, stretch, loaded);
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

/** What a route can carry: the worst of its stretches. */
export interface RouteAmpacity {
  readonly ampacity: Known<Quantity<"current">>;
  /** Index of the stretch that governs; `null` while a stretch is open. */
  readonly governedBy: number | null;
  readonly stretches: readonly StretchAmpacity[];
}

/**
 * What a cable can carry along a route; the worst stretch governs.
 *
 * @throws InputError where the document tabulates nothing for a stretch, with the reason
 */
export function routeAmpacity(
  request: Omit<AmpacityRequest, "stretch"> & { readonly stretches: readonly Stretch[] },
): RouteAmpacity {
  const { stretches, ...rest } = request;
  const each = stretches.map((stretch) => ampacityOf({ stretch, ...rest }));
  const found = each.map(({ ampacity }) => ampacity);
  const open = found.filter(isMissing).flatMap((one) => one.missing);
  if (open.length > 0) {
    return Object.freeze({ ampacity: missing(...new Set(open)), governedBy: null, stretches: each });
  }
  const ampacities = found as readonly Quantity<"current">[];
  const ampacity = routeMinimum({ ampacities });
  const governedBy = ampacities.findIndex((one) => one.text === ampacity.text);
  return Object.freeze({ ampacity, governedBy, stretches: each });
}
