import { type Check, chooseAmong, type Choice, condition } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import type { Cable } from "../cable.js";
import { iec60228_2004_sections } from "../size/iec-sections.js";
import { nfpa70_2017_sizes } from "../size/nfpa-sizes.js";
import { sizesFor } from "../size/size.js";
import { conductorProperties } from "../resistance/properties.js";
import { isNfpa70, type WiringRules } from "../wiring.js";
import { longestDirectRun, longestThreePhaseRun, longestTwoConductorRun } from "../voltage/longest-run.js";
import { type CircuitKind, loadedConductors, routeVoltageChange } from "../voltage/route.js";

/**
 * Is the voltage change within the limit that was set?
 *
 * @function
 */
export const changeWithinLimit = /* @__PURE__ */ condition({
  id: "conductor/change-within-limit", asks: "Is the voltage change within the limit that was set?", force: "requirement",
  value: { unit: "V", symbol: "ΔU", about: "voltage change at the current" }, relation: "≤",
  limit: { unit: "V", symbol: "ΔU_max", about: "largest voltage change" },
  source: [{ in: "common practice", clause: "a limit that the designer sets", grade: "common-practice" }],
  worse: { "routes[].stretches[].length": "up" },
});

/** A run of one cable with one current. */
export interface Run {
  readonly circuit: CircuitKind;
  readonly wiring: WiringRules;
  readonly cable: Cable;
  readonly current: Input<"current">;
  readonly temperature: Input<"temperature">;
  readonly voltageChange: Input<"voltage">;
  readonly powerFactor?: Input<"ratio">;
  readonly reactiveFactor?: Input<"ratio">;
}

/**
 * The longest run of a size that keeps a voltage change; the inverse of `smallestSizeForRun`.
 *
 * @throws InputError where the voltage does not fall along the run, or nothing is tabulated for the size
 */
export function longestRun(run: Run & { readonly size: string | number | Quantity<"area"> }): Quantity<"length"> {
  const { circuit, current, voltageChange, powerFactor = 1, reactiveFactor = 0 } = run;
  const direct = circuit === "d.c.";
  const { resistancePerLength, reactancePerLength } = conductorProperties({
    ...run,
    direct,
    loaded: loadedConductors(circuit),
  });
  const common = { voltageChange, current, resistancePerLength };
  if (reactancePerLength === null) return longestDirectRun(common);
  const alternating = { ...common, reactancePerLength, powerFactor, reactiveFactor };
  return circuit === "three-phase" ? longestThreePhaseRun(alternating) : longestTwoConductorRun(alternating);
}

/**
 * The smallest size that keeps a voltage change over a length, without regard to ampacity.
 *
 * @throws InputError where an input is outside its domain
 */
export function smallestSizeForRun(run: Run & { readonly length: Input<"length"> }): Choice {
  const { wiring, voltageChange } = run;
  const rule = (isNfpa70(wiring) ? nfpa70_2017_sizes : iec60228_2004_sections).declaration;
  const sizes = sizesFor(wiring).filter((size) => hasResistance(run, size));
  return chooseAmong(rule, sizes, (size) => [changeCheck(run, size, voltageChange)]);
}

function changeCheck(
  run: Run & { readonly length: Input<"length"> },
  size: Quantity<"area">,
  limit: Input<"voltage">,
): Check {
  const { powerFactor = 1, reactiveFactor = 0 } = run;
  const { change } = routeVoltageChange({
    circuit: run.circuit,
    wiring: run.wiring,
    nominalVoltage: limit,
    parts: [{ ...run, size, powerFactor, reactiveFactor }],
  });
  return changeWithinLimit({ value: change, limit });
}

// Tables of resistance end before the sizes do.
function hasResistance(run: Run, size: Quantity<"area">): boolean {
  try {
    conductorProperties({ ...run, size, direct: run.circuit === "d.c.", loaded: loadedConductors(run.circuit) });
    return true;
  } catch {
    return false;
  }
}
