import { type Check, type Known, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { conductorWithstandsFault, conductorWithstandsLetThrough, faultEnergy, withstandEnergy } from "./energy.js";

/** What decides whether a cable withstands the faults at its ends. */
export interface WithstandQuestion {
  readonly at: string;
  readonly section: Known<Input<"area">>;
  /** Adiabatic factor of the live conductors. */
  readonly factor: Known<Input<"adiabaticFactor">>;
  /** Smallest fault current, at the far end, and the time until the device trips at it. */
  readonly smallestFaultCurrent: Known<Input<"current">>;
  readonly trippingTime: Known<Input<"time">>;
  /** What the device lets through of the largest fault current, by its maker. */
  readonly letThrough: Known<Input<"jouleIntegral">>;
}

/** The proof of withstand with the energy that the cable bears. */
export interface Withstand {
  readonly withstandEnergy: Known<Quantity<"jouleIntegral">>;
  readonly checks: readonly Check[];
}

/**
 * Proves that a cable withstands the smallest fault until the device trips, and what the device lets through of the largest.
 *
 * @param question - cable, fault currents, tripping time and let-through; what is not known is said as missing
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { missing } from "pv-to-grid/formula";
 * import { proveWithstand } from "pv-to-grid/protection";
 * const proof = proveWithstand({ at: "INV1", section: "4 mm²", factor: "115", smallestFaultCurrent: "350 A", trippingTime: "0.1 s", letThrough: missing("routes[1].breaker.letThrough") });
 * proof.checks.map((check) => check.verdict).join(); // "met,open"
 * ```
 */
export function proveWithstand(question: WithstandQuestion): Withstand {
  const { at, section, factor, smallestFaultCurrent, trippingTime, letThrough } = question;
  const limit = whenKnown({ section, factor }, (known) =>
    withstandEnergy({ adiabaticFactor: known.factor, section: known.section }),
  );
  const energy = whenKnown({ smallestFaultCurrent, trippingTime }, (known) =>
    faultEnergy({ faultCurrent: known.smallestFaultCurrent, disconnectionTime: known.trippingTime }),
  );
  return Object.freeze({
    withstandEnergy: limit,
    checks: Object.freeze([
      conductorWithstandsFault({ at, value: energy, limit }),
      conductorWithstandsLetThrough({ at, value: letThrough, limit }),
    ]),
  });
}
