import { isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import type { BuildingKind } from "../lists.js";
import type { Need } from "./ac-need.js";
import {
  criticalLength,
  routeShorterThanCritical,
  totalRouteLength,
  utec15712_critical_length,
} from "./critical-length.js";

/** What decides whether the d.c. side needs surge protection. */
export interface DcNeedQuestion {
  readonly at: string;
  readonly building: Known<BuildingKind>;
  readonly lightningDensity: Known<Input<"flashDensity">>;
  /** Length of each different d.c. route; strings on the same route count once. */
  readonly routes: readonly Known<Input<"length">>[];
}

/** The need on the d.c. side with the lengths that decide it. */
export interface DcNeed extends Need {
  readonly routeLength: Known<Quantity<"length">>;
  readonly criticalLength: Known<Quantity<"length">>;
}

/**
 * Whether the d.c. side needs surge protection: where its routes are as long as the critical length, which is the shortest
 * one while the kind of building is not known.
 *
 * @param question - building, flash density and routes; what is not known is said as missing
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { dcSurgeNeed } from "pv-to-grid/surge";
 * dcSurgeNeed({ at: "South", building: "dwelling", lightningDensity: "2", routes: ["22 m", "40 m"] }).needed; // true
 * ```
 */
export function dcSurgeNeed({ at, building, lightningDensity, routes }: DcNeedQuestion): DcNeed {
  const absent = routes.flatMap((route) => (isMissing(route) ? route.missing : []));
  const known = routes.filter((route): route is Input<"length"> => !isMissing(route));
  const routeLength =
    absent.length > 0 || known.length === 0 ? missing(...absent) : totalRouteLength({ routeLengths: known });
  const kind = isMissing(building) ? "dwelling" : building;
  const critical = whenKnown({ lightningDensity }, ({ lightningDensity: density }) =>
    criticalLength({ unitCriticalLength: utec15712_critical_length({ building: kind }), lightningDensity: density }),
  );
  const check = routeShorterThanCritical({ at, value: routeLength, limit: critical });
  const lengths = { routeLength, criticalLength: critical, checks: [check] };
  if (check.verdict === "open") {
    return Object.freeze({ needed: missing(...check.missing), because: "the inputs do not decide it", ...lengths });
  }
  const needed = check.verdict === "not met";
  const of = isMissing(building) ? "; the kind of building is not known, so the shortest critical length holds" : "";
  const because = `the routes are ${needed ? "at least as long as" : "shorter than"} the critical length${of}`;
  return Object.freeze({ needed, because, ...lengths });
}
