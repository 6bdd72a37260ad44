import { isMissing, type Known, missing } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { loopImpedance, loopReactance, loopResistance } from "./loop.js";

/** Resistance and reactance of the loop up to the origin of the installation. */
export interface LoopSource {
  readonly resistance: Input<"resistance">;
  readonly reactance: Input<"resistance">;
}

/** The parts of one stretch of cable that a fault current passes. */
export interface LoopStretch {
  readonly lineResistance: Input<"resistance">;
  readonly protectiveResistance: Input<"resistance">;
  /** Line and protective conductor together. */
  readonly reactance: Input<"resistance">;
}

/** A fault loop, resistance and reactance apart. */
export interface FaultLoop {
  readonly resistance: Quantity<"resistance">;
  readonly reactance: Quantity<"resistance">;
  readonly impedance: Quantity<"resistance">;
}

/**
 * The loop of a fault between line and protective conductor at the end of a route, or what is missing for it.
 *
 * @param source - the loop up to the origin
 * @param stretches - the cables from the origin to the fault, at their temperature during the fault
 * @throws InputError where a value lies outside its domain, or no stretch is given
 * @example
 * ```ts
 * import { faultLoop } from "pv-to-grid/protection";
 * const loop = faultLoop(
 *   { resistance: "0.4 Ω", reactance: "0.12 Ω" },
 *   [{ lineResistance: "0.1 Ω", protectiveResistance: "0.1 Ω", reactance: "0.004 Ω" }],
 * );
 * "impedance" in loop && loop.impedance.show(); // "0.6127 Ω"
 * ```
 */
export function faultLoop(source: Known<LoopSource>, stretches: readonly Known<LoopStretch>[]): Known<FaultLoop> {
  const paths = [source, ...stretches].flatMap((part) => (isMissing(part) ? part.missing : []));
  if (isMissing(source) || paths.length > 0) return missing(...new Set(paths));
  const known = stretches.filter((stretch): stretch is LoopStretch => !isMissing(stretch));
  const resistance = loopResistance({
    sourceResistance: source.resistance,
    lineResistances: known.map(({ lineResistance }) => lineResistance),
    protectiveResistances: known.map(({ protectiveResistance }) => protectiveResistance),
  });
  const reactance = loopReactance({
    sourceReactance: source.reactance,
    loopReactances: known.map((stretch) => stretch.reactance),
  });
  const impedance = loopImpedance({ loopResistance: resistance, loopReactance: reactance });
  return Object.freeze({ resistance, reactance, impedance });
}
