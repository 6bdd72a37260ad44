import { type Check, isMissing, type Known } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import type { RouteAmpacity } from "../ampacity/route-ampacity.js";
import type { ConductorMetal } from "../cable.js";
import { conductorCoolAtTerminal, terminalHoldsLarge, terminalHoldsSmall, terminalTakesMetal } from "./conditions.js";
import { routeTemperature } from "./route-temperature.js";

/** A terminal at an end of a route, as its maker declares it; what is left out is not checked. */
export interface Terminal {
  /** Its place, which becomes part of the ids of its checks. */
  readonly at: string;
  /** Smallest and largest cross-section that it takes. */
  readonly range?: Known<readonly [Input<"area">, Input<"area">]>;
  readonly temperature?: Known<Input<"temperature">>;
  /** Whether it is declared for aluminium; checked where the conductor is aluminium. */
  readonly aluminium?: Known<boolean>;
}

/** The checks of a conductor at a terminal. */
export function terminalChecks(
  terminal: Terminal,
  size: Quantity<"area">,
  metal: ConductorMetal,
  route: RouteAmpacity,
  designCurrent: Known<Input<"current">> | undefined,
): readonly Check[] {
  const { at, range, temperature, aluminium } = terminal;
  const checks: Check[] = [];
  if (range !== undefined) {
    const [low, high] = isMissing(range) ? [range, range] : range;
    checks.push(
      terminalHoldsSmall({ value: size, limit: low, at }),
      terminalHoldsLarge({ value: size, limit: high, at }),
    );
  }
  if (metal === "aluminium") {
    const allowed = aluminium ?? false;
    checks.push(terminalTakesMetal({ value: metal, limit: isMissing(allowed) ? allowed : metalsOf(allowed), at }));
  }
  if (temperature !== undefined && designCurrent !== undefined) {
    checks.push(conductorCoolAtTerminal({ value: routeTemperature(route, designCurrent), limit: temperature, at }));
  }
  return checks;
}

function metalsOf(aluminium: boolean): readonly ConductorMetal[] {
  return aluminium ? ["copper", "aluminium"] : ["copper"];
}
