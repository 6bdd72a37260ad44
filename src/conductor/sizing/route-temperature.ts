import { isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import type { RouteAmpacity } from "../ampacity/route-ampacity.js";
import type { StretchAmpacity } from "../ampacity/stretch-ampacity.js";
import { conductorTemperatureAtLoad } from "../resistance/temperature.js";
import { hottestStretch } from "./hottest.js";

/** Temperature of the conductor on one stretch at a current. */
export function stretchTemperature(
  { ambient, conductorLimit, ampacity }: StretchAmpacity,
  current: Known<Input<"current">>,
): Known<Quantity<"temperature">> {
  const limit = conductorLimit ?? missing("stretches[].conductorLimit");
  return whenKnown({ ambient, conductorLimit: limit, ampacity, current }, (known) => conductorTemperatureAtLoad(known));
}

/** Temperature of the hottest stretch of a route at a current. */
export function routeTemperature(
  route: RouteAmpacity,
  current: Known<Input<"current">>,
): Known<Quantity<"temperature">> {
  const each = route.stretches.map((stretch) => stretchTemperature(stretch, current));
  const open = each.filter(isMissing).flatMap((one) => one.missing);
  if (open.length > 0) return missing(...new Set(open));
  return hottestStretch({ temperatures: each as readonly Quantity<"temperature">[] });
}
