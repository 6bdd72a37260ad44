import { isMissing, type Known, missing } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { Stretch } from "../stretch.js";
import { isNfpa70 } from "../wiring.js";
import { type AmpacityRequest, ampacityOf } from "./ampacity-of.js";
import { disregardedSections } from "./nfpa/disregarded.js";
import { routeMinimum } from "./route-minimum.js";
import type { StretchAmpacity } from "./stretch-ampacity.js";

/** What a route can carry: the worst of its stretches. */
export interface RouteAmpacity {
  readonly ampacity: Known<Quantity<"current">>;
  /** Index of the stretch that governs; `null` while a stretch is open. */
  readonly governedBy: number | null;
  readonly stretches: readonly StretchAmpacity[];
}

/** A cable of one size along a route. */
export interface RouteAmpacityRequest extends Omit<AmpacityRequest, "stretch"> {
  readonly stretches: readonly Stretch[];
  /** NFPA 70: disregards hotter sections that are short enough; all sections count where it is left out. */
  readonly shortSections?: "counted" | "disregarded where allowed";
}

/**
 * What a cable can carry along a route; the worst stretch governs.
 *
 * @throws InputError where the document tabulates nothing for a stretch, with the reason
 */
export function routeAmpacity(request: RouteAmpacityRequest): RouteAmpacity {
  const { stretches, shortSections = "counted", ...rest } = request;
  const each = Object.freeze(stretches.map((stretch) => ampacityOf({ stretch, ...rest })));
  const found = each.map(({ ampacity }) => ampacity);
  const open = found.filter(isMissing).flatMap((one) => one.missing);
  if (open.length > 0) {
    return Object.freeze({ ampacity: missing(...new Set(open)), governedBy: null, stretches: each });
  }
  const sections = (found as readonly Quantity<"current">[]).map((ampacity, index) => ({
    ampacity,
    length: stretches[index]!.length,
  }));
  const short =
    isNfpa70(rest.wiring) && shortSections !== "counted" ? disregardedSections(sections) : new Set<number>();
  const ampacity = routeMinimum({
    ampacities: sections.filter((_, index) => !short.has(index)).map((section) => section.ampacity),
  });
  const governedBy = sections.findIndex(
    (section, index) => !short.has(index) && section.ampacity.text === ampacity.text,
  );
  return Object.freeze({ ampacity, governedBy, stretches: each });
}
