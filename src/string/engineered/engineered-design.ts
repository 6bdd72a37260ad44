import { type Check, isMissing, type Known, type Missing, whenKnown } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { maximumStringCurrent } from "../current/maximum-string-current.js";
import {
  engineeredCurrent,
  engineeredDesignStamped,
  engineeringCapacity,
  largeEnoughForEngineering,
} from "./engineered.js";

/** What makes an engineered design acceptable. */
export interface EngineeredDesign {
  readonly at?: string;
  /** Generating capacity of the inverters. */
  readonly systemPower: Known<Input<"activePower">>;
  readonly stamped: boolean | Missing;
}

/** A value by engineering, and whether it may be used. */
export interface Engineered<Q> {
  readonly value: Known<Q>;
  readonly checks: readonly Check[];
}

function acceptance({ at = "", systemPower, stamped }: EngineeredDesign): readonly Check[] {
  const state = isMissing(stamped) ? stamped : stamped ? "stamped" : "not stamped";
  return [
    largeEnoughForEngineering({ value: systemPower, limit: engineeringCapacity({}), at }),
    engineeredDesignStamped({ value: state, limit: ["stamped"], at }),
  ];
}

/**
 * Maximum voltage by a stamped engineered design, NEC 690.7(A)(3), with its conditions checked.
 *
 * @example
 * ```ts
 * import { engineeredVoltage } from "pv-to-grid/string";
 * engineeredVoltage({ systemPower: "80 kW", stamped: true, voltage: "985 V" }).checks[0]?.verdict; // "not met"
 * ```
 */
export function engineeredVoltage(
  design: EngineeredDesign & { readonly voltage: Known<Input<"voltage">> },
): Engineered<Quantity<"voltage">> {
  const { voltage } = design;
  return Object.freeze({
    value: isMissing(voltage) ? voltage : given(voltage, "V"),
    checks: Object.freeze(acceptance(design)),
  });
}

/**
 * Maximum current by a stamped engineered design, NEC 690.8(A), with its conditions checked and its floor of 70 % kept.
 *
 * @example
 * ```ts
 * import { engineeredMaximumCurrent } from "pv-to-grid/string";
 * engineeredMaximumCurrent({ systemPower: "250 kW", stamped: true, shortCircuitCurrent: "10 A", strings: 16, averageCurrent: "120 A" }).value; // 140 A
 * ```
 */
export function engineeredMaximumCurrent(
  design: EngineeredDesign & {
    readonly shortCircuitCurrent: Input<"current">;
    readonly strings: number;
    readonly averageCurrent: Known<Input<"current">>;
  },
): Engineered<Quantity<"current">> {
  const { shortCircuitCurrent, strings, averageCurrent } = design;
  const maximumCurrent = maximumStringCurrent({ shortCircuitCurrent, strings });
  const value = whenKnown({ averageCurrent }, (known) => engineeredCurrent({ maximumCurrent, ...known }));
  return Object.freeze({ value, checks: Object.freeze(acceptance(design)) });
}
